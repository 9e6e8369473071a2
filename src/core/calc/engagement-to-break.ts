import { finiteOrNull } from './finite.ts';
import type { ThreadLimits } from './thread-limits.ts';
import { externalStripAreaMm2, internalStripAreaMm2 } from './thread-stripping.ts';

/**
 * Engagement in mm from which the screw breaks before a thread strips: Le = 2 At / (area of the screw's thread per mm), times
 * J = (ASs x strength of the screw) / (ASn x strength of the nut) where J exceeds 1, that is where the nut's metal is the weaker.
 * `screwOverNut` is the ratio of the two tensile strengths. Null unless the ratio is positive and finite. Full threads only.
 * Source: FED-STD-H28/2B.
 */
export function engagementToBreakMm(limits: ThreadLimits, screwOverNut: number): number | null {
  const external = externalStripAreaMm2(limits, 1);
  const internal = internalStripAreaMm2(limits, 1);
  if (external === null || internal === null || !(screwOverNut > 0)) return null;
  const nutIsWeaker = Math.max(1, (external / internal) * screwOverNut);
  return finiteOrNull(((2 * limits.stressAreaMm2) / external) * nutIsWeaker);
}
