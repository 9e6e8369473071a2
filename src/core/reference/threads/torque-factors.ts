import type { Mark, Table } from '../../model/table.ts';

export interface TorqueFactorRow {
  readonly condition: string;
  /** Nut factor K, no unit. */
  readonly low: number;
  readonly high: number;
  readonly mark: Mark;
}

/** Nut factors K of T = K d F. */
export const torqueFactors: Table<TorqueFactorRow> = {
  id: 'torque-factors',
  title: 'Nut factors for tightening by torque',
  sources: [
    {
      document: 'Engineering handbooks on bolted joints',
      place: 'nut factor by lubrication',
      mark: 'printed',
      note: 'One text for the three lubrication states, another for what is seen in industry. Gritty threads go above 0.30.',
    },
    { document: 'NASA RP-1228 (1990)', place: 'torque', mark: 'memory', note: 'About 0.2.' },
  ],
  rows: [
    { condition: 'dry steel', low: 0.2, high: 0.25, mark: 'printed' },
    { condition: 'oiled', low: 0.15, high: 0.2, mark: 'printed' },
    { condition: 'anti-seize', low: 0.12, high: 0.16, mark: 'printed' },
    { condition: 'seen in industry', low: 0.1, high: 0.3, mark: 'printed' },
    { condition: 'handbook value when nothing is known', low: 0.2, high: 0.2, mark: 'memory' },
  ],
};
