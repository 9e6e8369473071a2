import type { Point } from '../drawing.ts';
import type { Distance } from './distances.ts';

/** The hole and the flange around it; null is not known. */
export interface Sizes {
  readonly holeMm: number | null;
  /** By the list; else it is the hole that the catalogue asks for. */
  readonly holeIsGiven: boolean;
  readonly flangeMm: number | null;
}

/** The drawn piece of sheet: to its edge and its bend where these are drawn, else a little around the flange. */
export interface Area {
  readonly corner: Point;
  readonly end: Point;
  /** Distance of the neighbour where it is drawn. */
  readonly neighbourMm: number | null;
}

/** How much sheet is drawn around the flange, in its halves. */
const SHEET_AROUND = 1.4;
const LEAST_MM = 2;

/** The piece of sheet around a hole and the distances that are drawn. */
export function areaOf({ holeMm, flangeMm }: Sizes, drawn: readonly Distance[]): Area {
  const aroundMm = (Math.max(flangeMm ?? 0, holeMm ?? 0, LEAST_MM) / 2) * SHEET_AROUND;
  const given = (wanted: Distance['what']) => drawn.find(({ what }) => what === wanted)?.givenMm ?? null;
  const neighbourMm = given('neighbour');
  return {
    corner: { x: -(neighbourMm ?? 0) - aroundMm, y: -aroundMm },
    end: { x: given('edge') ?? aroundMm, y: given('bend') ?? aroundMm },
    neighbourMm,
  };
}
