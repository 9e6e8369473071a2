import type { Thread } from '../../units/thread.ts';
import { METRIC_SIZES } from '../../units/thread-sizes.ts';

/** Pitch in mm: as written, or the coarse one of a metric size; null for "#8" without threads per inch. Source: ISO 261. */
export function pitchOf({ system, majorMm, pitchMm }: Thread): number | null {
  if (pitchMm !== null || system === 'unified') return pitchMm;
  return METRIC_SIZES.find(({ diameterMm }) => diameterMm === majorMm)?.coarseMm ?? null;
}

/** May one thread go into the other? A size without threads per inch fits every thread of that size. */
export function isSameThread(one: Thread, other: Thread): boolean {
  if (one.name === other.name) return true;
  const isOpen = pitchOf(one) === null || pitchOf(other) === null;
  return isOpen && one.system === other.system && Math.abs(one.majorMm - other.majorMm) < 0.01;
}
