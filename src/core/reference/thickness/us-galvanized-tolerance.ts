import type { Table } from '../../model/table.ts';
import type { GaugeToleranceRow } from './row-types.ts';

/** Thickness tolerance of galvanized steel sheet by gauge, coating included, plus and minus. */
export const usGalvanizedTolerance: Table<GaugeToleranceRow> = {
  id: 'us-galvanized-tolerance',
  title: 'US galvanized sheet thickness tolerance',
  sources: [
    {
      document: 'ASTM A924/A924M',
      place: 'galvanized sheet (A653), restated by gauge',
      mark: 'printed',
      note: 'Trade tables for common widths, about 20 to 48 in; the standard itself also varies with width and edge distance.',
    },
  ],
  rows: [
    { gauge: 8, inch: 0.1681, plusMinusInch: 0.009 },
    { gauge: 9, inch: 0.1532, plusMinusInch: 0.009 },
    { gauge: 10, inch: 0.1382, plusMinusInch: 0.009 },
    { gauge: 11, inch: 0.1233, plusMinusInch: 0.009 },
    { gauge: 12, inch: 0.1084, plusMinusInch: 0.009 },
    { gauge: 13, inch: 0.0934, plusMinusInch: 0.008 },
    { gauge: 14, inch: 0.0785, plusMinusInch: 0.008 },
    { gauge: 15, inch: 0.071, plusMinusInch: 0.006 },
    { gauge: 16, inch: 0.0635, plusMinusInch: 0.006 },
    { gauge: 17, inch: 0.0575, plusMinusInch: 0.005 },
    { gauge: 18, inch: 0.0516, plusMinusInch: 0.005 },
    { gauge: 19, inch: 0.0456, plusMinusInch: 0.005 },
    { gauge: 20, inch: 0.0396, plusMinusInch: 0.004 },
    { gauge: 21, inch: 0.0366, plusMinusInch: 0.004 },
    { gauge: 22, inch: 0.0336, plusMinusInch: 0.004 },
    { gauge: 23, inch: 0.0306, plusMinusInch: 0.004 },
    { gauge: 24, inch: 0.0276, plusMinusInch: 0.004 },
    { gauge: 25, inch: 0.0247, plusMinusInch: 0.004 },
    { gauge: 26, inch: 0.0217, plusMinusInch: 0.003 },
    { gauge: 27, inch: 0.0202, plusMinusInch: 0.003 },
    { gauge: 28, inch: 0.0187, plusMinusInch: 0.003 },
    { gauge: 29, inch: 0.0172, plusMinusInch: 0.003 },
    { gauge: 30, inch: 0.0157, plusMinusInch: 0.003 },
  ],
};
