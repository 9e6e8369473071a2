/** What a reader noticed about one cell beyond its text. */
export type CellFlag =
  /** The file holds a date or time here; sizes such as `1/4` or `2-56` are often turned into one. */
  | 'date'
  /** A formula that was never calculated: there is no value to read. */
  | 'not-calculated'
  /** The cell holds a spreadsheet error such as #REF!. */
  | 'error'
  /** Covered by a merged block whose text stands in the block's first cell. */
  | 'merged';

/** One row as a spreadsheet would show it. */
export interface RawRow {
  /** 1-based row number in the file: blank lines count, a quoted cell with line breaks is one row, a `sep=` line is none. */
  readonly number: number;
  /** Text of each cell from column A on, as the user saw it (leading zeros and long digits kept). Missing cells are ''. */
  readonly cells: readonly string[];
  /** Flags by 0-based column. */
  readonly flags?: Readonly<Record<number, CellFlag>>;
  readonly hidden?: boolean;
}

/** One sheet of a workbook, or the single table of a text file. Wholly blank rows are left out; row numbers tell where they were. */
export interface RawTable {
  /** Sheet name; '' for a text file. */
  readonly name: string;
  readonly rows: readonly RawRow[];
  readonly hidden?: boolean;
}

export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** Something the reader wants the user to know: one sentence saying what, where and what to do. */
export interface Notice {
  readonly text: string;
  /** Sheet and 1-based row, where it concerns one. */
  readonly sheet?: string;
  readonly row?: number;
}

/** A file after reading, before anything is understood. */
export interface RawFile {
  readonly file: string;
  readonly format: 'csv' | 'xlsx';
  readonly tables: readonly RawTable[];
  /** Text files: how the bytes were decoded and cut into cells. */
  readonly encoding?: TextEncoding;
  readonly delimiter?: string;
  readonly notices: readonly Notice[];
}

/** The input cannot be read. The message is one sentence for the user: what, where, what to do. */
export class Unreadable extends Error {
  override readonly name = 'Unreadable';
}
