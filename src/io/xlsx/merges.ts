import type { CellFlag } from '../../core/model/raw.ts';
import { columnOf } from './address.ts';
import type { Room } from './read-sheet.ts';

/** A row while it is put together. */
export interface RowDraft {
  readonly number: number;
  readonly cells: string[];
  flags?: Record<number, CellFlag>;
  hidden?: true;
}

/** A merged block; rows 1-based, columns 0-based, ends included. */
export interface Merge {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** Reads `A1:C4`; nothing when it is no block of two cells or more. */
export function parseMerge(reference: string | undefined): Merge[] {
  const ends = /^\$?([a-z]{1,3})\$?(\d{1,7}):\$?([a-z]{1,3})\$?(\d{1,7})$/i.exec(reference ?? '');
  if (ends === null) return [];
  const columns = [columnOf(ends[1]!), columnOf(ends[3]!)];
  const rows = [Number(ends[2]), Number(ends[4])];
  return [
    { top: Math.min(...rows), bottom: Math.max(...rows), left: Math.min(...columns), right: Math.max(...columns) },
  ];
}

/**
 * Leaves the text of a merged block in its first cell only and flags the others, as far as rows with content reach and
 * no further right than the sheet's widest row. `rows` are in order. Blocks that lie over each other again and again use up the room.
 */
export function applyMerges(rows: readonly RowDraft[], merges: readonly Merge[], room: Room): void {
  const width = rows.reduce((widest, row) => Math.max(widest, row.cells.length), 0);
  for (const merge of merges) {
    for (let index = findFrom(rows, merge.top); (rows[index]?.number ?? Infinity) <= merge.bottom; index++) {
      room.cells -= coverRow(rows[index]!, merge, width);
      if (room.cells < 0) return;
    }
  }
}

/** How many cells were covered, at least one. */
function coverRow(row: RowDraft, merge: Merge, width: number): number {
  const first = row.number === merge.top ? merge.left + 1 : merge.left;
  for (let column = first; column <= Math.min(merge.right, width - 1); column++) {
    if (column < row.cells.length) row.cells[column] = '';
    row.flags ??= {};
    row.flags[column] = 'merged';
  }
  return Math.max(1, Math.min(merge.right, width - 1) + 1 - first);
}

/** Index of the first row at or below a row number. */
function findFrom(rows: readonly RowDraft[], number: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.number < number) low = middle + 1;
    else high = middle;
  }
  return low;
}
