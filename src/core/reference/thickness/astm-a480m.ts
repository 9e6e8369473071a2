import type { Table } from '../../model/table.ts';
import type { ThicknessRow } from './row-types.ts';

/** Cold-rolled stainless sheet, metric extract at single thicknesses, plus and minus. Widths: up to 1000, 1300, 2100 mm. For comparison: no check uses it. */
export const astmA480m: Table<ThicknessRow> = {
  id: 'astm-a480m',
  title: 'ASTM A480M stainless thickness tolerance, extract',
  sources: [
    {
      document: 'ASTM A480/A480M',
      place: 'metric thickness tolerances, extract',
      mark: 'printed',
      note: 'Differs from EN 10259 by up to 0.02 mm: 2.00 mm 0.10 against 0.09, 3.00 mm at the widest 0.15 against 0.14.',
    },
  ],
  rows: [
    { thicknessMm: 0.3, narrowMm: 0.03, mediumMm: null, wideMm: null },
    { thicknessMm: 0.4, narrowMm: 0.04, mediumMm: 0.04, wideMm: null },
    { thicknessMm: 1, narrowMm: 0.06, mediumMm: 0.06, wideMm: 0.08 },
    { thicknessMm: 2, narrowMm: 0.1, mediumMm: 0.1, wideMm: 0.11 },
    { thicknessMm: 3, narrowMm: 0.13, mediumMm: 0.13, wideMm: 0.15 },
  ],
};
