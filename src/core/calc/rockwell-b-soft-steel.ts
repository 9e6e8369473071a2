import { steelIso18265 as ISO } from '../reference/hardness/steel-iso-18265.ts';
import { steelRockwellB as T2 } from '../reference/hardness/steel-rockwell-b.ts';
import { curveOf, interpolate, type Point } from './interpolate.ts';
import type { Reading } from './rockwell-b-reading.ts';

/** Foot of the scale for steel: the last row of ISO 18265 that has a Rockwell B value. */
export const STEEL_FOOT = 41;
/** Hardest steel that Table 2 of ASTM E140 knows, in HV and in HB alike. */
export const SOFT_STEEL_UP_TO = 240;

/** Where Table 2 takes over from ISO 18265, in HV and in HB alike: HRB 55. */
const T2_FROM = 100;

const BY_HV = joined(
  (row) => row.hv,
  (row) => row.hv,
);
const BY_HBW = joined(
  (row) => row.hb,
  (row) => row.hbw,
);

/** Steel up to HV 240: ASTM E140 Table 2 from HV 100, below it ISO 18265 Table A.1, which is also the other answer above. */
export function softSteelFromHv(hv: number): Reading {
  return fromSoft(BY_HV, hv);
}

/** Steel up to HB 240 (3000 kgf), by the same tables. */
export function softSteelFromHbw(hbw: number): Reading {
  return fromSoft(BY_HBW, hbw);
}

interface Joined {
  /** One unbroken rising line through both tables. */
  readonly line: readonly Point[];
  /** ISO 18265 alone, over all its rows. */
  readonly iso: readonly Point[];
  /** Up to here the line rests on ISO 18265 alone. */
  readonly isoUpTo: number;
}

function joined(
  isoX: (row: (typeof ISO.rows)[number]) => number,
  t2X: (row: (typeof T2.rows)[number]) => number,
): Joined {
  const iso = curveOf(ISO.rows, isoX, (row) => row.hrb);
  const t2 = curveOf(T2.rows, t2X, (row) => row.hrb);
  const [, hrbAtJoin] = t2.at(-1)!;
  const soft = iso.filter(([x, hrb]) => x < T2_FROM && hrb < hrbAtJoin);
  return { line: [...soft, ...[...t2].reverse()], iso, isoUpTo: Math.max(...soft.map(([x]) => x)) };
}

function fromSoft({ line, iso, isoUpTo }: Joined, x: number): Reading {
  const hrb = interpolate(line, x);
  if (hrb === null) return { hrb: STEEL_FOOT, below: true, tables: [ISO.id] };
  if (x < T2_FROM) return { hrb, below: false, tables: x <= isoUpTo ? [ISO.id] : [ISO.id, T2.id] };
  const other = interpolate(iso, x);
  return { hrb, below: false, tables: [T2.id], other: other === null ? null : { hrb: other, table: ISO.id } };
}
