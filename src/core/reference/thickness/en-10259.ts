import type { Table } from '../../model/table.ts';
import type { BandRow } from './row-types.ts';

/** Cold-rolled stainless strip and sheet, normal tolerance, plus and minus. Widths: below 1000, 1300, 2100 mm. */
export const en10259: Table<BandRow> = {
  id: 'en-10259',
  title: 'EN 10259 stainless thickness tolerance',
  sources: [
    {
      document: 'EN 10259',
      place: 'normal tolerances',
      mark: 'printed',
      note: 'ISO 9445-2 is said to be the same in most respects; its table was not read.',
    },
  ],
  rows: [
    { lowMm: 0.3, highMm: 0.5, bounds: '[)', narrowMm: 0.04, mediumMm: 0.04, wideMm: null },
    { lowMm: 0.5, highMm: 0.6, bounds: '[)', narrowMm: 0.045, mediumMm: 0.05, wideMm: null },
    { lowMm: 0.6, highMm: 0.8, bounds: '[)', narrowMm: 0.05, mediumMm: 0.05, wideMm: null },
    { lowMm: 0.8, highMm: 1, bounds: '[)', narrowMm: 0.055, mediumMm: 0.06, wideMm: 0.06 },
    { lowMm: 1, highMm: 1.2, bounds: '[)', narrowMm: 0.06, mediumMm: 0.07, wideMm: 0.07 },
    { lowMm: 1.2, highMm: 1.5, bounds: '[)', narrowMm: 0.07, mediumMm: 0.08, wideMm: 0.08 },
    { lowMm: 1.5, highMm: 2, bounds: '[)', narrowMm: 0.08, mediumMm: 0.09, wideMm: 0.1 },
    { lowMm: 2, highMm: 2.5, bounds: '[)', narrowMm: 0.09, mediumMm: 0.1, wideMm: 0.11 },
    { lowMm: 2.5, highMm: 3, bounds: '[)', narrowMm: 0.11, mediumMm: 0.12, wideMm: 0.12 },
    { lowMm: 3, highMm: 4, bounds: '[)', narrowMm: 0.13, mediumMm: 0.14, wideMm: 0.14 },
    { lowMm: 4, highMm: 5, bounds: '[)', narrowMm: 0.14, mediumMm: 0.15, wideMm: 0.15 },
    { lowMm: 5, highMm: 6.5, bounds: '[)', narrowMm: 0.15, mediumMm: 0.15, wideMm: 0.16 },
  ],
};
