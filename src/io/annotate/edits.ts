import { withoutOwnColumns } from '../../core/intake/own-columns.ts';
import { fillMergedDown } from '../../core/intake/raw-rows.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { columnLetter } from '../../core/model/list.ts';
import { type RawRow, type RawTable, Unreadable } from '../../core/model/raw.ts';
import type { ListRow } from '../write/own-columns.ts';

/** A cell of the list that no longer reads as in the file. */
export interface EditedCell {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/**
 * Cells of the list whose text differs from the sheet's; `rows` are all rows of the list.
 * @throws Unreadable for a cell that a merged block covers: there is no place to write it.
 */
export function findEdits(list: AuditedList, rows: readonly ListRow[], table: RawTable): readonly EditedCell[] {
  const units = list.others.find(({ row, what }) => row === list.headerRow + 1 && what === 'units')?.row;
  const below = withoutOwnColumns(table, list.headerRow).rows.filter(
    ({ number }) => number > list.headerRow && number !== units,
  );
  const before = new Map(fillMergedDown(below).map((row) => [row.number, row]));
  const edits: EditedCell[] = [];
  for (const { row, cells } of rows) {
    if (row === units) continue;
    const former = before.get(row);
    if (!former) throw new Unreadable(`Row ${row} of the list is not in its sheet.`);
    if (cells !== former.cells) edits.push(...editsOf(row, cells, former));
  }
  return edits;
}

/** A cell that is not there is as good as an empty one. */
function editsOf(row: number, cells: readonly string[], former: RawRow): readonly EditedCell[] {
  const edits: EditedCell[] = [];
  const width = Math.max(cells.length, former.cells.length);
  for (let column = 0; column < width; column++) {
    const text = cells[column] ?? '';
    if (text === (former.cells[column] ?? '')) continue;
    if (former.flags?.[column] === 'merged') {
      throw new Unreadable(
        `Cell ${columnLetter(column)}${row}, which was edited, lies under a merged block of the sheet.`,
      );
    }
    edits.push({ row, column, text });
  }
  return edits;
}
