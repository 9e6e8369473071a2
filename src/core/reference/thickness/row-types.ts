import type { Mark } from '../../model/table.ts';

/** One gauge number and its published thickness. */
export interface GaugeRow {
  readonly gauge: number;
  readonly inch: number;
  /** Weight that defines the gauge, where weight does. */
  readonly ouncesPerSqFt?: number;
  readonly mark?: Mark;
}

/** One gauge number of stainless sheet as two trade tables give it. */
export interface StainlessGaugeRow extends GaugeRow {
  readonly secondInch: number;
}

/** Sheet named by its weight per area. */
export interface OunceRow {
  readonly ouncesPerSqFt: number;
  readonly inch: number;
}

/** A series of preferred thicknesses. */
export interface PreferredRow {
  readonly series: string;
  readonly thicknessesMm: readonly number[];
}

/** Tolerance of one gauge, plus and minus, on the thickness that stands beside it. */
export interface GaugeToleranceRow {
  readonly gauge: number;
  readonly inch: number;
  readonly plusMinusInch: number;
}

/** Which ends of a band belong to it: `(]` is "over .. to", `[)` is "from .. below". */
export type Bounds = '(]' | '[)' | '[]' | '()';

/** Tolerance, plus and minus, in a band of thicknesses, by width as the table steps it; null where the table is blank. */
export interface BandRow {
  readonly lowMm: number;
  readonly highMm: number;
  readonly bounds: Bounds;
  readonly narrowMm: number;
  readonly mediumMm: number | null;
  readonly wideMm: number | null;
}

/** The same in inches. */
export interface InchBandRow {
  readonly lowInch: number;
  readonly highInch: number;
  readonly bounds: Bounds;
  readonly narrowInch: number;
  readonly mediumInch: number | null;
  readonly wideInch: number | null;
  readonly mark?: Mark;
}

/** Tolerance, plus and minus, at one single thickness. */
export interface ThicknessRow {
  readonly thicknessMm: number;
  readonly narrowMm: number;
  readonly mediumMm: number | null;
  readonly wideMm: number | null;
}

/** An alloy, or a series such as `2xxx`, and the group it is counted in. */
export interface AlloyGroupRow {
  readonly alloy: string;
  readonly group: 1 | 2;
}
