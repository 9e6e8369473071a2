/** What a plated steel part of some hardness asks for, from least to most care. */
export type EmbrittlementCare = 'none' | 'note' | 'bake' | 'do-not-plate';

/** From here on processes are investigated (ISO 4042:1999). */
const NOTE_FROM_HV = 320;
/** Above this baking is required (ISO 4042:2018; 39 to 40 HRC in ASTM F1941). */
const BAKE_ABOVE_HV = 390;
/** HRC 46, above which ASTM B633-15 forbids electroplating, by ASTM E140 Table 1. */
const ZINC_NEVER_ABOVE_HV = 458;
/** HRC 43, above which QQ-P-416F forbids cadmium, by ASTM E140 Table 1. */
const CADMIUM_NEVER_ABOVE_HV = 423;

/**
 * Care that electroplating asks of hardened steel, by Vickers hardness. The documents disagree by edition; these bands are our
 * reading of them, on the careful side, and case-hardened parts count as needing to bake at any core hardness. Null unless the
 * hardness is positive and finite. Source: ISO 4042, ASTM B633, QQ-P-416F; see the table of thresholds.
 */
export function embrittlementCare(
  hv: number,
  plating: 'zinc' | 'cadmium',
  caseHardened = false,
): EmbrittlementCare | null {
  if (!(hv > 0 && Number.isFinite(hv))) return null;
  if (hv > (plating === 'zinc' ? ZINC_NEVER_ABOVE_HV : CADMIUM_NEVER_ABOVE_HV)) return 'do-not-plate';
  if (hv > BAKE_ABOVE_HV || caseHardened) return 'bake';
  return hv >= NOTE_FROM_HV ? 'note' : 'none';
}
