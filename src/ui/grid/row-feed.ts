import type { GridApi } from 'ag-grid-community';
import type { GridRow } from '../../app/state.ts';
import { changedRows } from './changed-rows.ts';

/** As many rows are put into a grid at once without a halt that is felt. */
const AT_ONCE = 5_000;
/** More than fit on any screen. */
const FIRST = 200;

/** Puts the rows of a long list into a grid bit by bit, while the page goes on; those of any other at once. */
export class RowFeed {
  readonly #grid: GridApi<GridRow>;
  readonly #onAll: () => void;
  /** Null before the first list. */
  #rows: readonly GridRow[] | null = null;
  #fed = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** `onAll` is called once all rows of a list are in the grid. Keys and the clipboard in its box may work on all rows, so they bring in the rest. */
  constructor(grid: GridApi<GridRow>, box: HTMLElement, onAll: () => void) {
    this.#grid = grid;
    this.#onAll = onAll;
    for (const type of ['keydown', 'copy', 'cut', 'paste'])
      box.addEventListener(type, () => this.finish(), { capture: true });
  }

  /** The grid with every row in it. */
  get whole(): GridApi<GridRow> {
    this.finish();
    return this.#grid;
  }

  /**
   * Shows a list. Of the one that is shown, the rows that changed are put in place one by one, so that nothing jumps and no field
   * closes while typing; another list replaces all of them.
   */
  show(rows: readonly GridRow[]): void {
    const before = this.#rows;
    this.#rows = rows;
    if (rows === before) return;
    const changed = before && changedRows(before, rows);
    if (!changed) this.#begin();
    else for (const row of changed) this.#grid.getRowNode(String(row.row))?.updateData(row);
  }

  /** Puts in at once what is not in yet: for whatever works on all rows. */
  finish(): void {
    clearTimeout(this.#timer);
    if (this.#fed < this.#length) this.#feed(this.#length);
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
    if (this.#length > AT_ONCE) this.#goOn();
    else this.#feed(this.#length);
  }

  /** Each part comes in a task of its own, between which the page answers. */
  #goOn(): void {
    this.#timer = setTimeout(() => {
      this.#feed(this.#fed === 0 ? FIRST : Math.min(this.#fed + AT_ONCE, this.#length));
      if (this.#fed < this.#length) this.#goOn();
    });
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
