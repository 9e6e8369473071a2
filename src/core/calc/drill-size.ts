import { letterDrills } from '../reference/holes/letter-drills.ts';
import { numberDrills } from '../reference/holes/number-drills.ts';

const MM_PER_INCH = 25.4;

/** Diameter in mm of number drill 1 to 80; null for any other number. Source: ASME B94.11M. */
export function findNumberDrillMm(number: number): number | null {
  const row = numberDrills.rows.find((drill) => drill.number === number);
  return row ? row.inch * MM_PER_INCH : null;
}

/** Diameter in mm of letter drill A to Z, in either case; null for anything else. Source: ASME B94.11M. */
export function findLetterDrillMm(letter: string): number | null {
  const row = letterDrills.rows.find((drill) => drill.letter === letter.toUpperCase());
  return row ? row.inch * MM_PER_INCH : null;
}
