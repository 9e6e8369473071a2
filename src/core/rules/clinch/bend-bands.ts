import { outsideSetbackMm } from '../../calc/bend-tangent.ts';
import type { Fastener } from '../../model/fastener.ts';
import { bendClearanceRules } from '../../reference/forming/bend-clearance.ts';

/** Least and most that the sources ask, in sheet thicknesses between hole edge and bend tangent. */
export const LEAST_TIMES = Math.min(...bendClearanceRules.rows.map(({ timesThickness }) => timesThickness));
export const MOST_TIMES = Math.max(...bendClearanceRules.rows.map(({ timesThickness }) => timesThickness));

/** Distances in mm from the outside face of a bent flange to the hole centre, each the least at which a statement is true. */
export interface BendBands {
  /** The hole edge is outside the tangent. */
  readonly tangentMm: number;
  /** The hole edge is clear by the shop's multiple, and by the least that any source asks. */
  readonly holeClearMm: number;
  /** Half the flange is outside the tangent; null: the catalogue tells nothing of its size. */
  readonly flangeClearMm: number | null;
  /** The hole edge is clear by the least that any source asks. */
  readonly leastMm: number;
  /** The hole edge is clear by the most that any source asks and half the flange. */
  readonly mostMm: number;
}

/**
 * Bands for a hole beside a right-angled bend whose inside radius is taken as one sheet thickness. Not a number comes out of what is
 * none. Source: geometry; the multiples are those of the table of bend clearances.
 */
export function bendBands(holeMm: number, thicknessMm: number, part: Fastener, shopTimes: number): BendBands {
  const setbackMm = outsideSetbackMm({ radiusMm: thicknessMm, thicknessMm, angleDeg: 90 }) ?? Number.NaN;
  const tangentMm = setbackMm + holeMm / 2;
  const roomMm = flangeRoomMm(part);
  return {
    tangentMm,
    holeClearMm: tangentMm + Math.max(LEAST_TIMES, shopTimes) * thicknessMm,
    flangeClearMm: roomMm === null ? null : setbackMm + roomMm,
    leastMm: tangentMm + LEAST_TIMES * thicknessMm,
    mostMm: tangentMm + MOST_TIMES * thicknessMm + (roomMm ?? 0),
  };
}

/** Half the flange; where the catalogue gives none, the edge distance, inside which every flange lies. */
function flangeRoomMm({ flangeMm, edgeMm }: Fastener): number | null {
  return flangeMm === null ? edgeMm : flangeMm / 2;
}
