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
import { changedRows } from './changed-rows.ts';
import { ColumnTools } from './column-tools.ts';
import { displayedCells } from './displayed-sheet.ts';
import { gridColumns } from './grid-columns.ts';
import { registerGridModules } from './grid-modules.ts';
import { STEADY_OPTIONS } from './grid-options.ts';
import { gridStyles } from './grid-styles.ts';
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
  #shown: readonly GridRow[] = [];
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
          ? html`<find-replace .cells=${() => (this.#grid ? displayedCells(this.#grid) : [])} @show-cell=${this.#showFound} @close-find=${this.#closeFind}></find-replace>`
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
    return this.#grid ? rowsInHand(this.#grid, this.#selection?.drawn ?? null) : [];
  }

  protected override firstUpdated(): void {
    const box = this.renderRoot.querySelector<HTMLElement>('.grid');
    if (!box) return;
    const grid = createGrid<GridRow>(box, this.#options());
    this.#grid = grid;
    this.#selection = new BlockSelection(grid);
    this.#work = new BlockWork(grid, box, this.#selection, {
      units: () => this.list?.shop.units ?? 'mm',
      edit: (edit) => this.#send('edit-cells', edit),
    });
    grid.setGridAriaProperty('label', 'Hardware list');
    if (this.list) this.#tools.follow(grid, this.list);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.#key);
    if (this.hasUpdated) this.firstUpdated();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('keydown', this.#key);
    this.#grid?.destroy();
    this.#grid = null;
    this.#selection = null;
    this.#work = null;
  }

  protected override updated(changed: Map<string, unknown>): void {
    const grid = this.#grid;
    if (!grid || !this.list) return;
    const former = changed.get('list') as AuditedList | null | undefined;
    if (changed.has('list') && (former?.columns !== this.list.columns || former.shop.units !== this.list.shop.units)) {
      grid.setGridOption('columnDefs', this.#columns(this.list));
      this.#tools.follow(grid, this.list);
    }
    if (changed.has('rows')) this.#showRows(grid);
    if (changed.has('filter') || changed.has('only') || changed.has('search')) grid.onFilterChanged();
    if (changed.has('selectedRow')) this.#showSelection(grid);
  }

  /**
   * Rows that changed are put in place one by one, so that nothing jumps and no field closes while typing; another list
   * replaces them all.
   */
  #showRows(grid: GridApi<GridRow>): void {
    const changed = changedRows(this.#shown, this.rows);
    this.#shown = this.rows;
    if (!changed) grid.setGridOption('rowData', [...this.rows]);
    else for (const row of changed) grid.getRowNode(String(row.row))?.updateData(row);
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
    return {
      ...STEADY_OPTIONS,
      columnDefs: this.list ? this.#columns(this.list) : [],
      rowData: [...this.rows],
      defaultColDef: {
        sortable: true,
        resizable: true,
        cellClassRules: blockRules(() => this.#selection),
        suppressKeyboardEvent: ({ event, editing }) => !editing && (this.#work?.press(event) ?? false),
      },
      isExternalFilterPresent: () =>
        this.filter.size > 0 || this.only !== null || this.search !== '' || this.#tools.hasFilters,
      doesExternalFilterPass: ({ data }) => data !== undefined && this.#passes(data),
      onCellEditRequest: ({ data, column, newValue }) => this.#requestEdit(data, column.getColId(), newValue),
      onCellFocused: ({ rowIndex }) => this.#followFocus(rowIndex),
      onRowSelected: ({ node, data }) => node.isSelected() && data && this.#choose(data.row),
      onGridSizeChanged: ({ api }) => keepFocusInSight(api),
      onSortChanged: forget,
      onFilterChanged: forget,
      onDisplayedColumnsChanged: forget,
      onColumnResized: ({ finished, source }) => finished && source === 'uiColumnResized' && this.#tools.keepLayout(),
      onColumnMoved: ({ finished, source }) => finished && source === 'uiColumnMoved' && this.#tools.keepLayout(),
    };
  }

  #columns({ columns, shop }: AuditedList) {
    return gridColumns(columns, this.rows, shop.units, this.#tools);
  }

  #passes(row: GridRow): boolean {
    const { line, cells } = row;
    if (this.only && !this.only.has(row.row)) return false;
    const isLeftOut = this.filter.size > 0 && !(line && this.filter.has(line.verdict));
    if (isLeftOut || !this.#tools.passes(row, this.list?.shop.units ?? 'mm')) return false;
    if (this.search === '') return true;
    const wanted = this.search.toLowerCase();
    return [...cells, line?.decidedBy?.brief ?? ''].some((text) => text.toLowerCase().includes(wanted));
  }

  /** Ctrl+H opens the bar to replace; Ctrl+F asks for the field that finds, which stands outside. */
  readonly #key = (event: KeyboardEvent) => {
    const pressed = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && event.key.toLowerCase();
    if (pressed !== 'h' && pressed !== 'f') return;
    event.preventDefault();
    if (pressed === 'h') this.openFind();
    else this.#send('open-search', null);
  };

  #requestEdit(data: GridRow, colId: string, newValue: unknown): void {
    const column = senderOf(colId);
    if (column !== null) this.#send('edit-cell', { row: data.row, column, text: String(newValue ?? '') });
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

/** A cell that is being worked on does not slide under the frozen columns when the grid becomes narrower. */
function keepFocusInSight(grid: GridApi<GridRow>): void {
  const focused = grid.getFocusedCell();
  if (focused) grid.ensureColumnVisible(focused.column);
}

customElements.define('list-grid', ListGrid);
