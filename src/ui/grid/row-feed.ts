import type { GridApi } from 'ag-grid-community';
import type { GridRow } from '../../app/state.ts';
import { itemOfRow } from '../../core/caching/in-order.ts';
import { changedRows } from './changed-rows.ts';

/** As many rows are put into a grid at once without a halt that is felt. */
const AT_ONCE = 5_000;
/** More than fit on any screen. */
const FIRST = 200;
/** As many rows out of sight are renewed at once. */
const RENEWED = 1_000;

/**
 * Puts the rows of a long list into a grid bit by bit, while the page goes on; those of any other at once. Of rows that change, those in
 * sight are renewed at once and the others after them.
 */
export class RowFeed {
  readonly #grid: GridApi<GridRow>;
  readonly #onAll: () => void;
  /** Null before the first list. */
  #rows: readonly GridRow[] | null = null;
  #fed = 0;
  /** Rows in the grid that are not renewed yet, by their numbers. */
  #late: readonly number[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** `onAll` is called once all rows of a list are in the grid. Keys and the clipboard in its box may work on all rows, so they bring in the rest. */
  constructor(grid: GridApi<GridRow>, box: HTMLElement, onAll: () => void) {
    this.#grid = grid;
    this.#onAll = onAll;
    for (const type of ['keydown', 'copy', 'cut', 'paste'])
      box.addEventListener(type, () => this.finish(), { capture: true });
    // The grid sorts before it tells of it.
    const press = ({ target }: Event) => target instanceof Element && target.closest('.ag-header') && this.finish();
    box.addEventListener('pointerdown', press, { capture: true });
  }

  /** The grid with every row in it. */
  get whole(): GridApi<GridRow> {
    this.finish();
    return this.#grid;
  }

  /**
   * Shows a list. Of the one that is shown, the rows that changed are renewed one by one, so that nothing jumps and no field closes while
   * typing; another list replaces all of them.
   */
  show(rows: readonly GridRow[]): void {
    const before = this.#rows;
    this.#rows = rows;
    if (rows === before) return;
    const changed = before && changedRows(before, rows);
    if (!changed) this.#begin();
    else if (changed.length > 0) this.#renewAll(changed);
  }

  /** Puts in at once what is not in yet: for whatever works on all rows. */
  finish(): void {
    clearTimeout(this.#timer);
    if (this.#fed < this.#length) this.#feed(this.#length);
    this.#renewLate(this.#late.length);
  }

  stop(): void {
    clearTimeout(this.#timer);
  }

  get #length(): number {
    return this.#rows?.length ?? 0;
  }

  #begin(): void {
    clearTimeout(this.#timer);
    this.#fed = 0;
    this.#late = [];
    if (this.#length > AT_ONCE) this.#goOn();
    else this.#feed(this.#length);
  }

  /** Each part comes in a task of its own, between which the page answers. */
  #goOn(): void {
    this.#timer = setTimeout(() => {
      if (this.#fed === this.#length) this.#renewLate(RENEWED);
      else this.#feed(this.#fed === 0 ? FIRST : Math.min(this.#fed + AT_ONCE, this.#length));
      if (this.#fed < this.#length || this.#late.length > 0) this.#goOn();
    });
  }

  #renewAll(changed: readonly GridRow[]): void {
    const inSight = new Set(this.#grid.getRenderedNodes().map(({ id }) => id));
    const late = new Set(this.#late);
    for (const row of changed) {
      if (inSight.has(String(row.row))) this.#renew(row);
      else late.add(row.row);
    }
    this.#late = [...late];
    clearTimeout(this.#timer);
    if (this.#fed < this.#length || this.#late.length > 0) this.#goOn();
  }

  #renewLate(most: number): void {
    const now = this.#late.slice(0, most);
    this.#late = this.#late.slice(most);
    for (const number of now) {
      const row = itemOfRow(this.#rows ?? [], number);
      if (row) this.#renew(row);
    }
  }

  /** A row that is not in the grid yet comes as it is now. */
  #renew(row: GridRow): void {
    this.#grid.getRowNode(String(row.row))?.updateData(row);
  }

  #feed(end: number): void {
    const start = this.#fed;
    const rows = this.#rows?.slice(start, end) ?? [];
    this.#fed = end;
    if (start === 0) this.#grid.setGridOption('rowData', rows);
    else this.#grid.applyTransaction({ add: rows });
    if (end === this.#length) this.#onAll();
  }
}
