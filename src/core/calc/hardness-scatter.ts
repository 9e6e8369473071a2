import { scatterWorking } from '../reference/hardness/scatter-working.ts';
import type { HardnessScale } from '../units/hardness.ts';

/** Scatter of one value in Rockwell B points: 2 given in HRB, 3 from another Rockwell scale or HV, 4 from HB or tensile strength. */
export type Scatter = 2 | 3 | 4;

/** Smallest scatter of a difference: one value straight in Rockwell B is no better known than this. */
const LEAST = 2;

/** Working scatter by the scale in which a hardness was given. Source: a judgement from the known contributions, not a standard. */
export function scatterOf(scale: HardnessScale): Scatter {
  return scatterWorking.rows.find((row) => row.scale === scale)?.hrbPoints ?? 4;
}

/**
 * Scatter of the difference of two values, in points: root of the sum of squares, never below 2. A scatter that is not a number
 * makes the difference settle nothing (infinite). Source: common practice, no source.
 */
export function combineScatter(a: number, b: number): number {
  const sum = Math.hypot(a, b);
  return Number.isFinite(sum) ? Math.max(LEAST, sum) : Number.POSITIVE_INFINITY;
}
