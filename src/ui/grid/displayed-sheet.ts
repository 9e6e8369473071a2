import type { GridApi } from 'ag-grid-community';
import type { GridRow } from '../../app/state.ts';
import type { CellEdit } from '../../worker/protocol.ts';
import type { Sheet } from './block-edits.ts';
import { senderOf } from './cell-text.ts';
import type { Cell } from './selection.ts';

/** The rows and columns that a grid shows now. The row number stands beside them like the edge of a sheet and is none of them. */
export function displayedSheet(grid: GridApi<GridRow>): Sheet {
  return {
    rows: grid.getDisplayedRowCount(),
    columns: displayedColumns(grid).map((id) => ({ id, sender: senderOf(id) })),
    rowAt: (row) => grid.getDisplayedRowAtIndex(row)?.data,
  };
}

/** The sender's cells that are displayed, in their order on screen. */
export function* displayedCells(grid: GridApi<GridRow>): Iterable<CellEdit> {
  const { rows, columns, rowAt } = displayedSheet(grid);
  const senders = columns.flatMap(({ sender }) => sender ?? []);
  for (let place = 0; place < rows; place++) {
    const row = rowAt(place);
    if (row) for (const column of senders) yield { row: row.row, column, text: row.cells[column] ?? '' };
  }
}

/** Scrolls to a cell and gives it the focus. */
export function focusCell(grid: GridApi<GridRow>, cell: Cell): void {
  const id = displayedColumns(grid)[cell.column];
  if (id === undefined) return;
  revealCell(grid, cell);
  grid.setFocusedCell(cell.row, id);
}

export function revealCell(grid: GridApi<GridRow>, { row, column }: Cell): void {
  const id = displayedColumns(grid)[column];
  if (id === undefined || row < 0 || row >= grid.getDisplayedRowCount()) return;
  grid.ensureIndexVisible(row);
  grid.ensureColumnVisible(id);
}

/** The cell that the grid itself has in focus; null where that is the row number or nothing. */
export function focusedCell(grid: GridApi<GridRow>): Cell | null {
  const focused = grid.getFocusedCell();
  const column = focused ? displayedColumns(grid).indexOf(focused.column.getColId()) : -1;
  return focused && column >= 0 ? { row: focused.rowIndex, column } : null;
}

export function displayedColumns(grid: GridApi<GridRow>): readonly string[] {
  return grid
    .getAllDisplayedColumns()
    .map((column) => column.getColId())
    .filter((id) => id !== 'row');
}

/** How many rows fit in sight. */
export function rowsInSight(grid: GridApi<GridRow>): number {
  const { top, bottom } = grid.getVerticalPixelRange();
  const height = grid.getDisplayedRowAtIndex(0)?.rowHeight ?? 30;
  return Math.max(1, Math.floor((bottom - top) / height) - 1);
}

/** A cell that is being worked on does not slide under the frozen columns when the grid becomes narrower. */
export function keepFocusInSight(grid: GridApi<GridRow>): void {
  const focused = grid.getFocusedCell();
  if (focused) grid.ensureColumnVisible(focused.column);
}
