/**
 * Lengths closer than this count as equal, in mm: half of the last digit when an inch size is written to four decimals, so that
 * the same size judged in mm and in inches gets the same verdict.
 */
export const LENGTH_CLOSENESS_MM = 0.0015;

/** Is a length at least the wanted one, up to the rounding of inch sizes? False for anything that is not a number. */
export function isAtLeast(lengthMm: number, wantedMm: number): boolean {
  return lengthMm >= wantedMm - LENGTH_CLOSENESS_MM;
}

/** Is a length at most the wanted one, up to the rounding of inch sizes? False for anything that is not a number. */
export function isAtMost(lengthMm: number, wantedMm: number): boolean {
  return lengthMm <= wantedMm + LENGTH_CLOSENESS_MM;
}
