import type { Table } from '../../model/table.ts';

export interface GeneralToleranceRow {
  readonly fromMm: number;
  readonly toMm: number;
  readonly plusMinusMm: number;
}

/** General tolerance m of a title block: too wide for a press-in hole. */
export const generalTolerance: Table<GeneralToleranceRow> = {
  id: 'iso-2768-m',
  title: 'General tolerances for linear sizes, class m',
  sources: [{ document: 'ISO 2768-1', place: 'Table 1, class m', mark: 'printed', note: 'Read in one text.' }],
  rows: [
    { fromMm: 0.5, toMm: 6, plusMinusMm: 0.1 },
    { fromMm: 6, toMm: 30, plusMinusMm: 0.2 },
  ],
};
