import type { Table } from '../../model/table.ts';
import type { InchBandRow } from './row-types.ts';

/** Cold-rolled stainless sheet, plus and minus, whatever the width. */
export const astmA480Inch: Table<InchBandRow> = {
  id: 'astm-a480-inch',
  title: 'ASTM A480 stainless thickness tolerance, inch',
  sources: [
    {
      document: 'ASTM A480/A480M',
      place: 'cold-rolled sheet, inch',
      mark: 'memory',
    },
  ],
  rows: [
    { lowInch: 0.007, highInch: 0.016, bounds: '[]', narrowInch: 0.002, mediumInch: 0.002, wideInch: 0.002 },
    { lowInch: 0.016, highInch: 0.026, bounds: '(]', narrowInch: 0.003, mediumInch: 0.003, wideInch: 0.003 },
    { lowInch: 0.026, highInch: 0.04, bounds: '(]', narrowInch: 0.004, mediumInch: 0.004, wideInch: 0.004 },
    { lowInch: 0.04, highInch: 0.058, bounds: '(]', narrowInch: 0.005, mediumInch: 0.005, wideInch: 0.005 },
    { lowInch: 0.058, highInch: 0.072, bounds: '(]', narrowInch: 0.006, mediumInch: 0.006, wideInch: 0.006 },
    { lowInch: 0.072, highInch: 0.083, bounds: '(]', narrowInch: 0.007, mediumInch: 0.007, wideInch: 0.007 },
    { lowInch: 0.083, highInch: 0.098, bounds: '(]', narrowInch: 0.008, mediumInch: 0.008, wideInch: 0.008 },
    { lowInch: 0.098, highInch: 0.114, bounds: '(]', narrowInch: 0.009, mediumInch: 0.009, wideInch: 0.009 },
    { lowInch: 0.114, highInch: 0.13, bounds: '(]', narrowInch: 0.01, mediumInch: 0.01, wideInch: 0.01 },
    { lowInch: 0.13, highInch: 0.145, bounds: '(]', narrowInch: 0.012, mediumInch: 0.012, wideInch: 0.012 },
    { lowInch: 0.145, highInch: 0.1875, bounds: '()', narrowInch: 0.014, mediumInch: 0.014, wideInch: 0.014 },
  ],
};
