import type { Table } from '../../model/table.ts';
import type { GaugeToleranceRow } from './row-types.ts';

/** Thickness tolerance of cold-rolled carbon steel sheet by gauge, plus and minus. */
export const usColdRolledTolerance: Table<GaugeToleranceRow> = {
  id: 'us-cold-rolled-tolerance',
  title: 'US cold-rolled sheet thickness tolerance',
  sources: [
    {
      document: 'ASTM A568/A568M',
      place: 'cold-rolled sheet (A1008), restated by gauge',
      mark: 'printed',
      note: 'Trade tables for common widths, about 20 to 48 in; the standard itself also varies with width and edge distance. Gauges 7 to 9: one table has 0.0090, the other 0.0080.',
    },
  ],
  rows: [
    { gauge: 7, inch: 0.1793, plusMinusInch: 0.008 },
    { gauge: 8, inch: 0.1644, plusMinusInch: 0.008 },
    { gauge: 9, inch: 0.1495, plusMinusInch: 0.008 },
    { gauge: 10, inch: 0.1345, plusMinusInch: 0.006 },
    { gauge: 11, inch: 0.1196, plusMinusInch: 0.006 },
    { gauge: 12, inch: 0.1046, plusMinusInch: 0.006 },
    { gauge: 13, inch: 0.0897, plusMinusInch: 0.005 },
    { gauge: 14, inch: 0.0747, plusMinusInch: 0.005 },
    { gauge: 15, inch: 0.0673, plusMinusInch: 0.005 },
    { gauge: 16, inch: 0.0598, plusMinusInch: 0.005 },
    { gauge: 17, inch: 0.0538, plusMinusInch: 0.004 },
    { gauge: 18, inch: 0.0478, plusMinusInch: 0.004 },
    { gauge: 19, inch: 0.0418, plusMinusInch: 0.004 },
    { gauge: 20, inch: 0.0359, plusMinusInch: 0.003 },
    { gauge: 21, inch: 0.0329, plusMinusInch: 0.003 },
    { gauge: 22, inch: 0.0299, plusMinusInch: 0.003 },
    { gauge: 23, inch: 0.0269, plusMinusInch: 0.003 },
    { gauge: 24, inch: 0.0239, plusMinusInch: 0.003 },
    { gauge: 25, inch: 0.0209, plusMinusInch: 0.003 },
    { gauge: 26, inch: 0.0179, plusMinusInch: 0.002 },
    { gauge: 27, inch: 0.0164, plusMinusInch: 0.002 },
    { gauge: 28, inch: 0.0149, plusMinusInch: 0.002 },
    { gauge: 29, inch: 0.0135, plusMinusInch: 0.002 },
    { gauge: 30, inch: 0.012, plusMinusInch: 0.001 },
  ],
};
