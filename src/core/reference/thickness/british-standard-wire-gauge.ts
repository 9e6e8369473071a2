import type { Table } from '../../model/table.ts';
import type { GaugeRow } from './row-types.ts';

/** British Standard Wire Gauge, met on older British drawings of aluminium, copper and brass sheet. */
export const britishStandardWireGauge: Table<GaugeRow> = {
  id: 'swg',
  title: 'British Standard Wire Gauge (SWG)',
  sources: [
    {
      document: 'British Standard Wire Gauge of 1883',
      place: 'gauges 3 to 30',
      mark: 'memory',
      note: 'Only 16 SWG = 1.63 mm was read in print.',
    },
  ],
  rows: [
    { gauge: 3, inch: 0.252 },
    { gauge: 4, inch: 0.232 },
    { gauge: 5, inch: 0.212 },
    { gauge: 6, inch: 0.192 },
    { gauge: 7, inch: 0.176 },
    { gauge: 8, inch: 0.16 },
    { gauge: 9, inch: 0.144 },
    { gauge: 10, inch: 0.128 },
    { gauge: 11, inch: 0.116 },
    { gauge: 12, inch: 0.104 },
    { gauge: 13, inch: 0.092 },
    { gauge: 14, inch: 0.08 },
    { gauge: 15, inch: 0.072 },
    { gauge: 16, inch: 0.064, mark: 'printed' },
    { gauge: 17, inch: 0.056 },
    { gauge: 18, inch: 0.048 },
    { gauge: 19, inch: 0.04 },
    { gauge: 20, inch: 0.036 },
    { gauge: 21, inch: 0.032 },
    { gauge: 22, inch: 0.028 },
    { gauge: 23, inch: 0.024 },
    { gauge: 24, inch: 0.022 },
    { gauge: 25, inch: 0.02 },
    { gauge: 26, inch: 0.018 },
    { gauge: 27, inch: 0.0164 },
    { gauge: 28, inch: 0.0148 },
    { gauge: 29, inch: 0.0136 },
    { gauge: 30, inch: 0.0124 },
  ],
};
