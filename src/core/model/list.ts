import type { Line } from './line.ts';
import type { CellFlag, Notice, TextReading } from './raw.ts';

/** What a column means. `material` is the sheet's metal, `fastenerMaterial` the fastener's own. */
export const ROLES = [
  'partNumber',
  'description',
  'quantity',
  'panel',
  'material',
  'fastenerMaterial',
  'thickness',
  'hole',
  'edge',
  'spacing',
  'bend',
  'finish',
  'thread',
  'length',
  'note',
  'level',
  'index',
  'parent',
  'supplier',
  'price',
  'unit',
  'stock',
  'load',
  'other',
] as const;
export type Role = (typeof ROLES)[number];

export type LengthUnit = 'mm' | 'in';

/** One column of the sender's list. */
export interface Column {
  /** 0-based position in the file. */
  readonly index: number;
  readonly heading: string;
  readonly role: Role;
  /** Unit of bare numbers in it, for columns that hold lengths; null while nothing settles it. */
  readonly unit: LengthUnit | null;
  readonly unitFrom: 'heading' | 'column' | 'list' | 'user' | null;
}

/** A row of the list that is no press-in fastener: shown, never judged. */
export interface OtherRow {
  readonly row: number;
  readonly cells: readonly string[];
  /** What it seems to be, in a word or two: "panel", "screw", "total". */
  readonly what: string;
}

/** A hardware list as understood, before judging. */
export interface HardwareList {
  readonly file: string;
  readonly sheet: string;
  /** 1-based row of the headings. */
  readonly headerRow: number;
  readonly columns: readonly Column[];
  /** Every row below the headings in file order, whatever it turns out to be. */
  readonly lines: readonly Line[];
  /** Rows that are no part of the list whatever the catalogue says: totals, repeated headings, section titles, notes. */
  readonly others: readonly OtherRow[];
  /** Rows hidden in the file; they are read and judged like the rest. */
  readonly hiddenRows: number;
  /** How the file was decoded and cut; text files only. */
  readonly reading?: TextReading;
  readonly notices: readonly Notice[];
}

/** Flags of the cells in one row, by 0-based column. */
export type CellFlags = Readonly<Record<number, CellFlag>>;

/** Spreadsheet letter of a 0-based column: 0 is A, 26 is AA. */
export function columnLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnLetter(Math.floor(index / 26) - 1) + last;
}
