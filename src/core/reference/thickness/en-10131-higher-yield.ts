import type { Table } from '../../model/table.ts';
import type { BandRow } from './row-types.ts';

/** Cold-rolled steel of 260 to 340 MPa yield, normal tolerance, plus and minus; read up to 1.0 mm. Widths: up to 1200, 1500, over 1500 mm. */
export const en10131HigherYield: Table<BandRow> = {
  id: 'en-10131-higher-yield',
  title: 'EN 10131 cold-rolled thickness tolerance, yield 260 to 340 MPa',
  sources: [
    {
      document: 'EN 10131:2006',
      place: 'Tables 1 and 2, yield 260 to 340 MPa, normal tolerances',
      mark: 'printed',
      note: 'Rows above 1.0 mm were not read.',
    },
  ],
  rows: [
    { lowMm: 0.35, highMm: 0.4, bounds: '[]', narrowMm: 0.04, mediumMm: 0.05, wideMm: 0.06 },
    { lowMm: 0.4, highMm: 0.6, bounds: '(]', narrowMm: 0.04, mediumMm: 0.05, wideMm: 0.06 },
    { lowMm: 0.6, highMm: 0.8, bounds: '(]', narrowMm: 0.05, mediumMm: 0.06, wideMm: 0.07 },
    { lowMm: 0.8, highMm: 1, bounds: '(]', narrowMm: 0.06, mediumMm: 0.07, wideMm: 0.08 },
  ],
};
