import { austeniticBorrowed } from '../reference/hardness/austenitic-borrowed.ts';
import { austeniticRockwellB } from '../reference/hardness/austenitic-rockwell-b.ts';
import type { Hardness } from '../units/hardness.ts';
import type { Reading } from './rockwell-b-reading.ts';
import { steelToHrb } from './rockwell-b-steel.ts';

const FOOT = 60;
const HIGHEST_HBW = 256;

/**
 * Austenitic stainless. Brinell by the equation of its own table, HRB 60 to 100; Vickers and Rockwell C as for other steel,
 * outside the standard and flagged so. Nothing else has a conversion. Source: ASTM E140 Table 5, from memory.
 */
export function austeniticToHrb(given: Hardness): Reading | null {
  if (given.scale === 'HB3000') return fromBrinell(given.value);
  const reading = given.scale === 'HV' || given.scale === 'HRC' ? steelToHrb(given) : null;
  return reading && { ...reading, other: null, tables: [...reading.tables, austeniticBorrowed.id] };
}

/** 1/HB = 0.0001304 (130 - HRB). */
function fromBrinell(hbw: number): Reading | null {
  if (hbw > HIGHEST_HBW) return null;
  const hrb = Math.min(100, 130 - 1 / (0.0001304 * hbw));
  return { hrb: Math.max(FOOT, hrb), below: hrb < FOOT, tables: [austeniticRockwellB.id] };
}
