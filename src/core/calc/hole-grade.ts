import { type Iso286Row, iso286Grades } from '../reference/holes/iso286.ts';

/** Limits of a hole with a standard tolerance. */
export interface HoleLimits {
  readonly lowMm: number;
  readonly highMm: number;
}

/**
 * Limits in mm of a hole by ISO tolerance class: H (lower deviation 0) or JS (half the grade to each side), grades 5 to 14, nominal
 * sizes 1 to 30 mm, widths as tabulated. Null for any other class or size. Source: ISO 286-1.
 */
export function holeGradeLimits(nominalMm: number, letters: string, grade: number): HoleLimits | null {
  const row = iso286Grades.rows.find((candidate) => candidate.grade === grade);
  const widthMm = row && widthFor(nominalMm, row);
  if (!widthMm) return null;
  if (letters === 'H') return { lowMm: nominalMm, highMm: nominalMm + widthMm };
  return letters === 'JS' ? { lowMm: nominalMm - widthMm / 2, highMm: nominalMm + widthMm / 2 } : null;
}

function widthFor(nominalMm: number, row: Iso286Row): number | null {
  if (!(nominalMm >= 1 && nominalMm <= 30)) return null;
  const { upTo3Um, upTo6Um, upTo10Um, upTo18Um, upTo30Um } = row;
  const bands = [
    [3, upTo3Um],
    [6, upTo6Um],
    [10, upTo10Um],
    [18, upTo18Um],
    [30, upTo30Um],
  ] as const;
  const band = bands.find(([toMm]) => nominalMm <= toMm);
  return band ? band[1] / 1000 : null;
}
