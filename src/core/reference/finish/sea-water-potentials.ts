import type { Table } from '../../model/table.ts';

export interface SeaWaterPotentialRow {
  readonly material: string;
  /** Against silver/silver chloride. */
  readonly millivolts: number;
}

/** Potentials measured in sea water. */
export const seaWaterPotentials: Table<SeaWaterPotentialRow> = {
  id: 'sea-water-potentials',
  title: 'Potentials in sea water',
  sources: [
    {
      document: 'Galvanic series in sea water',
      place: 'silver/silver chloride reference',
      mark: 'printed',
      note: 'Read in one text.',
    },
  ],
  rows: [
    { material: 'hot-dip zinc', millivolts: -1140 },
    { material: 'zinc plate', millivolts: -1130 },
    { material: 'cadmium', millivolts: -860 },
    { material: 'marine aluminium', millivolts: -820 },
    { material: 'mild steel', millivolts: -790 },
    { material: 'stainless, active', millivolts: -550 },
    { material: 'tin', millivolts: -500 },
    { material: 'brass', millivolts: -450 },
  ],
};
