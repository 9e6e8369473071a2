import type { Table } from '../../model/table.ts';
import type { GaugeRow } from './row-types.ts';

/** Gauge of aluminium, copper, brass and bronze sheet, the same as American Wire Gauge: 0.005 in x 92^((36 - n)/39). */
export const brownSharpeGauge: Table<GaugeRow> = {
  id: 'brown-sharpe',
  title: 'Brown & Sharpe gauge (AWG)',
  sources: [
    {
      document: 'ASTM B258',
      place: 'formula: 0000 is 0.46 in, 36 is 0.005 in, equal ratios between',
      mark: 'printed',
      note: 'Gauges 3 to 27 are also printed in trade tables.',
    },
    {
      document: 'ASTM B258',
      place: 'gauges 28 to 30, calculated by the formula',
      mark: 'derived',
    },
  ],
  rows: [
    { gauge: 3, inch: 0.2294 },
    { gauge: 4, inch: 0.2043 },
    { gauge: 5, inch: 0.1819 },
    { gauge: 6, inch: 0.162 },
    { gauge: 7, inch: 0.1443 },
    { gauge: 8, inch: 0.1285 },
    { gauge: 9, inch: 0.1144 },
    { gauge: 10, inch: 0.1019 },
    { gauge: 11, inch: 0.0907 },
    { gauge: 12, inch: 0.0808 },
    { gauge: 13, inch: 0.072 },
    { gauge: 14, inch: 0.0641 },
    { gauge: 15, inch: 0.0571 },
    { gauge: 16, inch: 0.0508 },
    { gauge: 17, inch: 0.0453 },
    { gauge: 18, inch: 0.0403 },
    { gauge: 19, inch: 0.0359 },
    { gauge: 20, inch: 0.032 },
    { gauge: 21, inch: 0.0285 },
    { gauge: 22, inch: 0.0253 },
    { gauge: 23, inch: 0.0226 },
    { gauge: 24, inch: 0.0201 },
    { gauge: 25, inch: 0.0179 },
    { gauge: 26, inch: 0.0159 },
    { gauge: 27, inch: 0.0142 },
    { gauge: 28, inch: 0.0126, mark: 'derived' },
    { gauge: 29, inch: 0.0113, mark: 'derived' },
    { gauge: 30, inch: 0.01, mark: 'derived' },
  ],
};
