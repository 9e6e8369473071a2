import { rememberFor } from '../caching/remember.ts';
import { steelIso18265 } from '../reference/hardness/steel-iso-18265.ts';
import { steelRockwellB } from '../reference/hardness/steel-rockwell-b.ts';
import { steelRockwellC } from '../reference/hardness/steel-rockwell-c.ts';
import type { Hardness, HardnessScale } from '../units/hardness.ts';
import { curveOf, interpolate, type Point } from './interpolate.ts';

/** Vickers hardness and the table that it was read from; none for a value given in Vickers. */
export interface Vickers {
  readonly hv: number;
  readonly tables: readonly string[];
}

const { rows } = steelRockwellC;

interface Curve {
  readonly table: string;
  readonly points: readonly Point[];
}

const BRINELL: Curve = {
  table: steelRockwellC.id,
  points: curveOf(
    rows,
    ({ hbw }) => hbw,
    ({ hv }) => hv,
  ),
};
const SOFT_BRINELL: Curve = {
  table: steelRockwellB.id,
  points: curveOf(
    steelRockwellB.rows,
    ({ hbw }) => hbw,
    ({ hv }) => hv,
  ),
};

/** The tables of each scale, the harder range first. */
const BY_SCALE: Readonly<Partial<Record<HardnessScale, readonly Curve[]>>> = {
  HRC: [
    {
      table: steelRockwellC.id,
      points: curveOf(
        rows,
        ({ hrc }) => hrc,
        ({ hv }) => hv,
      ),
    },
  ],
  HB3000: [BRINELL, SOFT_BRINELL],
  HRB: [
    {
      table: steelRockwellB.id,
      points: curveOf(
        steelRockwellB.rows,
        ({ hrb }) => hrb,
        ({ hv }) => hv,
      ),
    },
  ],
  MPa: [
    {
      table: steelIso18265.id,
      points: curveOf(
        steelIso18265.rows,
        ({ rmMpa }) => rmMpa,
        ({ hv }) => hv,
      ),
    },
  ],
};

/**
 * Vickers hardness of hardened carbon steel from HV, HRC 20 to 68, HB 3000, HRB 55 to 100 or tensile strength. Null for other
 * scales and outside the tables. Source: ASTM E140 Tables 1 and 2, ISO 18265 Table A.1 for strength.
 */
export const steelToVickers: (given: Hardness) => Vickers | null = rememberFor(convert);

function convert({ scale, value }: Hardness): Vickers | null {
  if (scale === 'HV') return Number.isFinite(value) && value > 0 ? { hv: value, tables: [] } : null;
  for (const { table, points } of BY_SCALE[scale] ?? []) {
    const hv = interpolate(points, value);
    if (hv !== null) return { hv, tables: [table] };
  }
  return null;
}

const HRC_BY_HV = curveOf(
  rows,
  ({ hv }) => hv,
  ({ hrc }) => hrc,
);

/** Rockwell C of steel from Vickers 238 to 940; null outside. Source: ASTM E140 Table 1. */
export function rockwellCOf(hv: number): number | null {
  return interpolate(HRC_BY_HV, hv);
}
