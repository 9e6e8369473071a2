import type { Table } from '../../model/table.ts';

export interface StripAreasOneDiameterRow {
  readonly thread: string;
  /** Area that shears when the thread of the screw strips. */
  readonly externalIn2: number;
  /** Area that shears when the thread of the nut strips. */
  readonly internalIn2: number;
}

/** Published strip areas that the stripping formulas are checked against. */
export const stripAreasOneDiameter: Table<StripAreasOneDiameterRow> = {
  id: 'strip-areas-one-diameter',
  title: 'Strip areas at an engagement of one diameter, classes 2A and 2B',
  sources: [
    {
      document: 'ASME B1.1 limits, FED-STD-H28/2 formulas',
      place: 'handbook table of stress and strip areas',
      mark: 'printed',
      note: 'Read in one text. That text misprints the stress area of 7/16-14, which is not used here.',
    },
  ],
  rows: [
    { thread: '10-24', externalIn2: 0.05, internalIn2: 0.076 },
    { thread: '10-32', externalIn2: 0.052, internalIn2: 0.074 },
    { thread: '1/4-20', externalIn2: 0.092, internalIn2: 0.135 },
    { thread: '1/4-28', externalIn2: 0.093, internalIn2: 0.13 },
    { thread: '5/16-18', externalIn2: 0.147, internalIn2: 0.213 },
    { thread: '3/8-16', externalIn2: 0.216, internalIn2: 0.31 },
    { thread: '3/8-24', externalIn2: 0.217, internalIn2: 0.299 },
  ],
};
