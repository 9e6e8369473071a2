import { metricCoarse } from '../reference/threads/metric-coarse.ts';
import { metricLimits } from '../reference/threads/metric-limits.ts';
import { unifiedThreads } from '../reference/threads/unified.ts';
import { unifiedLimits } from '../reference/threads/unified-limits.ts';

/** What decides how a pair of threads strips: the slackest fit that its classes allow (6g with 6H, 2A with 2B). */
export interface ThreadLimits {
  readonly diameterMm: number;
  readonly pitchMm: number;
  readonly stressAreaMm2: number;
  readonly externalMajorMinMm: number;
  readonly externalPitchMinMm: number;
  readonly internalMinorMaxMm: number;
  readonly internalPitchMaxMm: number;
}

const MM_PER_INCH = 25.4;

/** Limits of a thread by its short name, "M4" or "8-32"; null outside the tables (M2 to M10 coarse, #2 to 3/8). */
export function findThreadLimits(thread: string): ThreadLimits | null {
  const metric = metricCoarse.rows.find((row) => row.thread === thread);
  const metricLimit = metricLimits.rows.find((row) => row.thread === thread);
  if (metric && metricLimit) return { ...metric, ...metricLimit };
  const inch = unifiedThreads.rows.find((row) => row.thread === thread);
  const limit = unifiedLimits.rows.find((row) => row.thread === thread);
  if (!inch || !limit) return null;
  return {
    diameterMm: inch.diameterIn * MM_PER_INCH,
    pitchMm: MM_PER_INCH / inch.threadsPerInch,
    stressAreaMm2: inch.stressAreaIn2 * MM_PER_INCH ** 2,
    externalMajorMinMm: limit.externalMajorMinIn * MM_PER_INCH,
    externalPitchMinMm: limit.externalPitchMinIn * MM_PER_INCH,
    internalMinorMaxMm: limit.internalMinorMaxIn * MM_PER_INCH,
    internalPitchMaxMm: limit.internalPitchMaxIn * MM_PER_INCH,
  };
}
