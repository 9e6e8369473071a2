import type { Table } from '../../model/table.ts';

export interface MetricCoarseRow {
  readonly thread: string;
  /** Nominal major diameter. */
  readonly diameterMm: number;
  readonly pitchMm: number;
  /** As the property-class standard prints it, rounded to three digits. */
  readonly stressAreaMm2: number;
  /** Drill for the tapping hole. */
  readonly coreDrillMm: number;
}

/** ISO metric coarse threads, M2 to M10. */
export const metricCoarse: Table<MetricCoarseRow> = {
  id: 'thread-metric-coarse',
  title: 'Metric coarse threads: pitch, stress area, tapping drill',
  sources: [
    { document: 'ISO 261', place: 'Table 2, coarse pitches', mark: 'printed' },
    { document: 'ISO 898-1', place: 'stress areas', mark: 'printed', note: 'Two texts and the formula agree.' },
    { document: 'ISO 2306', place: 'drill sizes for tapping', mark: 'printed', note: 'Read in one text.' },
  ],
  rows: [
    { thread: 'M2', diameterMm: 2, pitchMm: 0.4, stressAreaMm2: 2.07, coreDrillMm: 1.6 },
    { thread: 'M2.5', diameterMm: 2.5, pitchMm: 0.45, stressAreaMm2: 3.39, coreDrillMm: 2.05 },
    { thread: 'M3', diameterMm: 3, pitchMm: 0.5, stressAreaMm2: 5.03, coreDrillMm: 2.5 },
    { thread: 'M3.5', diameterMm: 3.5, pitchMm: 0.6, stressAreaMm2: 6.78, coreDrillMm: 2.9 },
    { thread: 'M4', diameterMm: 4, pitchMm: 0.7, stressAreaMm2: 8.78, coreDrillMm: 3.3 },
    { thread: 'M5', diameterMm: 5, pitchMm: 0.8, stressAreaMm2: 14.2, coreDrillMm: 4.2 },
    { thread: 'M6', diameterMm: 6, pitchMm: 1, stressAreaMm2: 20.1, coreDrillMm: 5 },
    { thread: 'M8', diameterMm: 8, pitchMm: 1.25, stressAreaMm2: 36.6, coreDrillMm: 6.8 },
    { thread: 'M10', diameterMm: 10, pitchMm: 1.5, stressAreaMm2: 58, coreDrillMm: 8.5 },
  ],
};
