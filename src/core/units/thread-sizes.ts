/** A metric size: nominal diameter, coarse pitch, fine pitches in use, all in mm. */
export interface MetricSize {
  readonly diameterMm: number;
  readonly coarseMm: number;
  readonly fineMm: readonly number[];
}

/** Metric sizes M1.6 to M24 with their pitches. Source: ISO 261 and ISO 262, from memory but for the coarse pitches of M2 to M10. */
export const METRIC_SIZES: readonly MetricSize[] = [
  metric(1.6, 0.35, 0.2),
  metric(1.8, 0.35, 0.2),
  metric(2, 0.4, 0.25),
  metric(2.2, 0.45, 0.25),
  metric(2.5, 0.45, 0.35),
  metric(3, 0.5, 0.35),
  metric(3.5, 0.6, 0.35),
  metric(4, 0.7, 0.5),
  metric(4.5, 0.75, 0.5),
  metric(5, 0.8, 0.5),
  metric(6, 1, 0.75),
  metric(7, 1, 0.75),
  metric(8, 1.25, 1, 0.75),
  metric(9, 1.25, 1, 0.75),
  metric(10, 1.5, 1.25, 1, 0.75),
  metric(11, 1.5, 1, 0.75),
  metric(12, 1.75, 1.5, 1.25, 1),
  metric(14, 2, 1.5, 1.25, 1),
  metric(16, 2, 1.5, 1),
  metric(18, 2.5, 2, 1.5, 1),
  metric(20, 2.5, 2, 1.5, 1),
  metric(22, 2.5, 2, 1.5, 1),
  metric(24, 3, 2, 1.5, 1),
];

/** A Unified size: number or fraction as it is spoken, major diameter in inches, threads per inch of both series. */
export interface UnifiedSize {
  readonly size: string;
  readonly inch: number;
  /** Null: the series has no thread of this size. */
  readonly unc: number | null;
  readonly unf: number | null;
}

/** Unified sizes #0 to 1/2; numbered sizes are 0.060 + 0.013 n inches. Source: ASME B1.1, from memory outside #2 to 3/8. */
export const UNIFIED_SIZES: readonly UnifiedSize[] = [
  numbered(0, null, 80),
  numbered(1, 64, 72),
  numbered(2, 56, 64),
  numbered(3, 48, 56),
  numbered(4, 40, 48),
  numbered(5, 40, 44),
  numbered(6, 32, 40),
  numbered(8, 32, 36),
  numbered(10, 24, 32),
  numbered(12, 24, 28),
  { size: '1/4', inch: 1 / 4, unc: 20, unf: 28 },
  { size: '5/16', inch: 5 / 16, unc: 18, unf: 24 },
  { size: '3/8', inch: 3 / 8, unc: 16, unf: 24 },
  { size: '7/16', inch: 7 / 16, unc: 14, unf: 20 },
  { size: '1/2', inch: 1 / 2, unc: 13, unf: 20 },
];

function metric(diameterMm: number, coarseMm: number, ...fineMm: number[]): MetricSize {
  return { diameterMm, coarseMm, fineMm };
}

function numbered(number: number, unc: number | null, unf: number | null): UnifiedSize {
  return { size: String(number), inch: (60 + 13 * number) / 1000, unc, unf };
}
