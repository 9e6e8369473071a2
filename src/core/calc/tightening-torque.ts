import { finiteOrNull } from './finite.ts';

/** A tightening torque and the band within which the same preload may need it. */
export interface TighteningTorque {
  readonly nominalNm: number;
  readonly lowNm: number;
  readonly highNm: number;
}

/** Fraction by which torque misses the preload. Source: handbooks on bolted joints, +/-30 %. */
const USUAL_SCATTER = 0.3;

/**
 * Tightening torque T = K d F in N m, from nut factor K (0.05 to 0.5), diameter in mm and preload in N, with its scatter band
 * T (1 - s) to T (1 + s). Null outside the range or unless diameter and preload are positive and 0 <= s < 1.
 * Source: NASA RP-1228 and handbooks on bolted joints; K hides all friction, so the torque is an estimate.
 */
export function tighteningTorque(
  factor: number,
  diameterMm: number,
  preloadN: number,
  scatter: number = USUAL_SCATTER,
): TighteningTorque | null {
  const nominalNm = (factor * diameterMm * preloadN) / 1000;
  const inRange = factor >= 0.05 && factor <= 0.5 && diameterMm > 0 && preloadN > 0 && scatter >= 0 && scatter < 1;
  const highNm = finiteOrNull(nominalNm * (1 + scatter));
  if (!inRange || highNm === null) return null;
  return { nominalNm, lowNm: nominalNm * (1 - scatter), highNm };
}
