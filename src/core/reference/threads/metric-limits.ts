import type { Table } from '../../model/table.ts';

export interface MetricLimitsRow {
  readonly thread: string;
  /** Screw 6g, smallest major diameter. */
  readonly externalMajorMinMm: number;
  /** Screw 6g, smallest pitch diameter. */
  readonly externalPitchMinMm: number;
  /** Nut 6H, largest minor diameter. */
  readonly internalMinorMaxMm: number;
  /** Nut 6H, largest pitch diameter. */
  readonly internalPitchMaxMm: number;
}

/** Limits of size that decide how metric threads strip. */
export const metricLimits: Table<MetricLimitsRow> = {
  id: 'thread-metric-limits-6g-6h',
  title: 'Metric coarse threads: limits of size, 6g and 6H',
  sources: [
    {
      document: 'ISO 965-2',
      place: 'limits of sizes, medium quality',
      mark: 'memory',
      note: 'From memory; within 0.008 mm of the formulas of ISO 965-1.',
    },
  ],
  rows: [
    {
      thread: 'M2',
      externalMajorMinMm: 1.886,
      externalPitchMinMm: 1.654,
      internalMinorMaxMm: 1.679,
      internalPitchMaxMm: 1.83,
    },
    {
      thread: 'M2.5',
      externalMajorMinMm: 2.38,
      externalPitchMinMm: 2.117,
      internalMinorMaxMm: 2.138,
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: a thread diameter that only looks like one
      internalPitchMaxMm: 2.303,
    },
    {
      thread: 'M3',
      externalMajorMinMm: 2.874,
      externalPitchMinMm: 2.58,
      internalMinorMaxMm: 2.599,
      internalPitchMaxMm: 2.775,
    },
    {
      thread: 'M3.5',
      externalMajorMinMm: 3.354,
      externalPitchMinMm: 3.004,
      internalMinorMaxMm: 3.01,
      internalPitchMaxMm: 3.222,
    },
    {
      thread: 'M4',
      externalMajorMinMm: 3.838,
      externalPitchMinMm: 3.433,
      internalMinorMaxMm: 3.422,
      internalPitchMaxMm: 3.663,
    },
    {
      thread: 'M5',
      externalMajorMinMm: 4.826,
      externalPitchMinMm: 4.361,
      internalMinorMaxMm: 4.334,
      internalPitchMaxMm: 4.605,
    },
    {
      thread: 'M6',
      externalMajorMinMm: 5.794,
      externalPitchMinMm: 5.212,
      internalMinorMaxMm: 5.153,
      internalPitchMaxMm: 5.5,
    },
    {
      thread: 'M8',
      externalMajorMinMm: 7.76,
      externalPitchMinMm: 7.042,
      internalMinorMaxMm: 6.912,
      internalPitchMaxMm: 7.348,
    },
    {
      thread: 'M10',
      externalMajorMinMm: 9.732,
      externalPitchMinMm: 8.862,
      internalMinorMaxMm: 8.676,
      internalPitchMaxMm: 9.206,
    },
  ],
};
