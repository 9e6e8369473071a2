import type { AuditedList } from '../core/model/audited.ts';
import type { Column, Role } from '../core/model/list.ts';
import type { CellEdit } from '../worker/protocol.ts';
import { columnName } from './column-choices.ts';
import type { AppState, GridRow } from './state.ts';

/** Cells to be set, and what the step is to be called. */
export interface ManyCells {
  readonly cells: readonly CellEdit[];
  readonly name: string;
}

/** Columns that are worth setting on many rows at once, in the order in which they are offered. */
const BULK_ROLES: readonly Role[] = ['thickness', 'material', 'finish', 'partNumber', 'quantity'];

export function bulkColumns({ columns }: AuditedList): readonly Column[] {
  return BULK_ROLES.flatMap((role) => columns.find((column) => column.role === role) ?? []);
}

/** Puts one part number into rows; the description stays as the sender wrote it. No cells where no column holds part numbers. */
export function swapCells({ list, rows }: AppState, partNumber: string, into: readonly number[]): ManyCells {
  const column = list?.columns.find(({ role }) => role === 'partNumber');
  const targets = pick(rows, into);
  const cells = column ? setOn(targets, column, partNumber) : [];
  const former = [...new Set(targets.flatMap(({ line }) => line?.fastener?.partNumber ?? []))];
  const replaced = former.length === 1 ? former[0] : `${former.length} parts`;
  return { cells, name: `swap ${replaced} for ${partNumber} on ${countRows(cells.length)}` };
}

/** Puts one text into a column on many rows. */
export function bulkCells({ rows }: AppState, column: Column, text: string, into: readonly number[]): ManyCells {
  const cells = setOn(pick(rows, into), column, text);
  return { cells, name: `set ${columnName(column)} to ${text || 'nothing'} on ${countRows(cells.length)}` };
}

/** "1 row", "52 rows". */
export function countRows(count: number): string {
  return `${count} ${count === 1 ? 'row' : 'rows'}`;
}

function pick(rows: readonly GridRow[], wanted: readonly number[]): readonly GridRow[] {
  const set = new Set(wanted);
  return rows.filter(({ row }) => set.has(row));
}

/** Where a text is spread over columns to show how deep a row stands, it is set where the row has it. */
function setOn(rows: readonly GridRow[], { index, through = index }: Column, text: string): readonly CellEdit[] {
  return rows.map(({ row, cells }) => {
    const at = cells.slice(index, through + 1).findIndex((cell) => cell.trim() !== '');
    return { row, column: index + Math.max(at, 0), text };
  });
}
