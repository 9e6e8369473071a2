import type { Table } from '../../model/table.ts';

export interface GalvanicOrderRow {
  readonly material: string;
  /** Place in the list, 1 the most active. */
  readonly position: number;
}

/** Order of metals in sea water, active to noble: it ranks, it gives no voltage. */
export const galvanicOrder: Table<GalvanicOrderRow> = {
  id: 'galvanic-order',
  title: 'Galvanic order in sea water',
  sources: [
    {
      document: 'MIL-STD-889B',
      place: 'order list',
      mark: 'printed',
      note: 'A selection; the numbers are places in the full list.',
    },
  ],
  rows: [
    { material: 'magnesium', position: 1 },
    { material: 'zinc, hot-dip or plated', position: 4 },
    { material: 'aluminium 2014-T3', position: 7 },
    { material: 'cadmium plate', position: 10 },
    { material: 'aluminium 5052-O', position: 13 },
    { material: 'aluminium 5052-H32', position: 16 },
    { material: 'aluminium 1100-O', position: 17 },
    { material: 'aluminium 3003-H25', position: 18 },
    { material: 'aluminium 6061-T6', position: 19 },
    { material: 'aluminium 7075-T6', position: 21 },
    { material: 'aluminium 2024-T4', position: 25 },
    { material: 'tin plate', position: 27 },
    { material: 'stainless 430, active', position: 28 },
    { material: 'steel 1010', position: 30 },
    { material: 'stainless 410, active', position: 32 },
    { material: 'nickel plate', position: 34 },
    { material: 'chromium plate', position: 35 },
    { material: 'stainless 304, active', position: 40 },
    { material: 'yellow brass', position: 46 },
    { material: 'stainless 316L, active', position: 53 },
    { material: 'copper 110', position: 55 },
  ],
};
