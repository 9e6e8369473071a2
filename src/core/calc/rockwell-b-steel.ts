import { steelBrinellLed } from '../reference/hardness/steel-brinell-led.ts';
import { steelRockwellB } from '../reference/hardness/steel-rockwell-b.ts';
import { steelRockwellC } from '../reference/hardness/steel-rockwell-c.ts';
import type { Hardness } from '../units/hardness.ts';
import { curveOf, interpolate } from './interpolate.ts';
import { equivalentFromHbw, equivalentFromHrc } from './rockwell-b-equivalent.ts';
import type { Reading } from './rockwell-b-reading.ts';
import { SOFT_STEEL_UP_TO, softSteelFromHbw, softSteelFromHv } from './rockwell-b-soft-steel.ts';
import { steelStrengthToHrb } from './rockwell-b-strength.ts';

/**
 * Carbon, low-alloy, ferritic and martensitic steel. HV and HB 3000 by the tables for soft steel up to 240; harder steel and
 * Rockwell C by ASTM E140 Table 1, joined on Vickers, and the bracketed values of SAE J417; tensile strength by ISO 18265.
 * Null for other scales, below HRC 20 and HR30T 69.7, beyond HRC 68, HV 940, HB 739, HR30T 83.1 and 2180 MPa.
 */
export function steelToHrb({ scale, value }: Hardness): Reading | null {
  if (scale === 'HV') return fromVickers(value);
  if (scale === 'HB3000') return fromBrinell(value);
  if (scale === 'HRC') return fromRockwellC(value);
  if (scale === 'MPa') return steelStrengthToHrb(value);
  return scale === 'HR30T' ? fromSuperficial(value) : null;
}

const { id: table1, rows } = steelRockwellC;
const HV_BY_HRC = curveOf(
  rows,
  (row) => row.hrc,
  (row) => row.hv,
);
const HRC_BY_HV = curveOf(
  rows,
  (row) => row.hv,
  (row) => row.hrc,
);
const HARDEST_HBW = Math.max(...rows.map((row) => row.hbw ?? 0));
const HRB_BY_HR30T = curveOf(
  steelRockwellB.rows,
  (row) => row.hr30t,
  (row) => row.hrb,
);

function fromVickers(hv: number): Reading | null {
  if (hv <= SOFT_STEEL_UP_TO) return softSteelFromHv(hv);
  const hrc = interpolate(HRC_BY_HV, hv);
  return hrc === null ? null : { hrb: equivalentFromHrc(hrc), below: false, tables: [table1, steelBrinellLed.id] };
}

function fromBrinell(hbw: number): Reading | null {
  if (hbw <= SOFT_STEEL_UP_TO) return softSteelFromHbw(hbw);
  return hbw > HARDEST_HBW ? null : { hrb: equivalentFromHbw(hbw), below: false, tables: [steelBrinellLed.id] };
}

function fromRockwellC(hrc: number): Reading | null {
  const hv = interpolate(HV_BY_HRC, hrc);
  const reading = hv === null ? null : fromVickers(hv);
  return reading && { ...reading, other: null, tables: [...new Set([table1, ...reading.tables])] };
}

function fromSuperficial(hr30t: number): Reading | null {
  const hrb = interpolate(HRB_BY_HR30T, hr30t);
  return hrb === null ? null : { hrb, below: false, tables: [steelRockwellB.id] };
}
