import type { GridApi } from 'ag-grid-community';
import type { GridRow } from '../../app/state.ts';
import type { BlockSelection } from './block-selection.ts';
import { displayedColumns, revealCell } from './displayed-sheet.ts';
import { type Cell, clampCell, oneCell, rangeOf } from './selection.ts';

/** A cell under the mouse, by the names the grid gives in its elements. */
interface Pointed {
  readonly row: number;
  readonly id: string;
}

const HANDLE_PX = 10;
const STEP_MS = 50;

/**
 * Selects by pressing and dragging over cells, over row numbers for whole rows, and fills by dragging the handle. Listens before
 * the grid does, so that a press that extends or fills is not also the grid's; a plain press gives the focus as ever.
 */
export class BlockMouse {
  readonly #grid: GridApi<GridRow>;
  readonly #box: HTMLElement;
  readonly #selection: BlockSelection;
  readonly #fill: (lastRow: number) => void;
  #drags: 'cells' | 'rows' | 'handle' = 'cells';
  #isOurs = false;
  #beyond: Cell = { row: 0, column: 0 };
  #timer: number | undefined;

  constructor(grid: GridApi<GridRow>, box: HTMLElement, selection: BlockSelection, fill: (lastRow: number) => void) {
    this.#grid = grid;
    this.#box = box;
    this.#selection = selection;
    this.#fill = fill;
    box.addEventListener('pointerdown', this.#down, { capture: true });
    box.addEventListener('mousedown', this.#swallow, { capture: true });
    box.addEventListener('click', this.#swallow, { capture: true });
  }

  readonly #down = (event: PointerEvent) => {
    this.#isOurs = false;
    const cell = cellIn(event);
    const pointed = cell && pointedAt(cell);
    if (!pointed || event.button !== 0 || event.pointerType === 'touch' || isTyping(event)) return;
    this.#drags = isOnHandle(event, cell) ? 'handle' : pointed.id === 'row' ? 'rows' : 'cells';
    this.#isOurs = this.#drags === 'handle' || (event.shiftKey && this.#selection.block !== null);
    if (this.#isOurs) event.stopImmediatePropagation();
    else this.#start(pointed);
    if (event.shiftKey) this.#dragTo(pointed);
    addEventListener('mousemove', this.#move);
    addEventListener('mouseup', this.#up, { once: true });
  };

  /** The browser must not move the focus, nor the grid choose a row, where the press was ours. */
  readonly #swallow = (event: MouseEvent) => {
    if (!this.#isOurs || !cellIn(event)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };

  #start({ row, id }: Pointed): void {
    const isRow = this.#drags === 'rows';
    const first = isRow ? displayedColumns(this.#grid)[0] : id;
    const cell = first === undefined ? null : this.#selection.cellOf(row, first);
    if (cell) this.#selection.select(oneCell(cell));
    if (isRow) this.#dragTo({ row, id });
  }

  readonly #move = ({ clientX, clientY }: MouseEvent) => {
    const area = this.#area();
    this.#beyond = { row: outside(clientY, area.top, area.bottom), column: outside(clientX, area.left, area.right) };
    if (this.#beyond.row !== 0 || this.#beyond.column !== 0) {
      this.#timer ??= window.setInterval(this.#stepBeyond, STEP_MS);
      return;
    }
    this.#stopTimer();
    const root = this.#box.getRootNode() as ShadowRoot | Document;
    const over = root.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('.ag-cell');
    const pointed = over && pointedAt(over);
    if (pointed) this.#dragTo(pointed);
  };

  /** Where rows are in sight: below the headings, within the scroll bars. */
  #area() {
    const viewport = this.#box.querySelector('.ag-grid-viewport') ?? this.#box;
    const { left, top } = viewport.getBoundingClientRect();
    const headings = this.#box.querySelector('.ag-header')?.getBoundingClientRect();
    const [right, bottom] = [left + viewport.clientWidth, top + viewport.clientHeight];
    return { left, right, top: headings?.bottom ?? top, bottom };
  }

  readonly #up = () => {
    removeEventListener('mousemove', this.#move);
    this.#stopTimer();
    const { fillTo } = this.#selection;
    this.#selection.fillTo = null;
    if (fillTo !== null) this.#fill(fillTo);
  };

  /** Dragged beyond the edge of the sheet: one row or column further each time, which scrolls. */
  readonly #stepBeyond = () => {
    const { block, fillTo } = this.#selection;
    if (!block) return;
    const columns = displayedColumns(this.#grid);
    const from = this.#drags === 'handle' ? { ...block.head, row: fillTo ?? rangeOf(block).bottom } : block.head;
    const step = { row: from.row + this.#beyond.row, column: from.column + this.#beyond.column };
    const { row, column } = clampCell(step, { rows: this.#grid.getDisplayedRowCount(), columns: columns.length });
    const id = this.#drags === 'rows' ? 'row' : columns[column];
    if (id !== undefined) this.#dragTo({ row, id });
    revealCell(this.#grid, this.#drags === 'cells' ? { row, column } : { row, column: from.column });
  };

  #dragTo({ row, id }: Pointed): void {
    const { block } = this.#selection;
    if (!block) return;
    if (this.#drags === 'handle') {
      this.#selection.fillTo = row > rangeOf(block).bottom ? row : null;
      return;
    }
    const columns = displayedColumns(this.#grid);
    const column = this.#drags === 'rows' ? columns.length - 1 : columns.indexOf(id);
    if (column >= 0) this.#selection.extend({ row, column }, false);
  }

  #stopTimer(): void {
    clearInterval(this.#timer);
    this.#timer = undefined;
  }
}

function cellIn(event: Event): HTMLElement | null {
  const [target] = event.composedPath();
  return target instanceof Element ? target.closest<HTMLElement>('.ag-cell') : null;
}

function pointedAt(cell: HTMLElement): Pointed | null {
  const row = Number(cell.closest('.ag-row')?.getAttribute('row-index') ?? Number.NaN);
  const id = cell.getAttribute('col-id');
  return Number.isInteger(row) && id !== null ? { row, id } : null;
}

function isOnHandle({ clientX, clientY }: MouseEvent, cell: HTMLElement): boolean {
  if (!cell.matches('.block-handle.sender')) return false;
  const { right, bottom } = cell.getBoundingClientRect();
  return right - clientX <= HANDLE_PX && bottom - clientY <= HANDLE_PX;
}

function isTyping(event: Event): boolean {
  return event.composedPath()[0] instanceof HTMLInputElement;
}

function outside(at: number, start: number, end: number): number {
  if (at < start) return -1;
  return at > end ? 1 : 0;
}
