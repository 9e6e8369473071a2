import type { Table } from '../../model/table.ts';
import type { GaugeRow } from './row-types.ts';

/** Gauge of galvanized and galvannealed steel sheet, coating included: the steel ounces plus 2.5 ounces per square foot of zinc. */
export const galvanizedGauge: Table<GaugeRow> = {
  id: 'galvanized-gauge',
  title: 'Galvanized sheet gauge',
  sources: [
    {
      document: 'Galvanized sheet gauge',
      place: 'gauges 8 to 30, inches to four decimals, coating included',
      mark: 'printed',
      note: 'Trade tables that restate it, one of them citing ASTM A924/A653, agree.',
    },
  ],
  rows: [
    { gauge: 8, inch: 0.1681 },
    { gauge: 9, inch: 0.1532 },
    { gauge: 10, inch: 0.1382 },
    { gauge: 11, inch: 0.1233 },
    { gauge: 12, inch: 0.1084 },
    { gauge: 13, inch: 0.0934 },
    { gauge: 14, inch: 0.0785 },
    { gauge: 15, inch: 0.071 },
    { gauge: 16, inch: 0.0635 },
    { gauge: 17, inch: 0.0575 },
    { gauge: 18, inch: 0.0516 },
    { gauge: 19, inch: 0.0456 },
    { gauge: 20, inch: 0.0396 },
    { gauge: 21, inch: 0.0366 },
    { gauge: 22, inch: 0.0336 },
    { gauge: 23, inch: 0.0306 },
    { gauge: 24, inch: 0.0276 },
    { gauge: 25, inch: 0.0247 },
    { gauge: 26, inch: 0.0217 },
    { gauge: 27, inch: 0.0202 },
    { gauge: 28, inch: 0.0187 },
    { gauge: 29, inch: 0.0172 },
    { gauge: 30, inch: 0.0157 },
  ],
};
