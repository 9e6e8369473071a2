import type { Table } from '../../model/table.ts';

export interface ClearanceIso273Row {
  readonly thread: string;
  /** Close fit, tolerance H12. */
  readonly fineMm: number;
  /** Normal fit, tolerance H13. */
  readonly mediumMm: number;
  /** Loose fit, tolerance H14. */
  readonly coarseMm: number;
}

/** Clearance holes for metric screws. */
export const clearanceIso273: Table<ClearanceIso273Row> = {
  id: 'clearance-iso-273',
  title: 'Clearance holes for metric screws',
  sources: [
    {
      document: 'ISO 273',
      place: 'fine, medium and coarse series',
      mark: 'printed',
      note: 'Several texts agree; M3.5 was read in one. Outside this range one list gives M12 as 14 and 15 mm where the standard has 13.5 and 14.5.',
    },
  ],
  rows: [
    { thread: 'M2', fineMm: 2.2, mediumMm: 2.4, coarseMm: 2.6 },
    { thread: 'M2.5', fineMm: 2.7, mediumMm: 2.9, coarseMm: 3.1 },
    { thread: 'M3', fineMm: 3.2, mediumMm: 3.4, coarseMm: 3.6 },
    { thread: 'M3.5', fineMm: 3.7, mediumMm: 3.9, coarseMm: 4.2 },
    { thread: 'M4', fineMm: 4.3, mediumMm: 4.5, coarseMm: 4.8 },
    { thread: 'M5', fineMm: 5.3, mediumMm: 5.5, coarseMm: 5.8 },
    { thread: 'M6', fineMm: 6.4, mediumMm: 6.6, coarseMm: 7 },
    { thread: 'M8', fineMm: 8.4, mediumMm: 9, coarseMm: 10 },
    { thread: 'M10', fineMm: 10.5, mediumMm: 11, coarseMm: 12 },
  ],
};
