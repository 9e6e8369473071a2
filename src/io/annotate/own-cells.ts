import type { AuditedList } from '../../core/model/audited.ts';
import { behindReference, type CellBook } from '../write/cell-xml.ts';
import { OWN_HEADING, WORDS } from '../write/look.ts';
import type { ListRow, OwnColumn } from '../write/own-columns.ts';
import type { PlannedCell } from '../write/sheet-plan.ts';
import type { Style } from '../write/style.ts';
import { showColumn } from '../xlsx/address.ts';
import type { Spot } from './find-spot.ts';

/** Characters beyond the longest text, for indents and bold type. */
const ROOM = 3;
const WIDEST = 60;

/** A cell of ours as XML without prefixes. */
export interface OwnCell {
  readonly column: number;
  readonly xml: string;
}

/** What we put beside a list. */
export interface OwnCells {
  /** Widths of our columns, in characters. */
  readonly widths: readonly number[];
  /** Our cells of a row; nothing for a row in which we have none. */
  readonly of: (row: number) => readonly OwnCell[] | undefined;
}

/**
 * Our columns beside the rows of a list and sentences under it; their XML is made when it is asked for. Styles are asked for here, so
 * that their numbers do not hang on what is written when.
 */
export function planOwnCells(
  { headerRow }: AuditedList,
  rows: readonly ListRow[],
  { start, own, notes }: Spot,
  book: CellBook,
): OwnCells {
  const names = own.map((_, index) => showColumn(start + index));
  const writtenOf = createWriter(book);
  const headings = own.map(({ heading }) => write({ value: heading, style: OWN_HEADING }, book));
  const widths = widthsOf(own, rows, writtenOf);
  const sentences = [...notes].map(([row, value]): Fixed => [row, [write({ value, style: WORDS }, book)]]);
  const fixed = new Map<number, readonly Written[]>([[headerRow, headings], ...sentences]);
  const listed = new Map(rows.map((row) => [row.row, row]));
  return {
    widths,
    of: (number) => {
      const row = listed.get(number);
      const cells = fixed.get(number) ?? (row && own.map((column) => writtenOf(column.of(row))));
      return cells && placed(cells, number, start, names);
    },
  };
}

/** A cell but for its reference. */
interface Written {
  readonly xml: string;
  /** Characters shown. */
  readonly length: number;
}

type Fixed = [row: number, cells: readonly Written[]];

function write(cell: PlannedCell, book: CellBook): Written {
  return { xml: behindReference(cell, book), length: String(cell.value ?? '').length };
}

/** Writes cells, in looks that do not wrap; a text that several rows share once. */
function createWriter(book: CellBook): (cell: PlannedCell | null) => Written | null {
  const known = new Map<PlannedCell, Written>();
  const flat = createFlattener();
  return (cell) => {
    if (cell === null || typeof cell.value === 'number') return cell && write(cell, book);
    let written = known.get(cell);
    if (written === undefined) {
      written = write({ value: cell.value, style: flat(cell.style) }, book);
      known.set(cell, written);
    }
    return written;
  };
}

/** Rows keep the height that the sender gave them, so nothing wraps: the columns are made wide enough, within reason. */
function widthsOf(
  own: readonly OwnColumn[],
  rows: readonly ListRow[],
  writtenOf: (cell: PlannedCell | null) => Written | null,
): readonly number[] {
  const widths = own.map(({ heading }) => heading.length);
  for (const row of rows) {
    for (let index = 0; index < own.length; index++) {
      const length = writtenOf(own[index]!.of(row))?.length ?? 0;
      if (length > widths[index]!) widths[index] = length;
    }
  }
  return widths.map((width) => Math.min(width + ROOM, WIDEST));
}

function placed(
  cells: readonly (Written | null)[],
  row: number,
  start: number,
  names: readonly string[],
): readonly OwnCell[] {
  const own: OwnCell[] = [];
  for (let index = 0; index < cells.length; index++) {
    const cell = cells[index];
    if (cell) own.push({ column: start + index, xml: `<c r="${names[index]}${row}"${cell.xml}` });
  }
  return own;
}

/** Looks that do not wrap, each made once. */
function createFlattener(): (style: Style) => Style {
  const known = new Map<Style, Style>();
  return (style) => {
    if (!style.wraps) return style;
    const flat = known.get(style) ?? { ...style, wraps: false };
    known.set(style, flat);
    return flat;
  };
}
