import { finiteOrNull } from './finite.ts';

/**
 * Full threads in engagement: engaged length over pitch, both in mm. Zero when the screw does not reach; null when the pitch is not
 * positive or either is not a number. Source: geometry; one diameter at least is asked by MIL-R-19309D 3.3.8.2.
 */
export function engagedThreads(engagementMm: number, pitchMm: number): number | null {
  return pitchMm > 0 && Number.isFinite(pitchMm) ? finiteOrNull(Math.max(0, engagementMm) / pitchMm) : null;
}
