import { createGrid, type GridApi, type GridOptions } from 'ag-grid-community';
import { html, LitElement } from 'lit';
import type { FoundCell } from '../../app/find-cells.ts';
import type { GridRow } from '../../app/state.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Verdict } from '../../core/model/outcome.ts';
import type { FindReplace } from '../find-replace.ts';
import '../find-replace.ts';
import type { CellsEdit } from './block-edits.ts';
import { BlockSelection, blockRules } from './block-selection.ts';
import { BlockWork } from './block-work.ts';
import { senderOf } from './cell-text.ts';
import { ColumnTools } from './column-tools.ts';
import { displayedCells, keepFocusInSight } from './displayed-sheet.ts';
import { gridColumns } from './grid-columns.ts';
import { registerGridModules } from './grid-modules.ts';
import { STEADY_OPTIONS } from './grid-options.ts';
import { gridStyles } from './grid-styles.ts';
import { RowFeed } from './row-feed.ts';
import { isFilteringRows, passesRow } from './row-filter.ts';
import { rowsInHand } from './rows-in-hand.ts';

registerGridModules();

/** Asks for a cell to hold another text. */
export type CellEditEvent = CustomEvent<{ readonly row: number; readonly column: number; readonly text: string }>;
/** Asks for several cells to hold other texts, as one step. */
export type CellsEditEvent = CustomEvent<CellsEdit>;

/**
 * The list itself. Data comes in by property; a chosen row goes out as `choose-row`, edits as `edit-cell` and `edit-cells`. The
 * grid never changes its own data: an edit shows when the judged row comes back.
 */
export class ListGrid extends LitElement {
  static override properties = {
    list: { attribute: false },
    rows: { attribute: false },
    filter: { attribute: false },
    only: { attribute: false },
    search: { attribute: false },
    selectedRow: { attribute: false },
    finds: { state: true },
  };
  declare list: AuditedList | null;
  declare rows: readonly GridRow[];
  declare filter: ReadonlySet<Verdict>;
  /** Rows shown alone; null: all. */
  declare only: ReadonlySet<number> | null;
  declare search: string;
  declare selectedRow: number | null;
  /** Whether the bar to find and replace is open. */
  declare finds: boolean;
  #grid: GridApi<GridRow> | null = null;
  #selection: BlockSelection | null = null;
  #work: BlockWork | null = null;
  #feed: RowFeed | null = null;
  #creating: ReturnType<typeof setTimeout> | undefined;
  /** The list that the grid shows the columns of. */
  #shown: AuditedList | null = null;
  readonly #tools = new ColumnTools(this, () => localStorage);

  constructor() {
    super();
    this.list = null;
    this.rows = [];
    this.filter = new Set();
    this.only = null;
    this.search = '';
    this.selectedRow = null;
    this.finds = false;
  }

  static override styles = gridStyles;

  /** Notes and the bar to find above the box, which the grid fills and Lit never writes into again. */
  override render() {
    return html`${this.#tools.renderNotes()}
      ${
        this.finds
          ? html`<find-replace .cells=${() => (this.#feed ? displayedCells(this.#feed.whole) : [])} @show-cell=${this.#showFound} @close-find=${this.#closeFind}></find-replace>`
          : ''
      }
      <div class="grid"></div>
      ${this.#tools.renderMenu()}`;
  }

  /** Opens the bar to find and replace, or puts the cursor into it. */
  openFind(): void {
    if (this.finds) this.renderRoot.querySelector<FindReplace>('find-replace')?.focus();
    this.finds = true;
  }

  /** Gives the focus to the cell that had it last, or to the first. */
  override focus(): void {
    this.#selection?.goTo(this.#selection.block?.focus ?? { row: 0, column: 0 });
  }

  /** Rows that a change of many is meant for. */
  get rowsInHand(): readonly number[] {
    return this.#feed ? rowsInHand(this.#feed.whole, this.#selection?.drawn ?? null) : [];
  }

  /** The grid is made in a task of its own: with all that stands around it, it would halt the page. */
  protected override firstUpdated(): void {
    this.#creating = setTimeout(() => this.#create());
  }

  #create(): void {
    const box = this.renderRoot.querySelector<HTMLElement>('.grid');
    if (!box) return;
    const grid = createGrid<GridRow>(box, this.#options());
    this.#grid = grid;
    this.#feed = new RowFeed(grid, box, () => this.#showSelection(grid));
    this.#selection = new BlockSelection(grid);
    this.#work = new BlockWork(grid, box, this.#selection, {
      units: () => this.list?.shop.units ?? 'mm',
      edit: (edit) => this.#send('edit-cells', edit),
    });
    grid.setGridAriaProperty('label', 'Hardware list');
    if (this.list) this.#tools.follow(grid, this.list);
    this.#shown = this.list;
    this.#feed.show(this.rows);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.#key);
    if (this.hasUpdated) this.firstUpdated();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('keydown', this.#key);
    clearTimeout(this.#creating);
    this.#feed?.stop();
    this.#grid?.destroy();
    this.#feed = null;
    this.#grid = null;
    this.#selection = null;
    this.#work = null;
  }

  protected override updated(changed: Map<string, unknown>): void {
    const grid = this.#grid;
    if (!grid || !this.list) return;
    const former = this.#shown;
    this.#shown = this.list;
    if (former?.columns !== this.list.columns || former.shop.units !== this.list.shop.units) {
      grid.setGridOption('columnDefs', this.#columns(this.list));
      this.#tools.follow(grid, this.list);
    }
    this.#feed?.show(this.rows);
    if (changed.has('filter') || changed.has('only') || changed.has('search')) {
      this.#feed?.finish();
      grid.onFilterChanged();
    }
    if (changed.has('selectedRow')) this.#showSelection(grid);
  }

  #showSelection(grid: GridApi<GridRow>): void {
    if (this.selectedRow === null) grid.deselectAll();
    else grid.getRowNode(String(this.selectedRow))?.setSelected(true, true);
  }

  #options(): GridOptions<GridRow> {
    const forget = () => {
      this.#selection?.forget();
      this.requestUpdate();
    };
    const reorder = () => {
      this.#feed?.finish();
      forget();
    };
    return {
      ...STEADY_OPTIONS,
      columnDefs: this.list ? this.#columns(this.list) : [],
      defaultColDef: {
        sortable: true,
        resizable: true,
        cellClassRules: blockRules(() => this.#selection),
        valueSetter: ({ data, column, newValue }) => this.#requestEdit(data, column.getColId(), newValue),
        suppressKeyboardEvent: ({ event, editing }) => !editing && (this.#work?.press(event) ?? false),
      },
      isExternalFilterPresent: () => isFilteringRows(this) || this.#tools.hasFilters,
      doesExternalFilterPass: ({ data }) =>
        data !== undefined && passesRow(data, this) && this.#tools.passes(data, this.list?.shop.units ?? 'mm'),
      onCellFocused: ({ rowIndex }) => this.#followFocus(rowIndex),
      onRowSelected: ({ node, data }) => node.isSelected() && data && this.#choose(data.row),
      onGridSizeChanged: ({ api }) => keepFocusInSight(api),
      onSortChanged: reorder,
      onFilterChanged: reorder,
      onDisplayedColumnsChanged: forget,
      onColumnResized: ({ finished, source }) => finished && source === 'uiColumnResized' && this.#tools.keepLayout(),
      onColumnMoved: ({ finished, source }) => finished && source === 'uiColumnMoved' && this.#tools.keepLayout(),
    };
  }

  #columns({ columns, shop }: AuditedList) {
    return gridColumns(columns, this.rows, shop.units, this.#tools);
  }

  /** Ctrl+H opens the bar to replace; Ctrl+F asks for the field that finds, which stands outside. */
  readonly #key = (event: KeyboardEvent) => {
    const pressed = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && event.key.toLowerCase();
    if (pressed !== 'h' && pressed !== 'f') return;
    event.preventDefault();
    if (pressed === 'h') this.openFind();
    else this.#send('open-search', null);
  };

  /** An edit is asked for while the grid still closes the field; no cell has changed by it. */
  #requestEdit(data: GridRow, colId: string, newValue: unknown): false {
    const column = senderOf(colId);
    if (column !== null) this.#send('edit-cell', { row: data.row, column, text: String(newValue ?? '') });
    return false;
  }

  #followFocus(rowIndex: number | null): void {
    this.#selection?.followFocus();
    const row = rowIndex === null ? undefined : this.#grid?.getDisplayedRowAtIndex(rowIndex)?.data;
    if (row) this.#choose(row.row);
  }

  #choose(row: number): void {
    if (row !== this.selectedRow) this.#send('choose-row', row);
  }

  readonly #showFound = ({ detail: { row, column } }: CustomEvent<FoundCell>) => {
    const place = this.#grid?.getRowNode(String(row))?.rowIndex;
    const cell = typeof place === 'number' ? this.#selection?.cellOf(place, `sender-${column}`) : null;
    if (!cell) return;
    this.#selection?.show(cell);
    this.#choose(row);
  };

  readonly #closeFind = () => {
    this.finds = false;
    this.focus();
  };

  #send(name: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}

customElements.define('list-grid', ListGrid);
