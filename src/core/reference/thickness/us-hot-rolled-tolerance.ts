import type { Table } from '../../model/table.ts';
import type { GaugeToleranceRow } from './row-types.ts';

/** Thickness tolerance of hot-rolled carbon steel sheet by gauge, plus and minus. */
export const usHotRolledTolerance: Table<GaugeToleranceRow> = {
  id: 'us-hot-rolled-tolerance',
  title: 'US hot-rolled sheet thickness tolerance',
  sources: [
    {
      document: 'ASTM A568/A568M',
      place: 'hot-rolled sheet (A1011), restated by gauge',
      mark: 'printed',
      note: 'Trade tables for common widths, about 20 to 48 in; the standard itself also varies with width and edge distance.',
    },
  ],
  rows: [
    { gauge: 4, inch: 0.2242, plusMinusInch: 0.009 },
    { gauge: 5, inch: 0.2092, plusMinusInch: 0.009 },
    { gauge: 6, inch: 0.1943, plusMinusInch: 0.009 },
    { gauge: 7, inch: 0.1793, plusMinusInch: 0.008 },
    { gauge: 8, inch: 0.1644, plusMinusInch: 0.008 },
    { gauge: 9, inch: 0.1495, plusMinusInch: 0.008 },
    { gauge: 10, inch: 0.1345, plusMinusInch: 0.008 },
    { gauge: 11, inch: 0.1196, plusMinusInch: 0.008 },
    { gauge: 12, inch: 0.1046, plusMinusInch: 0.008 },
    { gauge: 13, inch: 0.0897, plusMinusInch: 0.007 },
    { gauge: 14, inch: 0.0747, plusMinusInch: 0.007 },
    { gauge: 15, inch: 0.0673, plusMinusInch: 0.006 },
    { gauge: 16, inch: 0.0598, plusMinusInch: 0.006 },
    { gauge: 17, inch: 0.0538, plusMinusInch: 0.006 },
    { gauge: 18, inch: 0.0478, plusMinusInch: 0.005 },
  ],
};
