import type { Table } from '../../model/table.ts';
import type { BandRow } from './row-types.ts';

/** Hot-rolled low-carbon steel of EN 10111, plus and minus. Widths: up to 1200, 1500 mm. */
export const en10051: Table<BandRow> = {
  id: 'en-10051',
  title: 'EN 10051 hot-rolled thickness tolerance, EN 10111 grades',
  sources: [
    {
      document: 'EN 10051',
      place: 'steels of EN 10111',
      mark: 'printed',
      note: 'Wider than 1500 mm was not read.',
    },
  ],
  rows: [
    { lowMm: 0, highMm: 2, bounds: '(]', narrowMm: 0.13, mediumMm: 0.14, wideMm: null },
    { lowMm: 2, highMm: 2.5, bounds: '(]', narrowMm: 0.14, mediumMm: 0.16, wideMm: null },
    { lowMm: 2.5, highMm: 3, bounds: '(]', narrowMm: 0.15, mediumMm: 0.17, wideMm: null },
    { lowMm: 3, highMm: 4, bounds: '(]', narrowMm: 0.17, mediumMm: 0.18, wideMm: null },
    { lowMm: 4, highMm: 5, bounds: '(]', narrowMm: 0.18, mediumMm: 0.2, wideMm: null },
    { lowMm: 5, highMm: 6, bounds: '(]', narrowMm: 0.2, mediumMm: 0.21, wideMm: null },
  ],
};
