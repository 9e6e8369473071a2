import type { Mark, Table } from '../../model/table.ts';

export interface Iso286Row {
  /** IT number. */
  readonly grade: number;
  /** Width of the tolerance, nominal sizes 1 to 3 mm. */
  readonly upTo3Um: number;
  readonly upTo6Um: number;
  readonly upTo10Um: number;
  readonly upTo18Um: number;
  readonly upTo30Um: number;
  readonly mark: Mark;
}

/** Standard tolerance grades IT5 to IT14. For holes H the lower deviation is 0. */
export const iso286Grades: Table<Iso286Row> = {
  id: 'iso-286',
  title: 'Standard tolerance grades up to 30 mm',
  sources: [
    {
      document: 'ISO 286-1',
      place: 'Table 1, standard tolerances',
      mark: 'printed',
      note: 'Two texts for IT5 to IT11, one for IT13 and IT14; IT12 is from memory. The printed values are rounded: the formula would give other digits.',
    },
  ],
  rows: [
    { grade: 5, upTo3Um: 4, upTo6Um: 5, upTo10Um: 6, upTo18Um: 8, upTo30Um: 9, mark: 'printed' },
    { grade: 6, upTo3Um: 6, upTo6Um: 8, upTo10Um: 9, upTo18Um: 11, upTo30Um: 13, mark: 'printed' },
    { grade: 7, upTo3Um: 10, upTo6Um: 12, upTo10Um: 15, upTo18Um: 18, upTo30Um: 21, mark: 'printed' },
    { grade: 8, upTo3Um: 14, upTo6Um: 18, upTo10Um: 22, upTo18Um: 27, upTo30Um: 33, mark: 'printed' },
    { grade: 9, upTo3Um: 25, upTo6Um: 30, upTo10Um: 36, upTo18Um: 43, upTo30Um: 52, mark: 'printed' },
    { grade: 10, upTo3Um: 40, upTo6Um: 48, upTo10Um: 58, upTo18Um: 70, upTo30Um: 84, mark: 'printed' },
    { grade: 11, upTo3Um: 60, upTo6Um: 75, upTo10Um: 90, upTo18Um: 110, upTo30Um: 130, mark: 'printed' },
    { grade: 12, upTo3Um: 100, upTo6Um: 120, upTo10Um: 150, upTo18Um: 180, upTo30Um: 210, mark: 'memory' },
    { grade: 13, upTo3Um: 140, upTo6Um: 180, upTo10Um: 220, upTo18Um: 270, upTo30Um: 330, mark: 'printed' },
    { grade: 14, upTo3Um: 250, upTo6Um: 300, upTo10Um: 360, upTo18Um: 430, upTo30Um: 520, mark: 'printed' },
  ],
};
