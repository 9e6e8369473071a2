import { css, html } from 'lit';
import { findUnclearUnit } from '../app/column-choices.ts';
import type { AppState } from '../app/state.ts';
import { itemOfRow } from '../core/caching/in-order.ts';
import { SAFETY_SHORT } from '../core/say/safety.ts';
import type { CellEditEvent, CellsEditEvent, ListGrid } from './grid/list-grid.ts';
import './grid/list-grid.ts';
import './overview-panel.ts';
import type { FocusRowsEvent } from './overview-panel.ts';
import './read-line.ts';
import { Panes } from './panes.ts';
import type { ChooseReadingEvent } from './reading-choice.ts';
import type { SetColumnEvent } from './role-menu.ts';
import './row-panel.ts';
import { undoButtons } from './report-parts.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';
import type { ChooseTableEvent } from './table-choice.ts';
import './unit-question.ts';
import './verdict-counts.ts';

/** Time in which a second click makes a double click, as most systems have it. */
const DOUBLE_CLICK_MS = 400;

/** The list view: what was read, how it stands, the list itself, and one row in full. */
export class ListView extends StoreElement {
  static override properties = { showsOverview: { state: true } };
  /** How the whole list stands is wanted beside it; a chosen row takes its place. */
  declare showsOverview: boolean;
  #pressedAt = Number.NEGATIVE_INFINITY;
  #opening: ReturnType<typeof setTimeout> | undefined;
  readonly panes = new Panes(this, ['verdict-counts', 'list-grid', 'row-panel']);

  static override styles = [
    shared,
    css`
      :host {
        position: relative;
        display: grid;
        grid-template: auto minmax(0, 1fr) auto / minmax(0, 1fr) auto;
        height: 100%;
      }
      .top {
        grid-column: 1 / -1;
        padding: 12px 20px;
        border-bottom: 1px solid var(--line);
      }
      .tools {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        gap: 8px 16px;
        margin-top: 10px;
      }
      .tools > div {
        display: flex;
        gap: 8px;
        align-items: center;
      }
      list-grid {
        grid-area: 2 / 1;
      }
      row-panel,
      overview-panel {
        width: var(--panel-width, 432px);
        border-left: 1px solid var(--line);
      }
      .panel {
        position: relative;
        min-height: 0;
        grid-row: 2 / 4;
        grid-column: 2;
      }
      .grip {
        position: absolute;
        inset: 0 auto 0 -4px;
        z-index: 2;
        width: 8px;
        cursor: col-resize;
      }
      .foot {
        grid-area: 3 / 1;
        padding: 6px 20px;
        border-top: 1px solid var(--line);
        color: var(--soft);
        font-size: var(--small);
      }
      @media (max-width: 1099px) {
        .panel {
          position: absolute;
          z-index: 3;
          right: 0;
          bottom: 0;
          top: 0;
          box-shadow: -4px 0 16px rgb(0 0 0 / 12%);
        }
        /* The safety words stay in sight. */
        .foot {
          position: relative;
          z-index: 4;
          background: var(--paper);
        }
      }
      @media (max-height: 600px) {
        :host {
          height: auto;
          grid-template-rows: auto min(400px, 90vh) auto;
        }
        .panel {
          position: fixed;
          inset: 0 0 0 auto;
          z-index: 3;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.showsOverview = false;
  }

  override render() {
    const state = this.store.state;
    const { list, rows, filter, search, selectedRow } = state;
    const line = selectedRow === null ? null : (itemOfRow(rows, selectedRow)?.line ?? null);
    return html`
      <div class="top">
        <read-line .list=${list} .columnsBy=${state.columnsBy} ?losesEdits=${state.undoName !== null}
          @choose-reading=${this.#reread} @choose-table=${this.#readTable} @forget-columns=${() => this.commands.forgetColumns()}></read-line>
        ${this.#tools(state)}
        <unit-question .column=${list && findUnclearUnit(list)} @set-column=${this.#setColumn}></unit-question>
      </div>
      <list-grid .list=${list} .rows=${rows} .filter=${filter} .only=${state.focus?.rows ?? null} .search=${search} .selectedRow=${selectedRow}
        @pointerdown=${this.#press} @edit-cell=${this.#edit} @edit-cells=${this.#editCells} @open-search=${this.#openSearch} @choose-row=${this.#choose} @set-column=${this.#setColumn}></list-grid>
      ${
        line
          ? html`<aside class="panel" aria-label="Row ${line.row}">
              <div class="grip" title="Drag to resize" @pointerdown=${this.#resize}></div>
              <row-panel tabindex="-1" .line=${line} .list=${list} .catalogues=${state.catalogues} .concessions=${state.concessions} .commands=${this.commands} units=${state.shop.units} @choose-row=${this.#choose} @open-rule=${this.#openRule}></row-panel>
            </aside>`
          : this.#overview(state)
      }
      <p class="foot">${SAFETY_SHORT}</p>
    `;
  }

  #overview({ rows, focus }: AppState) {
    if (!this.showsOverview) return '';
    return html`<aside class="panel" aria-label="How the list stands">
      <div class="grip" title="Drag to resize" @pointerdown=${this.#resize}></div>
      <overview-panel .lines=${rows.flatMap(({ line }) => line ?? [])} focused=${focus?.name ?? ''}
        @focus-rows=${this.#focusRows} @close-overview=${this.#toggleOverview}></overview-panel>
    </aside>`;
  }

  #tools({ list, filter, focus, search, shop }: AppState) {
    return html`<div class="tools">
      <verdict-counts .totals=${list?.totals} .filter=${filter} @toggle-verdict=${this.#toggle}></verdict-counts>
      <div>
        ${focus ? html`<span>Only ${focus.name}</span><button class="link" @click=${() => this.commands.focusRows(null)}>Show all rows</button>` : ''}
        <button class="button" aria-pressed=${this.showsOverview && this.store.state.selectedRow === null} title="Verdicts by panel, by check and by metals" @click=${this.#toggleOverview}>Overview</button>
        ${undoButtons(this.store.state, this.commands)}
        <button class="button" title="Set one column on the selected rows, or on the rows shown" @click=${this.#setMany}>Set column…</button>
        <label class="soft">Units
          <select class="field" .value=${shop.units} @change=${this.#units}>
            <option value="mm" ?selected=${shop.units === 'mm'}>mm</option>
            <option value="in" ?selected=${shop.units === 'in'}>in</option>
          </select>
        </label>
        <input class="field" type="search" placeholder="Find in list" aria-label="Find in list" .value=${search} @input=${this.#find} />
        <button class="button" title="Find and replace (Ctrl+H)" @click=${this.#openReplace}>Replace…</button>
      </div>
    </div>`;
  }

  readonly #focusRows = ({ detail }: FocusRowsEvent) =>
    this.commands.focusRows(detail && { name: detail.name, rows: new Set(detail.rows) });

  /** A chosen row stands where the overview does, so asking for it lets the row go. */
  readonly #toggleOverview = () => {
    this.showsOverview = !(this.showsOverview && this.store.state.selectedRow === null);
    if (this.showsOverview) this.commands.select(null);
  };

  readonly #setMany = () => {
    const rows = this.renderRoot.querySelector<ListGrid>('list-grid')?.rowsInHand ?? [];
    this.commands.openDialog({ kind: 'bulk', rows });
  };
  readonly #edit = ({ detail }: CellEditEvent) => this.commands.editCell(detail.row, detail.column, detail.text);
  readonly #openSearch = () => this.renderRoot.querySelector<HTMLInputElement>('input[type=search]')?.select();
  readonly #openReplace = () => this.renderRoot.querySelector<ListGrid>('list-grid')?.openFind();
  readonly #editCells = ({ detail: { cells, name, say } }: CellsEditEvent) => {
    this.store.set({ message: say === null ? null : { kind: 'done', text: say } });
    this.commands.editCells(cells, name);
  };
  readonly #setColumn = ({ detail: { index, role, unit } }: SetColumnEvent) =>
    this.commands.setColumn(index, role, unit);
  readonly #readTable = ({ detail }: ChooseTableEvent) => this.commands.reopen(detail);
  /** Reading again drops the edits, so they are given up knowingly. */
  readonly #reread = ({ detail }: ChooseReadingEvent) => {
    const { undoName } = this.store.state;
    if (!undoName || confirm('Reading the file again drops your edits. Read it again?'))
      this.commands.reopen({}, detail);
  };
  /** A panel that opens moves what is under the pointer, so it waits until no second click can come. */
  readonly #choose = ({ detail, timeStamp }: CustomEvent<number | null>) => {
    clearTimeout(this.#opening);
    const isOpen = this.showsOverview || this.store.state.selectedRow !== null;
    const isPressed = timeStamp - this.#pressedAt < DOUBLE_CLICK_MS;
    if (detail === null || isOpen || !isPressed) this.commands.select(detail);
    else this.#opening = setTimeout(() => this.commands.select(detail), DOUBLE_CLICK_MS);
  };
  readonly #press = ({ timeStamp }: PointerEvent) => {
    this.#pressedAt = timeStamp;
  };
  readonly #openRule = ({ detail }: CustomEvent<string>) => this.commands.show('rules', detail);
  readonly #toggle = ({ detail }: CustomEvent) => this.commands.toggleFilter(detail);
  readonly #find = ({ target }: Event) => this.commands.search((target as HTMLInputElement).value);
  readonly #units = ({ target }: Event) =>
    this.commands.setShop({
      ...this.store.state.shop,
      units: (target as HTMLSelectElement).value === 'in' ? 'in' : 'mm',
    });

  readonly #resize = (event: PointerEvent) => {
    const grip = event.currentTarget as HTMLElement;
    grip.setPointerCapture(event.pointerId);
    grip.onpointermove = ({ clientX }) => {
      const width = Math.min(Math.max(this.getBoundingClientRect().right - clientX, 320), this.clientWidth * 0.7);
      this.style.setProperty('--panel-width', `${width}px`);
    };
    grip.onpointerup = () => {
      grip.onpointermove = null;
    };
  };
}

customElements.define('list-view', ListView);
