import type { GridApi } from 'ag-grid-community';
import type { GridRow } from '../../app/state.ts';
import { type Block, rangeOf } from './selection.ts';

/** Fastener rows that a change of many is meant for: those of a selected block of several rows, else all that are displayed. */
export function rowsInHand(grid: GridApi<GridRow>, block: Block | null): readonly number[] {
  const last = grid.getDisplayedRowCount() - 1;
  const range = block && rangeOf(block);
  const { top, bottom } = range && range.bottom > range.top ? range : { top: 0, bottom: last };
  const rows = Array.from({ length: bottom - top + 1 }, (_, index) => grid.getDisplayedRowAtIndex(top + index)?.data);
  return rows.flatMap((row) => (row?.line ? row.row : []));
}
