import { steelBrinellLed } from '../reference/hardness/steel-brinell-led.ts';
import { steelIso18265 } from '../reference/hardness/steel-iso-18265.ts';
import { curveOf, interpolate, type Point } from './interpolate.ts';
import { equivalentFromHrc, HIGHEST_HRB } from './rockwell-b-equivalent.ts';
import type { Reading } from './rockwell-b-reading.ts';
import { STEEL_FOOT } from './rockwell-b-soft-steel.ts';

const { id, rows } = steelIso18265;
/** Where the standard's strength column ends (HV 650); the rows at hand end earlier, where everything already counts as 110. */
const STRONGEST_MPA = 2180;
const LAST_ROW_MPA = Math.max(...rows.map((row) => row.rmMpa));

const HV_BY_MPA = curveOf(
  rows,
  (row) => row.rmMpa,
  (row) => row.hv,
);
/** Rockwell B where the standard gives it; from its Rockwell C above, where Rockwell B ends. */
const HRB_BY_HV = curveOf(rows, (row) => row.hv, hrbOf);
const ENDS_AT_HV = Math.max(...rows.map((row) => (row.hrb === null ? 0 : row.hv)));

/**
 * Tensile strength in MPa to Rockwell B through Vickers, 270 to 2180 MPa; below that "softer than HRB 41". The least reliable
 * conversion of its standard. Source: ISO 18265 Table A.1, above HRB 99.5 with the bracketed values of SAE J417.
 */
export function steelStrengthToHrb(mpa: number): Reading | null {
  if (mpa > STRONGEST_MPA) return null;
  if (mpa > LAST_ROW_MPA) return { hrb: HIGHEST_HRB, below: false, tables: [id, steelBrinellLed.id] };
  const hv = interpolate(HV_BY_MPA, mpa);
  const hrb = hv === null ? null : interpolate(HRB_BY_HV, hv);
  if (hv === null || hrb === null) return { hrb: STEEL_FOOT, below: true, tables: [id] };
  return { hrb, below: false, tables: hv > ENDS_AT_HV ? [id, steelBrinellLed.id] : [id] };
}

function hrbOf(row: (typeof rows)[number]): Point[1] | null {
  if (row.hrb !== null) return row.hrb;
  return row.hrc === null ? null : equivalentFromHrc(row.hrc);
}
