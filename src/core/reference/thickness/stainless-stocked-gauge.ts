import type { Table } from '../../model/table.ts';
import type { StainlessGaugeRow } from './row-types.ts';

/** Gauge of stainless sheet as service centres roll and stock it: thinner than the US Standard gauge, close to the gauge of uncoated steel. */
export const stainlessStockedGauge: Table<StainlessGaugeRow> = {
  id: 'stainless-stocked-gauge',
  title: 'Stainless gauge, stocked decimals',
  sources: [
    {
      document: 'Stocked decimals of stainless sheet',
      place: 'first trade table, `inch`',
      mark: 'printed',
      note: 'One page read. ASTM A480 itself calls gauge numbers archaic and without general agreement.',
    },
    {
      document: 'Stocked decimals of stainless sheet',
      place: 'second trade table, `secondInch`',
      mark: 'printed',
      note: 'Differs from the first by up to 0.005 in (8 gauge).',
    },
  ],
  rows: [
    { gauge: 7, inch: 0.1874, secondInch: 0.1874 },
    { gauge: 8, inch: 0.165, secondInch: 0.16 },
    { gauge: 10, inch: 0.135, secondInch: 0.134 },
    { gauge: 11, inch: 0.12, secondInch: 0.12 },
    { gauge: 12, inch: 0.1054, secondInch: 0.105 },
    { gauge: 14, inch: 0.0751, secondInch: 0.075 },
    { gauge: 16, inch: 0.0595, secondInch: 0.06 },
    { gauge: 18, inch: 0.048, secondInch: 0.048 },
    { gauge: 20, inch: 0.0355, secondInch: 0.036 },
    { gauge: 22, inch: 0.0293, secondInch: 0.03 },
    { gauge: 24, inch: 0.0235, secondInch: 0.024 },
    { gauge: 26, inch: 0.0178, secondInch: 0.018 },
    { gauge: 28, inch: 0.0151, secondInch: 0.015 },
  ],
};
