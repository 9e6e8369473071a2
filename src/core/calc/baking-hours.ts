import { bakingTimes } from '../reference/finish/baking.ts';

/**
 * Least baking time in hours at 190 to 220 deg C after electroplating, by tensile strength in MPa. Valid above 1000 up to 1800; null
 * outside, and null does not mean that no baking is needed. Source: ASTM B850-98 (2009).
 */
export function bakingHoursByStrength(strengthMpa: number): number | null {
  const first = bakingTimes.rows[0];
  if (!first || !(strengthMpa >= first.strengthFromMpa - 1) || strengthMpa === first.strengthFromMpa - 1) return null;
  return bakingTimes.rows.find((row) => strengthMpa <= row.strengthToMpa)?.hours ?? null;
}

/** The same by Rockwell C, 31 to 51. Where two rows of the table share a value the longer time is given. */
export function bakingHoursByHrc(hrc: number): number | null {
  return bakingTimes.rows.findLast((row) => hrc >= row.hrcFrom && hrc <= row.hrcTo)?.hours ?? null;
}
