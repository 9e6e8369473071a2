import type { Table } from '../../model/table.ts';
import type { OunceRow } from './row-types.ts';

/** Copper sheet ordered by weight: ounces per square foot. */
export const copperOunces: Table<OunceRow> = {
  id: 'copper-ounces',
  title: 'Copper sheet by weight',
  sources: [
    {
      document: 'ASTM B370',
      place: 'weights and thicknesses',
      mark: 'memory',
    },
  ],
  rows: [
    { ouncesPerSqFt: 16, inch: 0.0216 },
    { ouncesPerSqFt: 20, inch: 0.027 },
    { ouncesPerSqFt: 24, inch: 0.0323 },
    { ouncesPerSqFt: 32, inch: 0.0431 },
  ],
};
