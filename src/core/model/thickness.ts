import type { Disputed, TakenFrom } from './sheet.ts';

/** Where the unit of a number came from. */
export type UnitFrom = 'cell' | 'heading' | 'column' | 'list';

/** Gauge system named in the cell itself; without one the metal decides. */
export type NamedGauge =
  | 'msg'
  | 'galvanized'
  | 'us-standard'
  | 'brown-sharpe'
  | 'birmingham'
  | 'swg'
  | 'birmingham-sheet'
  | 'zinc';

/** How a thickness cell was understood. A gauge becomes millimetres only together with a metal (see calc/gauge). */
export interface ThicknessReading {
  /** As listed. */
  readonly text: string;
  /**
   * `ambiguous-unit` = a bare number that could be mm or inch and nothing around it settles it; `impossible` = no sheet is that
   * thick or thin in the unit that applies, the other reading is offered in `otherMm`.
   */
  readonly how: 'length' | 'gauge' | 'ounces' | 'blank' | 'unreadable' | 'ambiguous-unit' | 'impossible';
  /** Millimetres, for `length` (and for `impossible`, what it would be). */
  readonly mm: number | null;
  /** Gauge number, or ounces per square foot. */
  readonly number: number | null;
  readonly gaugeSystem: NamedGauge | null;
  /** Decides which mill tolerance applies unless the shop settings do. */
  readonly writtenIn: 'mm' | 'in' | 'gauge' | 'ounces' | null;
  readonly unitFrom: UnitFrom | null;
  /** What the other unit would give, where that is worth offering. */
  readonly otherMm: number | null;
  /** Tolerance written in the cell, both positive: "1.5 ±0.1". */
  readonly toleranceMm: { readonly plus: number; readonly minus: number } | null;
  /** Set where the cell is blank and the thickness is that of another row. */
  readonly takenFrom?: TakenFrom;
  readonly disputed?: Disputed;
}
