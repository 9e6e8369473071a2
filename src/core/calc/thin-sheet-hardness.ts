import { rockwellBThickness } from '../reference/hardness/rockwell-b-thickness.ts';
import { curveOf, interpolate } from './interpolate.ts';

const LEAST_HRB = curveOf(
  rockwellBThickness.rows,
  (row) => row.thicknessMm,
  (row) => row.minHrb,
);
const THICKEST_MM = Math.max(...LEAST_HRB.map(([thicknessMm]) => thicknessMm));

/**
 * Can Rockwell B be measured on sheet of this thickness and hardness? Between the rows of the table by straight lines; always above
 * 0.96 mm, never below 0.61 mm or for a value that is not a number. Source: ASTM E18, minimum thickness.
 */
export function canBeMeasuredHrb(thicknessMm: number, hrb: number): boolean {
  if (!Number.isFinite(thicknessMm) || !Number.isFinite(hrb)) return false;
  if (thicknessMm > THICKEST_MM) return true;
  const least = interpolate(LEAST_HRB, thicknessMm);
  return least !== null && hrb >= least;
}
