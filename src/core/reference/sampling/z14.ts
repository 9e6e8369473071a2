import type { Table } from '../../model/table.ts';

export interface SamplingZ14Row {
  readonly lotFrom: number;
  readonly lotTo: number;
  readonly letter: string;
  readonly sample: number;
  /** Accept with this many defects; up: use the plan above, down: the plan below. */
  readonly aql065: number | 'up' | 'down';
  readonly aql10: number | 'up' | 'down';
  readonly aql15: number | 'up' | 'down';
  readonly aql25: number | 'up' | 'down';
  readonly aql40: number | 'up' | 'down';
}

/** Single normal sampling, level II. */
export const samplingZ14: Table<SamplingZ14Row> = {
  id: 'sampling-z1-4',
  title: 'Sampling by attributes: single, normal, level II',
  sources: [
    { document: 'ANSI/ASQ Z1.4', place: 'Tables I and II-A', mark: 'memory', note: 'From memory, no text read.' },
  ],
  rows: [
    {
      lotFrom: 26,
      lotTo: 50,
      letter: 'D',
      sample: 8,
      aql065: 'down',
      aql10: 'down',
      aql15: 0,
      aql25: 'up',
      aql40: 'down',
    },
    { lotFrom: 51, lotTo: 90, letter: 'E', sample: 13, aql065: 'down', aql10: 0, aql15: 'up', aql25: 'down', aql40: 1 },
    { lotFrom: 91, lotTo: 150, letter: 'F', sample: 20, aql065: 0, aql10: 'up', aql15: 'down', aql25: 1, aql40: 2 },
    { lotFrom: 151, lotTo: 280, letter: 'G', sample: 32, aql065: 'up', aql10: 'down', aql15: 1, aql25: 2, aql40: 3 },
    { lotFrom: 281, lotTo: 500, letter: 'H', sample: 50, aql065: 'down', aql10: 1, aql15: 2, aql25: 3, aql40: 5 },
    { lotFrom: 501, lotTo: 1200, letter: 'J', sample: 80, aql065: 1, aql10: 2, aql15: 3, aql25: 5, aql40: 7 },
    { lotFrom: 1201, lotTo: 3200, letter: 'K', sample: 125, aql065: 2, aql10: 3, aql15: 5, aql25: 7, aql40: 10 },
    { lotFrom: 3201, lotTo: 10000, letter: 'L', sample: 200, aql065: 3, aql10: 5, aql15: 7, aql25: 10, aql40: 14 },
  ],
};
