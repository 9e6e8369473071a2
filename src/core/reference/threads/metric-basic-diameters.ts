import type { Table } from '../../model/table.ts';

export interface MetricBasicDiametersRow {
  readonly thread: string;
  /** d2 = D2 = d - 0.649519 P. */
  readonly pitchDiameterMm: number;
  /** D1 = d - 1.082532 P. */
  readonly internalMinorMm: number;
  /** d3 = d - 1.226869 P, root of the screw. */
  readonly externalMinorMm: number;
}

/** Basic diameters of the metric coarse threads, calculated from diameter and pitch. */
export const metricBasicDiameters: Table<MetricBasicDiametersRow> = {
  id: 'thread-metric-basic-diameters',
  title: 'Metric coarse threads: basic diameters',
  sources: [
    {
      document: 'ISO 724',
      place: 'formulas of the basic dimensions',
      mark: 'derived',
      note: 'Calculated from nominal diameter and pitch, rounded to 0.001 mm.',
    },
  ],
  rows: [
    { thread: 'M2', pitchDiameterMm: 1.74, internalMinorMm: 1.567, externalMinorMm: 1.509 },
    { thread: 'M2.5', pitchDiameterMm: 2.208, internalMinorMm: 2.013, externalMinorMm: 1.948 },
    { thread: 'M3', pitchDiameterMm: 2.675, internalMinorMm: 2.459, externalMinorMm: 2.387 },
    { thread: 'M3.5', pitchDiameterMm: 3.11, internalMinorMm: 2.85, externalMinorMm: 2.764 },
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a thread diameter that only looks like one
    { thread: 'M4', pitchDiameterMm: 3.545, internalMinorMm: 3.242, externalMinorMm: 3.141 },
    { thread: 'M5', pitchDiameterMm: 4.48, internalMinorMm: 4.134, externalMinorMm: 4.019 },
    { thread: 'M6', pitchDiameterMm: 5.35, internalMinorMm: 4.917, externalMinorMm: 4.773 },
    { thread: 'M8', pitchDiameterMm: 7.188, internalMinorMm: 6.647, externalMinorMm: 6.466 },
    { thread: 'M10', pitchDiameterMm: 9.026, internalMinorMm: 8.376, externalMinorMm: 8.16 },
  ],
};
