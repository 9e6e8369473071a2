import { cartridgeBrass } from '../reference/hardness/cartridge-brass.ts';
import type { Hardness, HardnessScale } from '../units/hardness.ts';
import { curveOf } from './interpolate.ts';
import { type Reading, readScale, type Scale } from './rockwell-b-reading.ts';

/** The last row of the table. */
const FOOT = 10;

const { id: table, rows } = cartridgeBrass;
const hrb = (row: (typeof rows)[number]) => row.hrb;

const SCALES: Readonly<Partial<Record<HardnessScale, Scale>>> = {
  HV: { curve: curveOf(rows, (row) => row.hv, hrb), foot: FOOT, table },
  HB500: { curve: curveOf(rows, (row) => row.hb, hrb), foot: FOOT, table },
  HRF: { curve: curveOf(rows, (row) => row.hrf, hrb), foot: FOOT, table },
};

/** Cartridge brass, and other brass and bronze by its likeness: HV, HB 10/500 and HRF up to HRB 93.5. Source: ASTM E140 Table 4, from memory. */
export function brassToHrb({ scale, value }: Hardness): Reading | null {
  const found = SCALES[scale];
  return found ? readScale(found, value) : null;
}
