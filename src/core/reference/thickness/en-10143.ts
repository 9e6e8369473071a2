import type { Table } from '../../model/table.ts';
import type { BandRow } from './row-types.ts';

/** Hot-dip coated steel below 260 MPa yield, coating included, normal tolerance, plus and minus. Widths: up to 1200, 1500, over 1500 mm. */
export const en10143: Table<BandRow> = {
  id: 'en-10143',
  title: 'EN 10143 hot-dip coated thickness tolerance',
  sources: [
    {
      document: 'EN 10143:2006',
      place: 'Table 1, yield below 260 MPa, normal tolerances',
      mark: 'printed',
      note: 'One copy read; its sign was damaged, the standard is plus and minus.',
    },
  ],
  rows: [
    { lowMm: 0.2, highMm: 0.4, bounds: '(]', narrowMm: 0.04, mediumMm: 0.05, wideMm: 0.06 },
    { lowMm: 0.4, highMm: 0.6, bounds: '(]', narrowMm: 0.04, mediumMm: 0.05, wideMm: 0.06 },
    { lowMm: 0.6, highMm: 0.8, bounds: '(]', narrowMm: 0.05, mediumMm: 0.06, wideMm: 0.07 },
    { lowMm: 0.8, highMm: 1, bounds: '(]', narrowMm: 0.06, mediumMm: 0.07, wideMm: 0.08 },
    { lowMm: 1, highMm: 1.2, bounds: '(]', narrowMm: 0.07, mediumMm: 0.08, wideMm: 0.09 },
    { lowMm: 1.2, highMm: 1.6, bounds: '(]', narrowMm: 0.1, mediumMm: 0.11, wideMm: 0.12 },
    { lowMm: 1.6, highMm: 2, bounds: '(]', narrowMm: 0.12, mediumMm: 0.13, wideMm: 0.14 },
    { lowMm: 2, highMm: 2.5, bounds: '(]', narrowMm: 0.14, mediumMm: 0.15, wideMm: 0.16 },
    { lowMm: 2.5, highMm: 3, bounds: '(]', narrowMm: 0.17, mediumMm: 0.17, wideMm: 0.18 },
    { lowMm: 3, highMm: 5, bounds: '(]', narrowMm: 0.2, mediumMm: 0.2, wideMm: 0.21 },
    { lowMm: 5, highMm: 6.5, bounds: '(]', narrowMm: 0.22, mediumMm: 0.22, wideMm: 0.23 },
  ],
};
