import type { SheetFamily } from '../model/sheet.ts';
import { brownSharpeGauge } from '../reference/thickness/brown-sharpe-gauge.ts';
import { galvanizedGauge } from '../reference/thickness/galvanized-gauge.ts';
import { manufacturersStandardGauge } from '../reference/thickness/manufacturers-standard-gauge.ts';
import { usStandardGauge } from '../reference/thickness/us-standard-gauge.ts';
import { inchesOf } from '../units/length.ts';
import { gaugeInches } from './near-gauge.ts';
import { isOrdinaryThickness } from './ordinary-thickness.ts';

// Half of the fourth decimal, in which gauge thicknesses are printed, and a little for a rounding in mm.
const EQUAL_INCH = 0.00006;
// A gauge of this metal rounded to three decimals is still its own.
const OWN_INCH = 0.0005;

const SYSTEMS = [
  { table: manufacturersStandardGauge, family: 'carbon-steel' },
  { table: galvanizedGauge, family: 'galvanized-steel' },
  { table: usStandardGauge, family: 'stainless-austenitic' },
  { table: brownSharpeGauge, family: 'aluminium' },
] as const;

/**
 * The gauge of another metal that a thickness in mm equals to the fourth decimal of an inch: 0.0598 in "aluminium" is 16 gauge of
 * uncoated steel. Null where it is a gauge of this metal too or an ordinary size in any metal (0.060, 1/16, 1.5 mm).
 */
export function gaugeOfOtherMetal(mm: number, family: SheetFamily): { gauge: number; family: SheetFamily } | null {
  if (!Number.isFinite(mm) || isOrdinaryThickness(mm)) return null;
  const inch = inchesOf(mm);
  if (gaugeInches(family).some((own) => Math.abs(own.inch - inch) <= OWN_INCH)) return null;
  for (const { table, family: other } of SYSTEMS) {
    const row = table.rows.find((candidate) => Math.abs(candidate.inch - inch) <= EQUAL_INCH);
    if (row) return { gauge: row.gauge, family: other };
  }
  return null;
}
