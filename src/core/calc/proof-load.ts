import { finiteOrNull } from './finite.ts';

/**
 * Proof load in N: proof stress in MPa times stress area in mm2. For a nut it is a ceiling of the thread alone and says nothing of
 * how a pressed-in nut pulls through the sheet. Null unless both are positive. Source: ISO 898-1, SAE J995.
 */
export function proofLoadN(proofStressMpa: number, stressAreaMm2: number): number | null {
  return proofStressMpa > 0 && stressAreaMm2 > 0 ? finiteOrNull(proofStressMpa * stressAreaMm2) : null;
}
