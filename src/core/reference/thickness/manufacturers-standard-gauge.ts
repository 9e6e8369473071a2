import type { Table } from '../../model/table.ts';
import type { GaugeRow } from './row-types.ts';

/** Gauge of uncoated steel sheet: thickness in inches is ounces per square foot / (16 x 41.82). */
export const manufacturersStandardGauge: Table<GaugeRow> = {
  id: 'msg',
  title: "Manufacturers' Standard gauge (uncoated steel)",
  sources: [
    {
      document: "Manufacturers' Standard Gauge for steel sheet",
      place: 'gauges 3 to 30, inches to four decimals',
      mark: 'printed',
      note: 'Trade tables that restate it agree on every inch value; some charts round to three decimals.',
    },
  ],
  rows: [
    { gauge: 3, ouncesPerSqFt: 160, inch: 0.2391 },
    { gauge: 4, ouncesPerSqFt: 150, inch: 0.2242 },
    { gauge: 5, ouncesPerSqFt: 140, inch: 0.2092 },
    { gauge: 6, ouncesPerSqFt: 130, inch: 0.1943 },
    { gauge: 7, ouncesPerSqFt: 120, inch: 0.1793 },
    { gauge: 8, ouncesPerSqFt: 110, inch: 0.1644 },
    { gauge: 9, ouncesPerSqFt: 100, inch: 0.1495 },
    { gauge: 10, ouncesPerSqFt: 90, inch: 0.1345 },
    { gauge: 11, ouncesPerSqFt: 80, inch: 0.1196 },
    { gauge: 12, ouncesPerSqFt: 70, inch: 0.1046 },
    { gauge: 13, ouncesPerSqFt: 60, inch: 0.0897 },
    { gauge: 14, ouncesPerSqFt: 50, inch: 0.0747 },
    { gauge: 15, ouncesPerSqFt: 45, inch: 0.0673 },
    { gauge: 16, ouncesPerSqFt: 40, inch: 0.0598 },
    { gauge: 17, ouncesPerSqFt: 36, inch: 0.0538 },
    { gauge: 18, ouncesPerSqFt: 32, inch: 0.0478 },
    { gauge: 19, ouncesPerSqFt: 28, inch: 0.0418 },
    { gauge: 20, ouncesPerSqFt: 24, inch: 0.0359 },
    { gauge: 21, ouncesPerSqFt: 22, inch: 0.0329 },
    { gauge: 22, ouncesPerSqFt: 20, inch: 0.0299 },
    { gauge: 23, ouncesPerSqFt: 18, inch: 0.0269 },
    { gauge: 24, ouncesPerSqFt: 16, inch: 0.0239 },
    { gauge: 25, ouncesPerSqFt: 14, inch: 0.0209 },
    { gauge: 26, ouncesPerSqFt: 12, inch: 0.0179 },
    { gauge: 27, ouncesPerSqFt: 11, inch: 0.0164 },
    { gauge: 28, ouncesPerSqFt: 10, inch: 0.0149 },
    { gauge: 29, ouncesPerSqFt: 9, inch: 0.0135 },
    { gauge: 30, ouncesPerSqFt: 8, inch: 0.012 },
  ],
};
