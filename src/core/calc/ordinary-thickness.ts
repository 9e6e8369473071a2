import { preferredMetric } from '../reference/thickness/preferred-metric.ts';
import { inchesOf } from '../units/length.ts';

/**
 * Is a thickness in mm one that people write in any metal, so that it betrays no gauge? Whole thousandths of an inch, sixty-fourths
 * (to four decimals), steps of 0.05 mm, preferred metric sizes, and steps of 0.005 in rounded to hundredths of a millimetre
 * (1.52 mm is 0.060 in). Common practice, no source.
 */
export function isOrdinaryThickness(mm: number): boolean {
  const inch = inchesOf(mm);
  return (
    isStep(inch, 0.001, 1e-6) ||
    isStep(inch, 1 / 64, 0.00005) ||
    isStep(mm, 0.05, 1e-6) ||
    preferredMetric.rows.some(({ thicknessesMm }) => thicknessesMm.includes(mm)) ||
    isRoundedInch(mm)
  );
}

function isStep(value: number, step: number, closeness: number): boolean {
  return Math.abs(value - Math.round(value / step) * step) <= closeness;
}

function isRoundedInch(mm: number): boolean {
  const nearestStepMm = Math.round(inchesOf(mm) / 0.005) * 0.005 * 25.4;
  return Math.abs(Number(nearestStepMm.toFixed(2)) - mm) <= 1e-6;
}
