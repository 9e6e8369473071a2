import type { Table } from '../../model/table.ts';
import type { BandRow } from './row-types.ts';

/** Cold-rolled steel below 260 MPa yield, special tolerance (only where ordered), plus and minus. Widths: up to 1200, 1500, over 1500 mm. */
export const en10131Special: Table<BandRow> = {
  id: 'en-10131-special',
  title: 'EN 10131 cold-rolled thickness tolerance, special',
  sources: [
    {
      document: 'EN 10131:2006',
      place: 'Tables 1 and 2, yield below 260 MPa, special tolerances',
      mark: 'printed',
    },
  ],
  rows: [
    { lowMm: 0.35, highMm: 0.4, bounds: '[]', narrowMm: 0.02, mediumMm: 0.025, wideMm: 0.03 },
    { lowMm: 0.4, highMm: 0.6, bounds: '(]', narrowMm: 0.025, mediumMm: 0.03, wideMm: 0.035 },
    { lowMm: 0.6, highMm: 0.8, bounds: '(]', narrowMm: 0.03, mediumMm: 0.035, wideMm: 0.04 },
    { lowMm: 0.8, highMm: 1, bounds: '(]', narrowMm: 0.035, mediumMm: 0.04, wideMm: 0.05 },
    { lowMm: 1, highMm: 1.2, bounds: '(]', narrowMm: 0.04, mediumMm: 0.05, wideMm: 0.06 },
    { lowMm: 1.2, highMm: 1.6, bounds: '(]', narrowMm: 0.05, mediumMm: 0.06, wideMm: 0.07 },
    { lowMm: 1.6, highMm: 2, bounds: '(]', narrowMm: 0.06, mediumMm: 0.07, wideMm: 0.08 },
    { lowMm: 2, highMm: 2.5, bounds: '(]', narrowMm: 0.08, mediumMm: 0.09, wideMm: 0.1 },
    { lowMm: 2.5, highMm: 3, bounds: '(]', narrowMm: 0.1, mediumMm: 0.11, wideMm: 0.12 },
  ],
};
