import { copperTempers } from '../reference/hardness/copper-tempers.ts';
import { type Hardness, type HardnessScale, MPA_PER_KSI } from '../units/hardness.ts';
import { curveOf } from './interpolate.ts';
import { type Reading, readScale, type Scale } from './rockwell-b-reading.ts';

/** The softest temper that has a Rockwell B figure (eighth hard). */
const FOOT = 10;

const { id: table, rows } = copperTempers;
const hrb = (row: (typeof rows)[number]) => row.hrb;

const SCALES: Readonly<Partial<Record<HardnessScale, Scale>>> = {
  HRF: { curve: curveOf(rows, (row) => row.hrf, hrb), foot: FOOT, table },
  HR30T: { curve: curveOf(rows, (row) => row.hr30t, hrb), foot: FOOT, table },
  MPa: { curve: curveOf(rows, (row) => row.utsKsi * MPA_PER_KSI, hrb), foot: FOOT, table },
};

/**
 * Copper flat products between the measured pairs of the tempers, up to HRB 62. No Vickers or Brinell: the standard's table for
 * copper was not at hand. Source: Copper Development Association, C12700.
 */
export function copperToHrb({ scale, value }: Hardness): Reading | null {
  const found = SCALES[scale];
  return found ? readScale(found, value) : null;
}
