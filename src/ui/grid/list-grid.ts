import { createGrid, type GridApi, type GridOptions, type RowClassParams } from 'ag-grid-community';
import { html, LitElement } from 'lit';
import type { GridRow } from '../../app/state.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Column } from '../../core/model/list.ts';
import type { Verdict } from '../../core/model/outcome.ts';
import '../role-menu.ts';
import { gridColumns } from './grid-columns.ts';
import { registerGridModules } from './grid-modules.ts';
import { gridStyles } from './grid-styles.ts';
import { gridTheme } from './grid-theme.ts';

registerGridModules();

const MENU_WIDTH = 372;

/** Asks for a cell to hold another text. */
export type CellEditEvent = CustomEvent<{ readonly row: number; readonly column: number; readonly text: string }>;

/**
 * The list itself. Data comes in by property; a chosen row goes out as `choose-row`, an edit as `edit-cell`. The grid never
 * changes its own data: an edit shows when the judged row comes back.
 */
export class ListGrid extends LitElement {
  static override properties = {
    list: { attribute: false },
    rows: { attribute: false },
    filter: { attribute: false },
    search: { attribute: false },
    selectedRow: { attribute: false },
    menu: { state: true },
  };
  declare list: AuditedList | null;
  declare rows: readonly GridRow[];
  declare filter: ReadonlySet<Verdict>;
  declare search: string;
  declare selectedRow: number | null;
  /** The column whose menu is open, and where the menu hangs. */
  declare menu: { readonly column: Column; readonly left: number; readonly top: number } | null;
  #grid: GridApi<GridRow> | null = null;
  #byRow = new Map<number, GridRow>();

  constructor() {
    super();
    this.list = null;
    this.rows = [];
    this.filter = new Set();
    this.search = '';
    this.selectedRow = null;
    this.menu = null;
  }

  static override styles = gridStyles;

  /** One box, which the grid fills and Lit never writes into again, and the menu of a heading. */
  override render() {
    const { menu } = this;
    return html`<div class="grid"></div>
      ${menu ? html`<role-menu style="left: ${menu.left}px; top: ${menu.top}px" .column=${menu.column} @close-menu=${this.#closeMenu}></role-menu>` : ''}`;
  }

  protected override firstUpdated(): void {
    const box = this.renderRoot.querySelector<HTMLElement>('.grid');
    if (box) this.#grid = createGrid<GridRow>(box, this.#options());
    this.#grid?.setGridAriaProperty('label', 'Hardware list');
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#grid?.destroy();
    this.#grid = null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) this.firstUpdated();
  }

  protected override updated(changed: Map<string, unknown>): void {
    const grid = this.#grid;
    if (!grid || !this.list) return;
    const former = changed.get('list') as AuditedList | null | undefined;
    if (changed.has('list') && (former?.columns !== this.list.columns || former.shop.units !== this.list.shop.units)) {
      grid.setGridOption('columnDefs', this.#columns(this.list));
    }
    if (changed.has('rows')) this.#showRows(grid);
    if (changed.has('filter') || changed.has('search')) grid.onFilterChanged();
    if (changed.has('selectedRow')) this.#showSelection(grid);
  }

  /** Rows that changed are put in place one by one, so that nothing jumps while typing; another list replaces them all. */
  #showRows(grid: GridApi<GridRow>): void {
    const next = new Map(this.rows.map((row) => [row.row, row]));
    const sameList = next.size === this.#byRow.size && [...next.keys()].every((row) => this.#byRow.has(row));
    const changed = sameList ? this.rows.filter((row) => this.#byRow.get(row.row) !== row) : this.rows;
    this.#byRow = next;
    if (!sameList || changed.length > 1000) grid.setGridOption('rowData', [...this.rows]);
    else for (const row of changed) grid.getRowNode(String(row.row))?.updateData(row);
    if (sameList) grid.redrawRows({ rowNodes: changed.flatMap((row) => grid.getRowNode(String(row.row)) ?? []) });
  }

  #showSelection(grid: GridApi<GridRow>): void {
    if (this.selectedRow === null) grid.deselectAll();
    else grid.getRowNode(String(this.selectedRow))?.setSelected(true, true);
  }

  #options(): GridOptions<GridRow> {
    return {
      theme: gridTheme,
      columnDefs: this.list ? this.#columns(this.list) : [],
      rowData: [...this.rows],
      getRowId: ({ data }) => String(data.row),
      rowSelection: { mode: 'singleRow', checkboxes: false, enableClickSelection: true },
      readOnlyEdit: true,
      enterNavigatesVertically: true,
      enterNavigatesVerticallyAfterEdit: true,
      tooltipShowDelay: 600,
      suppressMovableColumns: false,
      defaultColDef: { sortable: true, resizable: true, suppressKeyboardEvent: homeAndEnd },
      rowClassRules: { 'not-a-fastener': ({ data }: RowClassParams<GridRow>) => data?.other !== undefined },
      isExternalFilterPresent: () => this.filter.size > 0 || this.search !== '',
      doesExternalFilterPass: ({ data }) => data !== undefined && this.#passes(data),
      onCellEditRequest: ({ data, column, newValue }) => this.#requestEdit(data, column.getColId(), newValue),
      onCellFocused: ({ rowIndex }) => this.#chooseDisplayed(rowIndex),
      onRowSelected: ({ node, data }) => node.isSelected() && data && this.#choose(data.row),
    };
  }

  #columns({ columns, shop }: AuditedList) {
    return gridColumns(columns, this.rows, shop.units, this.#openMenu);
  }

  readonly #openMenu = (column: Column, button: HTMLElement) => {
    const { left, bottom } = button.getBoundingClientRect();
    this.menu = { column, left: Math.max(8, Math.min(left, innerWidth - MENU_WIDTH - 8)), top: bottom + 4 };
  };

  /** The focus goes back to the heading, whose button may be another by now. */
  readonly #closeMenu = () => {
    const column = this.menu?.column;
    this.menu = null;
    if (column) this.#grid?.setFocusedHeader(`sender-${column.index}`);
  };

  #passes({ line, cells }: GridRow): boolean {
    if (this.filter.size > 0 && !(line && this.filter.has(line.verdict))) return false;
    if (this.search === '') return true;
    const wanted = this.search.toLowerCase();
    return [...cells, line?.decidedBy?.brief ?? ''].some((text) => text.toLowerCase().includes(wanted));
  }

  #requestEdit(data: GridRow, colId: string, newValue: unknown): void {
    const column = Number(/^sender-(\d+)$/.exec(colId)?.[1]);
    if (!Number.isInteger(column)) return;
    const detail = { row: data.row, column, text: String(newValue ?? '') };
    this.dispatchEvent(new CustomEvent('edit-cell', { detail, bubbles: true, composed: true }));
  }

  #chooseDisplayed(rowIndex: number | null | undefined): void {
    const row = typeof rowIndex === 'number' ? this.#grid?.getDisplayedRowAtIndex(rowIndex)?.data : undefined;
    if (row) this.#choose(row.row);
  }

  #choose(row: number): void {
    if (row !== this.selectedRow)
      this.dispatchEvent(new CustomEvent('choose-row', { detail: row, bubbles: true, composed: true }));
  }
}

/** Home and End go to the ends of the row, with Ctrl to the ends of the list, as in any data grid. */
const homeAndEnd: NonNullable<NonNullable<GridOptions<GridRow>['defaultColDef']>['suppressKeyboardEvent']> = ({
  editing,
  event,
  api,
  node,
}) => {
  if (editing || (event.key !== 'Home' && event.key !== 'End')) return false;
  const columns = api.getAllDisplayedColumns();
  const first = event.key === 'Home';
  const edge = first ? 0 : api.getDisplayedRowCount() - 1;
  const row = event.ctrlKey || event.metaKey ? edge : (node.rowIndex ?? 0);
  const column = columns[first ? 0 : columns.length - 1];
  event.preventDefault();
  api.ensureIndexVisible(row);
  if (column) api.setFocusedCell(row, column);
  return true;
};

customElements.define('list-grid', ListGrid);
