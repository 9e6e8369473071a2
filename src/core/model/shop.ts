import type { Environment, HoleProcess } from './facts.ts';
import type { LengthUnit } from './list.ts';

/** What the shop decides for itself; everything else is the trade's. */
export interface ShopSettings {
  /** Which mill tolerances apply: by the way the thickness was written, or always the US or the EN tables. */
  readonly thicknessStandard: 'as-written' | 'us' | 'en';
  /** Width of the coil or sheet as the tolerance tables step it. */
  readonly sheetWidth: 'narrow' | 'medium' | 'wide';
  /** Whether a minimum sheet thickness is compared with the nominal sheet or with the thinnest that the mill may deliver. */
  readonly judgeThicknessAt: 'nominal' | 'thinnest';
  /** Points on Rockwell B by which the sheet must be softer than the fastener. */
  readonly hardnessMarginHrb: number;
  /** What a list's silence about hole, edge and finish counts as. */
  readonly silence: 'note' | 'unknown';
  /** Force of the press in kN; null: not said, then forces are only stated. */
  readonly pressKn: number | null;
  /** Tolerance, plus and minus in mm, of a hole that is given without one; null: judged by its nominal. */
  readonly generalHoleToleranceMm: number | null;
  /** How holes are made where the list does not say. */
  readonly holeProcess: HoleProcess | null;
  readonly environment: Environment;
  /** Rated push-out over required push-out, at least. */
  readonly pushOutSafety: number;
  readonly torqueOutSafety: number;
  /** Sheet thicknesses that a hole edge stays clear of a bend's tangent. */
  readonly bendMultiplier: number;
  /** Spare parts on top of what the list needs, in per cent. */
  readonly sparesPercent: number;
  /** How many times the list is built. */
  readonly buildQuantity: number;
  /** Unit in which results are shown. */
  readonly units: LengthUnit;
}

/** Defaults, each with its origin beside it. */
export const DEFAULT_SHOP: ShopSettings = {
  thicknessStandard: 'as-written', // the drawing's own unit tells whose mill tolerance was meant (our judgement)
  sheetWidth: 'narrow', // the tightest column of the tables, strip and small sheet (our judgement)
  judgeThicknessAt: 'nominal', // makers' minima are meant for nominal sheet (common practice, no source)
  hardnessMarginHrb: 20, // 20 points on Rockwell B (common practice, no source)
  silence: 'note', // hole and edge usually stand on the drawing (common practice, no source)
  pressKn: null, // every press differs, so none is assumed
  generalHoleToleranceMm: null, // title blocks differ, so none is assumed
  holeProcess: null,
  environment: 'indoor', // 0.25 V, uncontrolled indoor (MIL-F-14072 as restated by handbooks)
  pushOutSafety: 1, // the required load is taken as it is given (our judgement)
  torqueOutSafety: 1,
  bendMultiplier: 2, // sources give 1.5 to 3 (disputed); 2 from the tangent is the middle
  sparesPercent: 0,
  buildQuantity: 1,
  units: 'mm',
};
