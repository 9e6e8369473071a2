import type { AuditedList } from '../../core/model/audited.ts';
import { type CellBook, cellXml } from '../write/cell-xml.ts';
import { OWN_HEADING, WORDS } from '../write/look.ts';
import { listRows, type OwnColumn } from '../write/own-columns.ts';
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

/** Our columns beside the list and sentences under it; their XML is made when it is asked for. */
export function planOwnCells(list: AuditedList, { start, own, notes }: Spot, book: CellBook): OwnCells {
  const names = own.map((_, index) => showColumn(start + index));
  const planned = new Map(listRows(list).map((row) => [row.row, own.map((column) => flat(column.of(row)))]));
  planned.set(
    list.headerRow,
    own.map(({ heading }) => ({ value: heading, style: OWN_HEADING })),
  );
  const widths = widthsOf(own, planned.values());
  for (const [row, value] of notes) planned.set(row, [{ value, style: WORDS }]);
  return {
    widths,
    of: (row) =>
      planned.get(row)?.flatMap((cell, index) => {
        return cell ? [{ column: start + index, xml: cellXml(names[index] + String(row), cell, book) }] : [];
      }),
  };
}

/** Rows keep the height that the sender gave them, so nothing wraps: the columns are made wide enough, within reason. */
function widthsOf(own: readonly OwnColumn[], rows: Iterable<readonly (PlannedCell | null)[]>): readonly number[] {
  const widths = own.map(({ heading }) => heading.length);
  for (const cells of rows) {
    for (let index = 0; index < widths.length; index++) {
      const length = String(cells[index]?.value ?? '').length;
      if (length > widths[index]!) widths[index] = length;
    }
  }
  return widths.map((width) => Math.min(width + ROOM, WIDEST));
}

const FLAT = new WeakMap<Style, Style>();

/** The cell with a look that does not wrap. */
function flat(cell: PlannedCell | null): PlannedCell | null {
  if (!cell?.style.wraps) return cell;
  const style = FLAT.get(cell.style) ?? { ...cell.style, wraps: false };
  FLAT.set(cell.style, style);
  return { value: cell.value, style };
}
