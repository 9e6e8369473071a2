import { Unreadable } from '../../core/model/raw.ts';
import { type Block, LAST_COLUMN, overlapsRows } from './ranges.ts';
import type { RowPlace, SheetOutline } from './sheet-outline.ts';

/** Blank cells that merely have a style are stepped over when there are few of them, else written into. */
const BLANK_REACH = 4;
/** Further to the right than this behind the list nobody would find our columns. */
const FARTHEST = 30;

/**
 * First of `width` columns to the right of the list that are free on all its rows: no data, merged block, filter or table there, and
 * where it can be helped no validation, conditional format or drawing.
 * @throws Unreadable when no columns are left.
 */
export function placeColumns(
  sheet: SheetOutline,
  rows: readonly RowPlace[],
  beside: { readonly tables: readonly Block[]; readonly drawings: readonly Block[] },
  width: number,
): number {
  const top = Math.min(...rows.map(({ number }) => number));
  const bottom = Math.max(...rows.map(({ number }) => number));
  const rightOf = (blocks: readonly Block[]) =>
    blocks.filter((block) => overlapsRows(block, top, bottom)).map(({ right }) => right);
  const cells = rows.flatMap((row) => row.cells);
  const taken = cells.filter((cell) => !cell.isBlank || !cell.hasReference).map(({ column }) => column);
  const last = greatest([...taken, ...rightOf(sheet.taken), ...rightOf(beside.tables)]);
  const blank = greatest(cells.map(({ column }) => column));
  const touchy = [...rightOf(sheet.touchy), ...rightOf(beside.drawings)].filter((end) => end - last <= FARTHEST);
  const start = greatest([last, ...touchy, ...(blank - last <= BLANK_REACH ? [blank] : [])]) + 1;
  if (start + width - 1 > LAST_COLUMN) {
    throw new Unreadable('The sheet has no free columns beside the list.');
  }
  return start;
}

function greatest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, value), -1);
}
