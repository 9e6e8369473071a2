import type { AuditedList } from '../../core/model/audited.ts';
import { type CellBook, cellXml } from '../write/cell-xml.ts';
import { OWN_HEADING, WORDS } from '../write/look.ts';
import { type ListRow, listRows, type OwnColumn } from '../write/own-columns.ts';
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

/** Our columns beside the list and sentences under it, each cell made when it is asked for. */
export function planOwnCells(list: AuditedList, { start, own, notes }: Spot, book: CellBook): OwnCells {
  const rows = new Map(listRows(list).map((row) => [row.row, row]));
  const names = own.map((_, index) => showColumn(start + index));
  const write = (row: number, index: number, cell: PlannedCell | null | undefined): readonly OwnCell[] =>
    cell ? [{ column: start + index, xml: cellXml(`${names[index]}${row}`, flat(cell), book) }] : [];
  return {
    widths: widthsOf(own, rows.values()),
    of: (number) => {
      const note = notes.get(number);
      if (number === list.headerRow) {
        return own.flatMap(({ heading }, index) => write(number, index, { value: heading, style: OWN_HEADING }));
      }
      if (note !== undefined) return write(number, 0, { value: note, style: WORDS });
      const row = rows.get(number);
      return row && own.flatMap((column, index) => write(number, index, column.of(row)));
    },
  };
}

/** Rows keep the height that the sender gave them, so nothing wraps: the columns are made wide enough, within reason. */
function widthsOf(own: readonly OwnColumn[], rows: Iterable<ListRow>): readonly number[] {
  const widths = own.map(({ heading }) => heading.length);
  for (const row of rows) {
    for (const [index, column] of own.entries()) {
      const length = String(column.of(row)?.value ?? '').length;
      if (length > widths[index]!) widths[index] = length;
    }
  }
  return widths.map((width) => Math.min(width + ROOM, WIDEST));
}

const FLAT = new WeakMap<Style, Style>();

function flat({ value, style }: PlannedCell): PlannedCell {
  const made = FLAT.get(style) ?? { ...style, wraps: false };
  FLAT.set(style, made);
  return { value, style: made };
}
