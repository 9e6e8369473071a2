import { roundTo } from './dimensions.ts';
import type { Part } from './parts.ts';
import { diameterMm } from './threads.ts';

/** Share of the value in steel sheet that a part reaches in aluminium sheet. */
const IN_ALUMINIUM = 0.65;

/**
 * Invented forces (kN), push-out (N) and torque-out (N m): they rise with diameter, minimum sheet and the hardness of the sheet.
 * An aluminium part has none for steel sheet; what turns freely has no torque-out.
 */
export function strengthOf(part: Part) {
  const d = diameterMm(part.size);
  const forceKn = 3 + 2.5 * d;
  const pushOutN = 110 * d * (0.4 + part.shank / 10);
  const torqueNm = turnsFreely(part) ? null : 0.18 * d ** 2;
  const inSteel = part.material === 'AL' ? null : 1;
  return {
    forceSteelKn: scaled(forceKn, inSteel, 0.5),
    forceAluminiumKn: scaled(forceKn, IN_ALUMINIUM, 0.5),
    pushOutSteelN: scaled(pushOutN, inSteel, 10),
    pushOutAluminiumN: scaled(pushOutN, IN_ALUMINIUM, 10),
    torqueOutSteelNm: scaled(torqueNm, inSteel, 0.1),
    torqueOutAluminiumNm: scaled(torqueNm, IN_ALUMINIUM, 0.1),
  };
}

function turnsFreely({ kind }: Part): boolean {
  return kind === 'clinch pin' || kind === 'captive screw';
}

function scaled(value: number | null, share: number | null, step: number): number | null {
  return value === null || share === null ? null : roundTo(value * share, step);
}
