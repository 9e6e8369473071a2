import type { Table } from '../../model/table.ts';

export interface PreloadRow {
  readonly quantity: 'share of proof load' | 'scatter of tightening';
  /** Fraction, no unit. */
  readonly value: number;
}

/** How far a reusable joint is tightened, and how far torque misses. */
export const preloadPractice: Table<PreloadRow> = {
  id: 'preload-practice',
  title: 'Usual preload and the scatter of tightening by torque',
  sources: [
    {
      document: 'Engineering handbooks on bolted joints',
      place: 'preload of reusable joints',
      mark: 'printed',
      note: 'F = 0.75 x proof load; the scatter of +/-30 % was read in one text.',
    },
  ],
  rows: [
    { quantity: 'share of proof load', value: 0.75 },
    { quantity: 'scatter of tightening', value: 0.3 },
  ],
};
