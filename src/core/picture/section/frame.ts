import type { PicturedRow } from '../pictured-row.ts';
import { findingOf } from '../pictured-row.ts';
import type { SectionNumbers } from './numbers.ts';

/** Where the drawn sheet ends and what it is drawn around. The seat is y = 0, the axis of the hole x = 0. */
export interface SectionFrame {
  readonly leftMm: number;
  readonly rightMm: number;
  /** The sheet really ends on the right; else it goes on beyond the drawing. */
  readonly edgeIsDrawn: boolean;
  /** Half the drawn hole; null where neither list nor catalogue give one. */
  readonly wallMm: number | null;
  /** Half the shank: the mounting hole that the part is made for. */
  readonly shankHalfMm: number | null;
  /** Lower face of the sheet; where its thickness is not known, of the least sheet for the part. */
  readonly bottomMm: number | null;
}

/** How much sheet is drawn beside the widest thing, in halves of its width. */
const SHEET_BESIDE = 1.6;
const LEAST_HALF_MM = 2;
/** An edge farther out than so many halves is left to the plan view. */
const FARTHEST_EDGE = 4;

/** The frame of a section. */
export function sectionFrame(row: PicturedRow, numbers: SectionNumbers): SectionFrame {
  const { flangeMm, givenHoleMm, neededHoleMm, majorMm, edgeMm, edgeMinMm } = numbers;
  const widest = Math.max(flangeMm ?? 0, givenHoleMm ?? 0, neededHoleMm ?? 0, majorMm ?? 0) / 2;
  const half = Math.max(widest * SHEET_BESIDE, LEAST_HALF_MM);
  const isClose = findingOf(row, 'clinch/edge')?.says === 'close';
  const edgeIsDrawn = isClose && edgeMm !== null && edgeMinMm !== null && edgeMinMm < half * FARTHEST_EDGE;
  const wall = givenHoleMm ?? neededHoleMm;
  return {
    leftMm: -half,
    rightMm: edgeIsDrawn ? edgeMm : half,
    edgeIsDrawn,
    wallMm: wall === null ? null : wall / 2,
    shankHalfMm: neededHoleMm === null ? null : neededHoleMm / 2,
    bottomMm: numbers.thicknessMm ?? numbers.sheetMinMm,
  };
}
