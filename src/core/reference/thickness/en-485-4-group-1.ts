import type { Table } from '../../model/table.ts';
import type { BandRow } from './row-types.ts';

/** Cold-rolled aluminium of alloy group I, plus and minus. Widths: up to 1000, 1250, 1600 mm. */
export const en485Group1: Table<BandRow> = {
  id: 'en-485-4-group-1',
  title: 'EN 485-4 aluminium thickness tolerance, alloy group I',
  sources: [
    {
      document: 'EN 485-4:1994',
      place: 'Table 1, group I',
      mark: 'printed',
      note: 'Above 3.5 mm the groups do not differ. Later editions were not read. The sign was damaged in the text read; the standard is plus and minus.',
    },
  ],
  rows: [
    { lowMm: 0.2, highMm: 0.4, bounds: '(]', narrowMm: 0.02, mediumMm: 0.04, wideMm: 0.05 },
    { lowMm: 0.4, highMm: 0.5, bounds: '(]', narrowMm: 0.03, mediumMm: 0.04, wideMm: 0.05 },
    { lowMm: 0.5, highMm: 0.6, bounds: '(]', narrowMm: 0.03, mediumMm: 0.05, wideMm: 0.06 },
    { lowMm: 0.6, highMm: 0.8, bounds: '(]', narrowMm: 0.03, mediumMm: 0.06, wideMm: 0.07 },
    { lowMm: 0.8, highMm: 1, bounds: '(]', narrowMm: 0.04, mediumMm: 0.06, wideMm: 0.08 },
    { lowMm: 1, highMm: 1.2, bounds: '(]', narrowMm: 0.04, mediumMm: 0.07, wideMm: 0.09 },
    { lowMm: 1.2, highMm: 1.5, bounds: '(]', narrowMm: 0.05, mediumMm: 0.09, wideMm: 0.1 },
    { lowMm: 1.5, highMm: 1.8, bounds: '(]', narrowMm: 0.06, mediumMm: 0.1, wideMm: 0.11 },
    { lowMm: 1.8, highMm: 2, bounds: '(]', narrowMm: 0.06, mediumMm: 0.11, wideMm: 0.12 },
    { lowMm: 2, highMm: 2.5, bounds: '(]', narrowMm: 0.07, mediumMm: 0.12, wideMm: 0.13 },
    { lowMm: 2.5, highMm: 3, bounds: '(]', narrowMm: 0.08, mediumMm: 0.13, wideMm: 0.15 },
    { lowMm: 3, highMm: 3.5, bounds: '(]', narrowMm: 0.1, mediumMm: 0.15, wideMm: 0.17 },
    { lowMm: 3.5, highMm: 4, bounds: '(]', narrowMm: 0.15, mediumMm: 0.2, wideMm: 0.22 },
    { lowMm: 4, highMm: 5, bounds: '(]', narrowMm: 0.18, mediumMm: 0.22, wideMm: 0.24 },
    { lowMm: 5, highMm: 6, bounds: '(]', narrowMm: 0.2, mediumMm: 0.24, wideMm: 0.25 },
  ],
};
