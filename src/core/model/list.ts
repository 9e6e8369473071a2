import type { Line } from './line.ts';
import type { CellFlag, Notice, TextReading } from './raw.ts';
import type { MaterialReading } from './sheet.ts';
import type { ThicknessReading } from './thickness.ts';

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
  /** Last of several columns over which texts are spread, one a row, to show how deep the row stands. */
  readonly through?: number;
}

/** A row of the list that is no press-in fastener: shown, never judged. */
export interface OtherRow {
  readonly row: number;
  readonly cells: readonly string[];
  /** What it seems to be, in a word or two: "panel", "screw", "total". */
  readonly what: string;
}

/** A row that says what sheet a panel is cut from. */
export interface PanelRow {
  readonly row: number;
  /** Sheet of the workbook, where it is not the list's own. */
  readonly sheet?: string;
  /** What the panel is called: its name, its part number. */
  readonly names: readonly string[];
  readonly material: MaterialReading;
  readonly thickness: ThicknessReading;
}

/** What joins the rows of a list, and what is needed to join them anew after an edit. */
export interface Relations {
  /** Each row as its own cells say; `lines` of the list are the same rows with what they take from their panels. */
  readonly ownLines: readonly Line[];
  /** Notices about the file and its columns; those of the list also tell of the tree. */
  readonly ownNotices: readonly Notice[];
  /** Rows of panel tables on other sheets of the workbook. */
  readonly panelRows: readonly PanelRow[];
  /** Columns of a panel table that stands beside the list; empty where there is none. */
  readonly sideColumns: readonly Column[];
  /** Pieces in the whole product by row, through every level of the tree; null where a quantity on the way cannot be used. */
  readonly extended: ReadonlyMap<number, number | null>;
}

/** A hardware list as understood, before judging. */
export interface HardwareList {
  readonly file: string;
  readonly sheet: string;
  /** Names of all sheets of the file in file order, hidden ones too; none for a text file. */
  readonly sheets: readonly string[];
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
  readonly relations: Relations;
}

/** Flags of the cells in one row, by 0-based column. */
export type CellFlags = Readonly<Record<number, CellFlag>>;

/** Spreadsheet letter of a 0-based column: 0 is A, 26 is AA. */
export function columnLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnLetter(Math.floor(index / 26) - 1) + last;
}
