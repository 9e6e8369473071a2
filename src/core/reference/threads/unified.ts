import type { Table } from '../../model/table.ts';

export interface UnifiedRow {
  /** Size and threads per inch: "8-32". */
  readonly thread: string;
  readonly series: 'UNC' | 'UNF';
  /** Nominal major diameter. */
  readonly diameterIn: number;
  readonly threadsPerInch: number;
  readonly stressAreaIn2: number;
}

/** Unified inch threads, #2 to 3/8. */
export const unifiedThreads: Table<UnifiedRow> = {
  id: 'thread-unified',
  title: 'Unified threads: diameter, threads per inch, stress area',
  sources: [
    { document: 'ASME B1.1', place: 'UNC and UNF series', mark: 'printed' },
    {
      document: 'ASME B1.1',
      place: 'tensile stress areas',
      mark: 'printed',
      note: 'Texts agree, and the formula with them to one unit of the last digit; 5/16-18 is 0.0524 in two texts and 0.0525 in a third.',
    },
  ],
  rows: [
    { thread: '2-56', series: 'UNC', diameterIn: 0.086, threadsPerInch: 56, stressAreaIn2: 0.0037 },
    { thread: '4-40', series: 'UNC', diameterIn: 0.112, threadsPerInch: 40, stressAreaIn2: 0.00604 },
    { thread: '6-32', series: 'UNC', diameterIn: 0.138, threadsPerInch: 32, stressAreaIn2: 0.00909 },
    { thread: '8-32', series: 'UNC', diameterIn: 0.164, threadsPerInch: 32, stressAreaIn2: 0.014 },
    { thread: '10-24', series: 'UNC', diameterIn: 0.19, threadsPerInch: 24, stressAreaIn2: 0.0175 },
    { thread: '10-32', series: 'UNF', diameterIn: 0.19, threadsPerInch: 32, stressAreaIn2: 0.02 },
    { thread: '1/4-20', series: 'UNC', diameterIn: 0.25, threadsPerInch: 20, stressAreaIn2: 0.0318 },
    { thread: '1/4-28', series: 'UNF', diameterIn: 0.25, threadsPerInch: 28, stressAreaIn2: 0.0364 },
    { thread: '5/16-18', series: 'UNC', diameterIn: 0.3125, threadsPerInch: 18, stressAreaIn2: 0.0524 },
    { thread: '5/16-24', series: 'UNF', diameterIn: 0.3125, threadsPerInch: 24, stressAreaIn2: 0.058 },
    { thread: '3/8-16', series: 'UNC', diameterIn: 0.375, threadsPerInch: 16, stressAreaIn2: 0.0775 },
    { thread: '3/8-24', series: 'UNF', diameterIn: 0.375, threadsPerInch: 24, stressAreaIn2: 0.0878 },
  ],
};
