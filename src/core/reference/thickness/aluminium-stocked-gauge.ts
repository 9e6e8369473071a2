import type { Table } from '../../model/table.ts';
import type { GaugeRow } from './row-types.ts';

/** Decimal thicknesses in which aluminium sheet of a gauge number is really stocked. */
export const aluminiumStockedGauge: Table<GaugeRow> = {
  id: 'aluminium-stocked-gauge',
  title: 'Aluminium gauge, stocked decimals',
  sources: [
    {
      document: 'Stocked decimals of aluminium sheet',
      place: 'trade table, 10 to 22 gauge',
      mark: 'printed',
      note: 'One page read.',
    },
    {
      document: 'Stocked decimals of aluminium sheet',
      place: '8 gauge',
      mark: 'memory',
    },
  ],
  rows: [
    { gauge: 8, inch: 0.125, mark: 'memory' },
    { gauge: 10, inch: 0.1 },
    { gauge: 11, inch: 0.09 },
    { gauge: 12, inch: 0.08 },
    { gauge: 14, inch: 0.063 },
    { gauge: 16, inch: 0.05 },
    { gauge: 18, inch: 0.04 },
    { gauge: 20, inch: 0.032 },
    { gauge: 22, inch: 0.025 },
  ],
};
