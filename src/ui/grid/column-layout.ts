import type { ColDef, ColumnState, GridApi } from 'ag-grid-community';
import type { GridLayout } from '../../app/grid-memory.ts';
import type { GridRow } from '../../app/state.ts';

type Grid = GridApi<GridRow>;

/** How the columns stand where that differs from how they are made; null where nothing does. */
export function readLayout(grid: Grid): GridLayout | null {
  const states = grid.getColumnState();
  const order = states.map(({ colId }) => colId);
  const hidden = states.filter(({ hide }) => hide).map(({ colId }) => colId);
  const frozen = frozenColumns(grid);
  const widths = Object.fromEntries(
    states.flatMap(({ colId, width }) => (isWidened(grid, colId, width) && width ? [[colId, Math.round(width)]] : [])),
  );
  const isAsMade =
    hidden.length + frozen.length + Object.keys(widths).length === 0 && order.join() === madeOrder(grid).join();
  return isAsMade ? null : { order, hidden, frozen, widths };
}

/** Puts the columns as they were left; columns that are no longer there are passed over. */
export function applyLayout(grid: Grid, { order, hidden, frozen, widths }: GridLayout): void {
  const made = madeOrder(grid);
  const known = order.filter((id) => made.includes(id));
  const state = known.map((colId): ColumnState => {
    const width = widths[colId];
    return {
      colId,
      hide: hidden.includes(colId),
      pinned: frozen.includes(colId) ? 'left' : madePinned(grid, colId),
      ...(width !== undefined && { width }),
    };
  });
  grid.applyColumnState({ state, applyOrder: true });
}

/** Keeps a column and all to the left of it in sight, hidden ones too; columns to the right of it move again. */
export function freezeUpTo(grid: Grid, id: string): void {
  const order = grid.getColumnState().map(({ colId }) => colId);
  const last = order.indexOf(id);
  const state = order
    .filter((colId) => isFreezable(grid, colId))
    .map((colId) => ({ colId, pinned: order.indexOf(colId) <= last ? ('left' as const) : null }));
  grid.applyColumnState({ state });
}

export function unfreeze(grid: Grid): void {
  grid.applyColumnState({ state: frozenColumns(grid).map((colId) => ({ colId, pinned: null })) });
}

/** Columns that the user froze; those that are always in sight are not among them. */
export function frozenColumns(grid: Grid): readonly string[] {
  return grid
    .getColumnState()
    .filter(({ colId, pinned }) => pinned === 'left' && isFreezable(grid, colId))
    .map(({ colId }) => colId);
}

export function hiddenColumns(grid: Grid): readonly string[] {
  return grid
    .getColumnState()
    .filter(({ hide }) => hide)
    .map(({ colId }) => colId);
}

/** Whether a column is not held at an edge by itself. */
export function isFreezable(grid: Grid, id: string): boolean {
  return madePinned(grid, id) === null;
}

function madePinned(grid: Grid, id: string): 'left' | 'right' | null {
  const pinned = grid.getColumnDef(id)?.pinned;
  return pinned === 'left' || pinned === 'right' ? pinned : null;
}

function madeOrder(grid: Grid): readonly string[] {
  const made: readonly ColDef<GridRow>[] = grid.getGridOption('columnDefs') ?? [];
  return made.flatMap(({ colId }) => colId ?? []);
}

function isWidened(grid: Grid, id: string, width: number | null | undefined): boolean {
  const made = grid.getColumnDef(id)?.width;
  return made !== undefined && typeof width === 'number' && Math.abs(made - width) > 1;
}
