import type { Table } from '../../model/table.ts';
import type { PreferredRow } from './row-types.ts';

/** Metric thicknesses in which sheet is ordinarily made and stocked. */
export const preferredMetric: Table<PreferredRow> = {
  id: 'preferred-metric',
  title: 'Preferred metric thicknesses',
  sources: [
    {
      document: 'ASME B32.3M',
      place: 'first and second choice',
      mark: 'memory',
    },
    {
      document: 'European stock sizes',
      place: 'steel and aluminium sheet',
      mark: 'memory',
      note: 'Common practice, no source.',
    },
  ],
  rows: [
    { series: 'ASME B32.3M first choice', thicknessesMm: [0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.6, 2, 2.5, 3, 4, 5, 6] },
    {
      series: 'ASME B32.3M second choice',
      thicknessesMm: [0.45, 0.55, 0.65, 0.7, 0.9, 1.1, 1.4, 1.8, 2.2, 2.8, 3.2, 3.5, 4.5],
    },
    {
      series: 'European stock, steel',
      thicknessesMm: [0.5, 0.6, 0.7, 0.75, 0.8, 0.88, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6],
    },
    { series: 'European stock, aluminium', thicknessesMm: [0.5, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6] },
  ],
};
