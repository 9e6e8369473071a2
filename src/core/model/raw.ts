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

/** How a text file's bytes stand for characters, with the name to show for it. */
export const ENCODING_NAMES = {
  'utf-8': 'UTF-8',
  'utf-16le': 'UTF-16 (LE)',
  'utf-16be': 'UTF-16 (BE)',
  'windows-1252': 'Windows-1252 (Western European)',
  'windows-1250': 'Windows-1250 (Central European)',
  'windows-1251': 'Windows-1251 (Cyrillic)',
  shift_jis: 'Shift_JIS (Japanese)',
  gb18030: 'GB18030 (Chinese)',
} as const;
export type TextEncoding = keyof typeof ENCODING_NAMES;
export const TEXT_ENCODINGS = Object.keys(ENCODING_NAMES) as readonly TextEncoding[];

/** How a text file is decoded and cut into cells: as found by the reader, or as chosen by the user. */
export interface TextReading {
  readonly encoding?: TextEncoding;
  /** One character. */
  readonly delimiter?: string;
}

/** Something the reader wants the user to know: one sentence saying what, where and what to do. */
export interface Notice {
  readonly text: string;
  /** Sheet and 1-based row, where it concerns one. */
  readonly sheet?: string;
  readonly row?: number;
}

/** A file after reading, before anything is understood. Text files tell how they were decoded and cut. */
export interface RawFile extends TextReading {
  readonly file: string;
  readonly format: 'csv' | 'xlsx';
  readonly tables: readonly RawTable[];
  readonly notices: readonly Notice[];
}

/** The input cannot be read. The message is one sentence for the user: what, where, what to do. */
export class Unreadable extends Error {
  override readonly name = 'Unreadable';
}
