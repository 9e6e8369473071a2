import type { Fastener } from '../model/fastener.ts';

/** Band of a press-in hole where the catalogue gives none. Source: common practice, no source. */
const USUAL_PLUS_MM = 0.08;
const USUAL_MINUS_MM = 0;

/** Smallest and largest mounting hole that a part holds in. */
export interface HoleBand {
  readonly holeLowMm: number;
  readonly holeHighMm: number;
}

/** The band of a part's mounting hole, the usual one where only the size is catalogued; null where there is no size. */
export function holeBandOf({ holeMm, holePlusMm, holeMinusMm }: Fastener): HoleBand | null {
  if (holeMm === null) return null;
  return { holeLowMm: holeMm - (holeMinusMm ?? USUAL_MINUS_MM), holeHighMm: holeMm + (holePlusMm ?? USUAL_PLUS_MM) };
}
