import { finiteOrNull } from './finite.ts';

/** A bend: inside radius and sheet thickness in mm, angle through which the sheet is turned in degrees (90 for a right-angled flange). */
export interface Bend {
  readonly radiusMm: number;
  readonly thicknessMm: number;
  readonly angleDeg: number;
}

/**
 * Outside setback in mm, from the corner of the outside faces to the bend tangent: tan(A / 2) (R + T). Null unless 0 < A < 180,
 * T > 0 and R >= 0. Exact. Source: FAA AC 43.13-1B.
 */
export function outsideSetbackMm({ radiusMm, thicknessMm, angleDeg }: Bend): number | null {
  const sound = angleDeg > 0 && angleDeg < 180 && thicknessMm > 0 && radiusMm >= 0;
  const setbackMm = Math.tan((angleDeg * Math.PI) / 360) * (radiusMm + thicknessMm);
  return sound ? finiteOrNull(setbackMm) : null;
}

/**
 * How far the edge of a hole is clear of the bend tangent, in multiples of the thickness: negative inside the bend. `centreMm` is
 * measured from the outside face (for angles other than 90, from the corner of the outside faces). Null where the bend is not sound
 * or the hole is not positive. Source: geometry; how many multiples are enough is disputed, see the table of bend clearances.
 */
export function clearOfBend(centreMm: number, holeMm: number, bend: Bend): number | null {
  const setbackMm = outsideSetbackMm(bend);
  if (setbackMm === null || !(holeMm > 0)) return null;
  return finiteOrNull((centreMm - holeMm / 2 - setbackMm) / bend.thicknessMm);
}
