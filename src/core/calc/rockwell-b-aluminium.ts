import { aluminiumHardness } from '../reference/hardness/aluminium.ts';
import { aluminiumDataSheets } from '../reference/hardness/aluminium-data-sheets.ts';
import type { Hardness, HardnessScale } from '../units/hardness.ts';
import { curveOf } from './interpolate.ts';
import { type Reading, readScale, type Scale } from './rockwell-b-reading.ts';

/** Rockwell B says nothing useful of softer aluminium: HB 75 (500 kgf) and below. */
const FOOT = 35;

const { id: table, rows } = aluminiumHardness;
const hrb = (row: (typeof rows)[number]) => row.hrb;

const SCALES: Readonly<Partial<Record<HardnessScale, Scale>>> = {
  HB500: { curve: curveOf(rows, (row) => row.hb, hrb), foot: FOOT, table },
  HV: { curve: curveOf(rows, (row) => row.hv, hrb), foot: FOOT, table },
  HRE: { curve: curveOf(rows, (row) => row.hre, hrb), foot: FOOT, table },
};

/**
 * Wrought aluminium, HB 10/500 up to 160, HV up to 189, HRE up to 101. A Brinell number with 3000 kgf has no conversion.
 * Source: ASTM E140 Table 9, from memory.
 */
export function aluminiumToHrb({ scale, value }: Hardness): Reading | null {
  const found = SCALES[scale];
  const reading = found ? readScale(found, value) : null;
  return reading && scale === 'HB500' ? { ...reading, other: dataSheetPoint(value) } : reading;
}

/** Data sheets give single points, so only those exact values have a second answer. */
function dataSheetPoint(hb: number): NonNullable<Reading['other']> | null {
  const point = aluminiumDataSheets.rows.find((row) => row.hb === hb);
  return point ? { hrb: point.hrb, table: aluminiumDataSheets.id } : null;
}
