import type { Table } from '../../model/table.ts';
import type { GaugeRow } from './row-types.ts';

/** Birmingham (Stubs) gauge of strip and tube walls, an empirical table. */
export const birminghamGauge: Table<GaugeRow> = {
  id: 'birmingham',
  title: 'Birmingham (Stubs) gauge',
  sources: [
    {
      document: 'Birmingham wire gauge for strip and tubing',
      place: 'gauges 3 to 26',
      mark: 'printed',
      note: 'One trade table read.',
    },
  ],
  rows: [
    { gauge: 3, inch: 0.259 },
    { gauge: 4, inch: 0.238 },
    { gauge: 5, inch: 0.22 },
    { gauge: 6, inch: 0.203 },
    { gauge: 7, inch: 0.18 },
    { gauge: 8, inch: 0.165 },
    { gauge: 9, inch: 0.148 },
    { gauge: 10, inch: 0.134 },
    { gauge: 11, inch: 0.12 },
    { gauge: 12, inch: 0.109 },
    { gauge: 13, inch: 0.095 },
    { gauge: 14, inch: 0.083 },
    { gauge: 15, inch: 0.072 },
    { gauge: 16, inch: 0.065 },
    { gauge: 17, inch: 0.058 },
    { gauge: 18, inch: 0.049 },
    { gauge: 19, inch: 0.042 },
    { gauge: 20, inch: 0.035 },
    { gauge: 21, inch: 0.032 },
    { gauge: 22, inch: 0.028 },
    { gauge: 23, inch: 0.025 },
    { gauge: 24, inch: 0.022 },
    { gauge: 25, inch: 0.02 },
    { gauge: 26, inch: 0.018 },
  ],
};
