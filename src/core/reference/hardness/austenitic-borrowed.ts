import type { Table } from '../../model/table.ts';
import type { HardnessScale } from '../../units/hardness.ts';

export interface BorrowedConversionRow {
  readonly metal: 'austenitic';
  readonly scale: HardnessScale;
  /** Id of the table that is read although its standard excludes the metal. */
  readonly readFrom: string;
}

/** Cited beside the borrowed table, so that a finding says that the conversion stands outside the standard. */
export const austeniticBorrowed: Table<BorrowedConversionRow> = {
  id: 'austenitic-outside-standard',
  title: 'Austenitic stainless read from a table for other steel, outside the standard',
  sources: [
    {
      document: 'common practice, no source',
      place: 'spoken rule of the trade',
      mark: 'memory',
      note: 'ASTM E140 has no Vickers column for austenitic steel in the Rockwell B range, and covers cold-worked austenitic steel nowhere.',
    },
  ],
  rows: [
    { metal: 'austenitic', scale: 'HV', readFrom: 'astm-e140-table-2' },
    { metal: 'austenitic', scale: 'HRC', readFrom: 'astm-e140-table-1' },
  ],
};
