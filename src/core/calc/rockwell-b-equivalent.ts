import { steelBrinellLed } from '../reference/hardness/steel-brinell-led.ts';
import { curveOf, interpolate, type Point } from './interpolate.ts';

/** Everything harder counts as this: the last bracketed value of the table. */
export const HIGHEST_HRB = 110;

const hrb = (row: (typeof steelBrinellLed.rows)[number]) => row.hrb;
const BY_HRC = curveOf(steelBrinellLed.rows, (row) => row.hrc, hrb);
const BY_HBW = curveOf(steelBrinellLed.rows, (row) => row.hbw, hrb);

/** Steel above HRB 100: Rockwell-B-equivalent from Rockwell C, never below 100 nor above 110. Source: SAE J417, values in brackets. */
export function equivalentFromHrc(hrc: number): number {
  return within(BY_HRC, hrc);
}

/** The same from Brinell with 3000 kgf. */
export function equivalentFromHbw(hbw: number): number {
  return within(BY_HBW, hbw);
}

function within(curve: readonly Point[], x: number): number {
  const read = interpolate(curve, x);
  if (read !== null) return Math.max(100, read);
  return x > Math.min(...curve.map(([value]) => value)) ? HIGHEST_HRB : 100;
}
