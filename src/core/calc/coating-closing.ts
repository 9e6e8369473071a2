import { finiteOrNull } from './finite.ts';

/**
 * Diameter in mm that is left of a hole coated before pressing: hole less twice the build per side. Null unless hole and build are
 * numbers, the build is not negative and something of the hole is left. Source: geometry.
 */
export function closedHoleMm(holeMm: number, buildUmPerSide: number): number | null {
  const leftMm = holeMm - (2 * buildUmPerSide) / 1000;
  return buildUmPerSide >= 0 && leftMm > 0 ? finiteOrNull(leftMm) : null;
}

/**
 * Change of pitch diameter in mm that a coating makes on a 60 degree thread: four times the build per side, outwards on a screw and
 * inwards in a nut. Null unless the build is a number and not negative. Source: geometry of the flanks (build / sin 30 deg, twice).
 */
export function pitchDiameterChangeMm(buildUmPerSide: number): number | null {
  return buildUmPerSide >= 0 ? finiteOrNull((4 * buildUmPerSide) / 1000) : null;
}
