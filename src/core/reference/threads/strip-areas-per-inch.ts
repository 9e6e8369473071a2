import type { Table } from '../../model/table.ts';

export interface StripAreasPerInchRow {
  readonly thread: string;
  /** Square inches of nut thread that shear, per inch of engagement. */
  readonly internalIn2PerIn: number;
}

/** Published internal strip areas per inch of engagement. */
export const stripAreasPerInch: Table<StripAreasPerInchRow> = {
  id: 'strip-areas-per-inch',
  title: 'Internal strip areas per inch of engagement, class 2B',
  sources: [
    {
      document: 'ASME B1.1 limits, FED-STD-H28/2 formulas',
      place: 'handbook table of internal strip areas',
      mark: 'printed',
      note: 'Read in one text.',
    },
  ],
  rows: [
    { thread: '2-56', internalIn2PerIn: 0.162 },
    { thread: '4-40', internalIn2PerIn: 0.221 },
    { thread: '6-32', internalIn2PerIn: 0.281 },
    { thread: '8-32', internalIn2PerIn: 0.334 },
    { thread: '10-24', internalIn2PerIn: 0.401 },
    { thread: '10-32', internalIn2PerIn: 0.389 },
    { thread: '1/4-20', internalIn2PerIn: 0.539 },
    { thread: '5/16-24', internalIn2PerIn: 0.663 },
  ],
};
