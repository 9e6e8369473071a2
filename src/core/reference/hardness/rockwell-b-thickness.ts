import type { Table } from '../../model/table.ts';

export interface RockwellBThicknessRow {
  readonly thicknessMm: number;
  /** Softest metal that may be tested on Rockwell B at this thickness. */
  readonly minHrb: number;
}

/** Sheet of 0.61 to 0.96 mm: how hard it must be for a Rockwell B test to mean anything. */
export const rockwellBThickness: Table<RockwellBThicknessRow> = {
  id: 'astm-e18-thickness',
  title: 'Least hardness of thin sheet for a Rockwell B test',
  sources: [
    {
      document: 'ASTM E18',
      place: 'Minimum thickness for 1/16 in ball scales',
      mark: 'printed',
      note: 'One text was read.',
    },
  ],
  rows: [
    { thicknessMm: 0.61, minHrb: 94 },
    { thicknessMm: 0.66, minHrb: 87 },
    { thicknessMm: 0.71, minHrb: 80 },
    { thicknessMm: 0.76, minHrb: 71 },
    { thicknessMm: 0.81, minHrb: 62 },
    { thicknessMm: 0.86, minHrb: 52 },
    { thicknessMm: 0.91, minHrb: 40 },
    { thicknessMm: 0.96, minHrb: 28 },
  ],
};
