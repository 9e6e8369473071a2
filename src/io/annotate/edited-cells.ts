import type { AuditedList } from '../../core/model/audited.ts';
import type { RawTable } from '../../core/model/raw.ts';
import { groupBy } from '../../core/rollup/group-by.ts';
import type { ListRow } from '../write/own-columns.ts';
import { readStyles } from '../xlsx/styles.ts';
import { type EditedCell, findEdits } from './edits.ts';
import type { OpenBook } from './open-book.ts';
import type { OwnCell } from './own-cells.ts';
import type { RowPlace, SheetTraits } from './sheet-outline.ts';
import { writeEdit } from './write-edit.ts';

/** Cells that the user has edited, written when their row is. */
export interface EditedCells {
  readonly isEdited: (row: number) => boolean;
  readonly cellsOf: (stretch: string, row: RowPlace) => readonly OwnCell[];
  /** Whether there are any; and, once all rows are written, whether a formula went. */
  readonly seen: () => { readonly hasEdits: boolean; readonly removesFormula: boolean };
}

/** Texts of the user in place of what stood in the file. */
export function editedCells(
  book: OpenBook,
  list: AuditedList,
  rows: readonly ListRow[],
  table: RawTable,
  traits: SheetTraits,
): EditedCells {
  const formats = book.styles === undefined ? [] : readStyles(book.read(book.styles));
  const context = { strings: [], formats, has1904Dates: book.has1904Dates, isUncalculated: false };
  const edits = groupBy(findEdits(list, rows, table), ({ row }) => String(row));
  const byRow = new Map(edits.map((group): [number, readonly EditedCell[]] => [group[0].row, group]));
  const columns = new Map(list.columns.map((column) => [column.index, column]));
  let removesFormula = false;
  return {
    isEdited: (row) => byRow.has(row),
    cellsOf: (stretch, row) =>
      (byRow.get(row.number) ?? []).map((edit) => {
        removesFormula ||= row.cells.some(({ column, hasFormula }) => column === edit.column && hasFormula);
        return writeEdit(stretch, traits, row, edit, columns.get(edit.column), context);
      }),
    seen: () => ({ hasEdits: byRow.size > 0, removesFormula }),
  };
}
