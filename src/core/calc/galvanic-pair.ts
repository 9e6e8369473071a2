/** Two metals in contact, compared by anodic index. */
export interface GalvanicPair {
  readonly differenceV: number;
  /** Which of the two corrodes for the other; null where neither does. */
  readonly anode: 'fastener' | 'sheet' | null;
  readonly against: 'within' | 'at-limit' | 'exceeds';
}

/**
 * Difference of anodic index between fastener and sheet (platings where plated) in V, against the limit of the environment: 0.15
 * harsh, 0.25 normal, 0.50 controlled. The higher index is the anode. Rounded to 1 mV so that 0.90 against 0.40 is at 0.50 and not
 * beside it. Null unless all three lie from 0 to below 10 V. A screen for risk. Source: MIL-DTL-14072F 3.13.1b.
 */
export function galvanicPair(fastenerV: number, sheetV: number, limitV: number): GalvanicPair | null {
  const sound = [fastenerV, sheetV, limitV].every((value) => value >= 0 && value < 10);
  if (!sound) return null;
  const signedV = roundToMillivolt(fastenerV - sheetV);
  const differenceV = Math.abs(signedV);
  const anode = signedV === 0 ? null : signedV > 0 ? 'fastener' : 'sheet';
  const beyondV = roundToMillivolt(differenceV - limitV);
  return { differenceV, anode, against: beyondV > 0 ? 'exceeds' : beyondV === 0 ? 'at-limit' : 'within' };
}

function roundToMillivolt(volts: number): number {
  return Math.round(volts * 1000) / 1000;
}
