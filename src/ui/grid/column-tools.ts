import type { GridApi } from 'ag-grid-community';
import { html, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { recallLayout, rememberLayout } from '../../app/grid-memory.ts';
import type { OpenMemory } from '../../app/shop-memory.ts';
import type { GridRow } from '../../app/state.ts';
import { headingKey } from '../../core/intake/heading-set.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Column, LengthUnit } from '../../core/model/list.ts';
import '../role-menu.ts';
import { cellText, isOwn } from './cell-text.ts';
import { type ColumnFilter, describeFilter, isFiltering, passesFilter } from './column-filter.ts';
import { helpForOwn } from './column-help.ts';
import {
  applyLayout,
  freezeUpTo,
  frozenColumns,
  hiddenColumns,
  isFreezable,
  readLayout,
  unfreeze,
} from './column-layout.ts';
import './column-menu.ts';
import type { ActOnColumnEvent, ColumnAct, FilterColumnEvent } from './column-menu.ts';
import type { HeadingMenus } from './grid-columns.ts';

type Grid = GridApi<GridRow>;
type Place = { readonly left: number; readonly top: number };
/** What is open: the meanings of one of the sender's columns, or the tools of any column. */
type Open = Place & { readonly id: string; readonly meaningsOf: Column | null };

const WIDTHS = { meanings: 372, tools: 240 } as const;

/** Filters, hidden and frozen columns, widths and order of a grid, with the menus of its headings. Layout is kept per heading set. */
export class ColumnTools implements HeadingMenus {
  readonly #host: ReactiveControllerHost;
  readonly #memory: OpenMemory;
  #grid: Grid | null = null;
  #key = '';
  #file = '';
  #filters: ReadonlyMap<string, ColumnFilter> = new Map();
  #open: Open | null = null;

  constructor(host: ReactiveControllerHost, memory: OpenMemory) {
    this.#host = host;
    this.#memory = memory;
  }

  /** Follows a grid that shows a list, and puts its columns as they were left. Another list starts without filters. */
  follow(grid: Grid, { file, columns }: Pick<AuditedList, 'file' | 'columns'>): void {
    const key = headingKey(columns.map(({ heading }) => heading));
    if (key !== this.#key || file !== this.#file) this.#filters = new Map();
    this.#key = key;
    this.#file = file;
    this.#grid = grid;
    const layout = recallLayout(this.#memory, key);
    if (layout) applyLayout(grid, layout);
    this.#host.requestUpdate();
  }

  get hasFilters(): boolean {
    return this.#filters.size > 0;
  }

  passes(row: GridRow, units: LengthUnit): boolean {
    return [...this.#filters].every(([id, filter]) => passesFilter(cellText(row, id, units), filter));
  }

  readonly isFiltered = (id: string): boolean => this.#filters.has(id);

  /** Keeps how the columns stand now. */
  keepLayout(): void {
    if (this.#grid) rememberLayout(this.#memory, this.#key, readLayout(this.#grid));
    this.#host.requestUpdate();
  }

  readonly openMeanings = (column: Column, button: HTMLElement): void => {
    this.#show({ id: `sender-${column.index}`, meaningsOf: column, ...placeBelow(button, WIDTHS.meanings) });
  };

  readonly openTools = (id: string, button: HTMLElement): void => {
    this.#show({ id, meaningsOf: null, ...placeBelow(button, WIDTHS.tools) });
  };

  /** What is not shown and why, each with its way back; nothing where everything is shown. */
  renderNotes(): TemplateResult | '' {
    const hidden = this.#grid ? hiddenColumns(this.#grid).length : 0;
    if (hidden === 0 && !this.hasFilters) return '';
    const filters = [...this.#filters].map(([id, filter]) => describeFilter(this.#nameOf(id), filter));
    return html`<p class="notes">
      ${
        this.hasFilters
          ? html`<span>Only rows whose ${filters.join(' and ')}: ${this.#grid?.getDisplayedRowCount()} shown</span>
            <button class="link" @click=${this.#clearFilters}>Clear filters</button>`
          : ''
      }
      ${hidden > 0 ? html`<button class="link" title="Show them again" @click=${this.#showAll}>hidden columns: ${hidden}</button>` : ''}
    </p>`;
  }

  renderMenu(): TemplateResult | '' {
    const open = this.#open;
    if (!open) return '';
    const style = `left: ${open.left}px; top: ${open.top}px`;
    if (open.meaningsOf)
      return html`<role-menu .style=${style} .column=${open.meaningsOf} @close-menu=${this.#close}></role-menu>`;
    return html`<column-menu .style=${style} .heading=${this.#nameOf(open.id)} .about=${isOwn(open.id) ? helpForOwn(open.id) : ''} .filter=${this.#filters.get(open.id) ?? null}
      .acts=${this.#actsFor(open.id)} @filter-column=${this.#filter} @act-on-column=${this.#act} @close-menu=${this.#close}></column-menu>`;
  }

  #actsFor(id: string): readonly ColumnAct[] {
    const grid = this.#grid;
    if (!grid) return [];
    const frozen = frozenColumns(grid);
    const canFreeze = isFreezable(grid, id) && frozen.at(-1) !== id;
    return ['hide', ...(canFreeze ? ['freeze' as const] : []), ...(frozen.length > 0 ? ['unfreeze' as const] : [])];
  }

  #show(open: Open): void {
    this.#open = open;
    this.#host.requestUpdate();
  }

  /** The focus goes back to the heading, whose button may be another by now. */
  readonly #close = () => {
    const id = this.#open?.id;
    this.#open = null;
    this.#host.requestUpdate();
    if (id) this.#grid?.setFocusedHeader(id);
  };

  readonly #filter = ({ detail }: FilterColumnEvent) => {
    if (!this.#open) return;
    const filters = new Map(this.#filters);
    if (detail && isFiltering(detail)) filters.set(this.#open.id, detail);
    else filters.delete(this.#open.id);
    this.#useFilters(filters);
  };

  readonly #clearFilters = () => this.#useFilters(new Map());

  #useFilters(filters: ReadonlyMap<string, ColumnFilter>): void {
    this.#filters = filters;
    this.#grid?.onFilterChanged();
    this.#grid?.refreshHeader();
    this.#host.requestUpdate();
  }

  readonly #act = ({ detail }: ActOnColumnEvent) => {
    const [grid, id] = [this.#grid, this.#open?.id];
    if (!grid || !id) return;
    if (detail === 'hide') grid.setColumnsVisible([id], false);
    if (detail === 'freeze') freezeUpTo(grid, id);
    if (detail === 'unfreeze') unfreeze(grid);
    this.keepLayout();
  };

  readonly #showAll = () => {
    const grid = this.#grid;
    if (!grid) return;
    grid.setColumnsVisible([...hiddenColumns(grid)], true);
    this.keepLayout();
  };

  #nameOf(id: string): string {
    return this.#grid?.getColumnDef(id)?.headerName ?? id;
  }
}

function placeBelow(button: HTMLElement, width: number): Place {
  const { left, bottom } = button.getBoundingClientRect();
  return { left: Math.max(8, Math.min(left, innerWidth - width - 8)), top: bottom + 4 };
}
