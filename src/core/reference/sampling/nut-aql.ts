import type { Table } from '../../model/table.ts';

export interface NutAqlRow {
  readonly what: string;
  /** Acceptable quality level, per cent. */
  readonly aql: number;
  readonly document: string;
}

/** Quality levels that a government nut specification asks. */
export const nutAql: Table<NutAqlRow> = {
  id: 'nut-aql',
  title: 'Acceptable quality levels for plain nuts',
  sources: [
    {
      document: 'MIL-N-21337',
      place: 'quality assurance, by MIL-STD-105 level II',
      mark: 'printed',
      note: 'Read in one text. Self-locking nuts (MIL-DTL-45913D) go by ASME B18.18 and ASTM F1470 instead.',
    },
  ],
  rows: [
    { what: 'major defects of plain nuts', aql: 1.5, document: 'MIL-N-21337' },
    { what: 'minor defects of plain nuts', aql: 4, document: 'MIL-N-21337' },
    { what: 'composition and hardness of plain nuts, level L3', aql: 10, document: 'MIL-N-21337' },
  ],
};
