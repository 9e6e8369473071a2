import type { CellClassParams, CellClassRules, GridApi } from 'ag-grid-community';
import type { GridRow } from '../../app/state.ts';
import { displayedColumns, focusCell, focusedCell, revealCell } from './displayed-sheet.ts';
import { type Block, type Cell, isInside, isSameCell, oneCell, type Range, rangeOf } from './selection.ts';

/** The selected block of a grid, drawn by classes that the grid puts on its cells. */
export class BlockSelection {
  readonly #grid: GridApi<GridRow>;
  #block: Block | null = null;
  #fillTo: number | null = null;
  /** Where each displayed column stands; made anew when columns change. */
  #places: ReadonlyMap<string, number> | null = null;

  constructor(grid: GridApi<GridRow>) {
    this.#grid = grid;
  }

  /** The selected block; the focused cell where nothing was selected since positions changed. */
  get block(): Block | null {
    const focused = this.#block ? null : focusedCell(this.#grid);
    return focused ? oneCell(focused) : this.#block;
  }

  /** The block as drawn: none where nothing was selected. */
  get drawn(): Block | null {
    return this.#block;
  }

  /** Last row of a fill that is being dragged; null while none is. */
  get fillTo(): number | null {
    return this.#fillTo;
  }

  set fillTo(row: number | null) {
    if (row === this.#fillTo) return;
    this.#fillTo = row;
    this.#draw();
  }

  select(block: Block | null): void {
    const rows = rowsOf([this.#block, block]);
    this.#block = block;
    this.#draw(rows);
  }

  /** Moves the far corner of the block and keeps it in sight. */
  extend(head: Cell, reveals = true): void {
    const block = this.block;
    if (!block || isSameCell(block.head, head)) return;
    this.select({ ...block, head });
    if (reveals) revealCell(this.#grid, head);
  }

  /** Selects a cell and scrolls to it; the focus stays where it is. */
  show(cell: Cell): void {
    this.select(oneCell(cell));
    revealCell(this.#grid, cell);
  }

  /** Selects a cell and gives it the focus. */
  goTo(cell: Cell): void {
    this.select(oneCell(cell));
    focusCell(this.#grid, cell);
  }

  /** The grid has moved its focus by itself: a block ends with that. */
  followFocus(): void {
    const cell = focusedCell(this.#grid);
    if (cell && !(this.#block && isSameCell(this.#block.focus, cell))) this.select(oneCell(cell));
  }

  /** Positions on screen have come to mean other cells. */
  forget(): void {
    this.#places = null;
    this.#block = null;
    this.#draw();
  }

  /** Where a cell stands; null for the row number and for columns that are not displayed. */
  cellOf(row: number, id: string): Cell | null {
    this.#places ??= new Map(displayedColumns(this.#grid).map((column, place) => [column, place]));
    const column = this.#places.get(id);
    return column === undefined ? null : { row, column };
  }

  /** Cells of some rows, by their places; of all rows where none are given. */
  #draw(rows?: readonly number[]): void {
    const rowNodes = rows?.flatMap((row) => this.#grid.getDisplayedRowAtIndex(row) ?? []);
    this.#grid.refreshCells({ suppressFlash: true, ...(rowNodes && { rowNodes }) });
  }
}

/** More rows than that are not drawn one by one. */
const MOST_ROWS = 100;

/** Places of the rows that blocks take; undefined where they are too many. */
function rowsOf(blocks: readonly (Block | null)[]): readonly number[] | undefined {
  const ranges = blocks.flatMap((block) => (block ? rangeOf(block) : []));
  const count = ranges.reduce((sum, { top, bottom }) => sum + bottom - top + 1, 0);
  if (count > MOST_ROWS) return undefined;
  return ranges.flatMap(({ top, bottom }) => Array.from({ length: bottom - top + 1 }, (_, step) => top + step));
}

type Holds = (range: Range, cell: Cell, selection: BlockSelection) => boolean;

/** Classes of the cells of a block, for the grid to ask whenever it draws a cell. */
export function blockRules(selection: () => BlockSelection | null): CellClassRules<GridRow> {
  const rule =
    (holds: Holds) =>
    ({ rowIndex, column }: CellClassParams<GridRow>): boolean => {
      const current = selection();
      const cell = current?.drawn && current.cellOf(rowIndex, column.getColId());
      return !!(current?.drawn && cell) && holds(rangeOf(current.drawn), cell, current);
    };
  return {
    'in-block': rule((range, cell, { drawn }) => isInside(range, cell) && !(drawn && isSameCell(cell, drawn.focus))),
    'block-top': rule((range, cell) => isInside(range, cell) && cell.row === range.top),
    'block-bottom': rule((range, cell) => isInside(range, cell) && cell.row === range.bottom),
    'block-left': rule((range, cell) => isInside(range, cell) && cell.column === range.left),
    'block-right': rule((range, cell) => isInside(range, cell) && cell.column === range.right),
    'block-handle': rule(({ bottom, right }, cell) => cell.row === bottom && cell.column === right),
    'fill-target': rule((range, cell, { fillTo }) =>
      isInside({ ...range, top: range.bottom + 1, bottom: fillTo ?? range.bottom }, cell),
    ),
  };
}
