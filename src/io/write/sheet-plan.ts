import type { Style } from './style.ts';

/** A cell to be written; a text that is '' and null are blank. */
export interface PlannedCell {
  readonly value: string | number | null;
  readonly style: Style;
  /** Stands on the cell as its note. */
  readonly note?: string;
}

export interface PlannedRow {
  /** From the first column on; null: nothing there. */
  readonly cells: readonly (PlannedCell | null)[];
  /** In points; left out: as the spreadsheet makes it. */
  readonly height?: number;
  /** The first cell runs across so many columns. */
  readonly across?: number;
}

/** A sheet as it is to be written: everything but its rows at once, the rows one after the other, so that none need be kept. */
export interface SheetPlan {
  readonly name: string;
  /** Of each column, in characters. */
  readonly widths: readonly number[];
  /** 0-based column that is not shown. */
  readonly hidden?: number;
  /** The first row scrolls with nothing. */
  readonly isFrozen: boolean;
  /** Filters over so many rows and columns from the first cell on. */
  readonly filter?: { readonly rows: number; readonly columns: number };
  /** Characters across a page, and what stands at the foot of each. */
  readonly footer: string;
  /** About how many rows there are, to tell how far the writing is. */
  readonly size: number;
  readonly rows: () => Iterable<PlannedRow>;
}
