import { withoutOwnColumns } from '../../core/intake/own-columns.ts';
import { fillMergedDown } from '../../core/intake/raw-rows.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { columnLetter } from '../../core/model/list.ts';
import { type RawTable, Unreadable } from '../../core/model/raw.ts';
import { listRows } from '../write/own-columns.ts';

/** A cell of the list that no longer reads as in the file. */
export interface EditedCell {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/**
 * Cells of the list whose text differs from the sheet's.
 * @throws Unreadable for a cell that a merged block covers: there is no place to write it.
 */
export function findEdits(list: AuditedList, table: RawTable): readonly EditedCell[] {
  const units = list.others.find(({ row, what }) => row === list.headerRow + 1 && what === 'units')?.row;
  const below = withoutOwnColumns(table, list.headerRow).rows.filter(
    ({ number }) => number > list.headerRow && number !== units,
  );
  const before = new Map(fillMergedDown(below).map((row) => [row.number, row]));
  return listRows(list).flatMap(({ row, cells }) => {
    const former = before.get(row);
    if (row === units) return [];
    if (!former) throw new Unreadable(`Row ${row} of the list is not in its sheet.`);
    const width = Math.max(cells.length, former.cells.length);
    return Array.from({ length: width }, (_, column) => column).flatMap((column) => {
      const text = cells[column] ?? '';
      if (text === (former.cells[column] ?? '')) return [];
      if (former.flags?.[column] === 'merged') {
        throw new Unreadable(
          `Cell ${columnLetter(column)}${row}, which was edited, lies under a merged block of the sheet.`,
        );
      }
      return [{ row, column, text }];
    });
  });
}
