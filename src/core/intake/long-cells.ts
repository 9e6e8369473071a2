import { columnLetter } from '../model/list.ts';
import type { Notice, RawRow } from '../model/raw.ts';
import { showRows } from '../say/show-rows.ts';

/** Characters of a cell that are read; no remark on a real list comes near it. A spreadsheet takes 32,767. */
export const LONGEST_READ = 2000;

/** The part of a cell that is read. */
export function cutCell(text: string): string {
  return text.length > LONGEST_READ ? text.slice(0, LONGEST_READ) : text;
}

/** Says so when cells are too long to be read, and that their rows were not judged by the rest of them. */
export function noticeLongCells(rows: readonly RawRow[], indexes: readonly number[], sheet: string): readonly Notice[] {
  const found: { readonly row: number; readonly column: number }[] = [];
  for (const { number, cells } of rows) {
    const column = findLongCell(cells, indexes);
    if (column !== undefined) found.push({ row: number, column });
  }
  const [first, ...more] = found;
  if (!first) return [];
  const what = `more than ${LONGEST_READ.toLocaleString('en-US')} characters in one cell`;
  if (more.length > 0) {
    const all = showRows(found.map(({ row }) => row));
    return [{ sheet, text: `${all} have ${what} and were not judged: shorten what stands there.` }];
  }
  const { row, column } = first;
  const text = `Row ${row} has ${what} (column ${columnLetter(column)}) and was not judged: shorten what stands there.`;
  return [{ sheet, row, text }];
}

/** The first of some columns in which a row's cell is too long to be read; nothing where none is. */
export function findLongCell(cells: readonly string[], indexes: readonly number[]): number | undefined {
  for (const index of indexes) if ((cells[index]?.length ?? 0) > LONGEST_READ) return index;
  return undefined;
}
