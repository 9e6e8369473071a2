import type { Table } from '../../model/table.ts';
import type { BandRow } from './row-types.ts';

/** Hot-rolled structural steel, category A, plus and minus. Widths: up to 1200, 1500 mm. */
export const en10051CategoryA: Table<BandRow> = {
  id: 'en-10051-category-a',
  title: 'EN 10051 hot-rolled thickness tolerance, category A',
  sources: [
    {
      document: 'EN 10051',
      place: 'category A',
      mark: 'printed',
      note: 'Two copies agree. Wider than 1500 mm was not read.',
    },
  ],
  rows: [
    { lowMm: 0, highMm: 2, bounds: '(]', narrowMm: 0.17, mediumMm: 0.19, wideMm: null },
    { lowMm: 2, highMm: 2.5, bounds: '(]', narrowMm: 0.18, mediumMm: 0.21, wideMm: null },
    { lowMm: 2.5, highMm: 3, bounds: '(]', narrowMm: 0.2, mediumMm: 0.22, wideMm: null },
    { lowMm: 3, highMm: 4, bounds: '(]', narrowMm: 0.22, mediumMm: 0.24, wideMm: null },
    { lowMm: 4, highMm: 5, bounds: '(]', narrowMm: 0.24, mediumMm: 0.26, wideMm: null },
    { lowMm: 5, highMm: 6, bounds: '(]', narrowMm: 0.26, mediumMm: 0.28, wideMm: null },
  ],
};
