import type { Table } from '../../model/table.ts';

export interface BakingRow {
  readonly strengthFromMpa: number;
  readonly strengthToMpa: number;
  readonly hrcFrom: number;
  readonly hrcTo: number;
  /** Least time at 190 to 220 °C. */
  readonly hours: number;
}

/** Baking after electroplating, by the strength of the steel. */
export const bakingTimes: Table<BakingRow> = {
  id: 'baking-astm-b850',
  title: 'Baking times after electroplating',
  sources: [
    {
      document: 'ASTM B850-98 (2009)',
      place: 'table of post-coating treatments',
      mark: 'printed',
      note: 'Read in one text; bake at 190 to 220 °C, times are minima.',
    },
  ],
  rows: [
    { strengthFromMpa: 1001, strengthToMpa: 1100, hrcFrom: 31, hrcTo: 33, hours: 8 },
    { strengthFromMpa: 1101, strengthToMpa: 1200, hrcFrom: 33, hrcTo: 36, hours: 10 },
    { strengthFromMpa: 1201, strengthToMpa: 1300, hrcFrom: 36, hrcTo: 39, hours: 12 },
    { strengthFromMpa: 1301, strengthToMpa: 1400, hrcFrom: 39, hrcTo: 43, hours: 14 },
    { strengthFromMpa: 1401, strengthToMpa: 1500, hrcFrom: 43, hrcTo: 45, hours: 16 },
    { strengthFromMpa: 1501, strengthToMpa: 1600, hrcFrom: 45, hrcTo: 47, hours: 18 },
    { strengthFromMpa: 1601, strengthToMpa: 1700, hrcFrom: 47, hrcTo: 49, hours: 20 },
    { strengthFromMpa: 1701, strengthToMpa: 1800, hrcFrom: 49, hrcTo: 51, hours: 22 },
  ],
};
