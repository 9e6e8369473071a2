import { css, html, LitElement, type TemplateResult } from 'lit';
import { columnName } from '../app/column-choices.ts';
import type { Commands } from '../app/commands.ts';
import { bulkCells, bulkColumns, countRows } from '../app/many-cells.ts';
import type { Store } from '../app/store.ts';
import type { Column } from '../core/model/list.ts';
import { dialogStyles } from './dialog-styles.ts';
import { shared } from './styles.ts';
import './try-table.ts';
import { TryController } from './try-controller.ts';
import type { TickRowsEvent } from './try-table.ts';

/** Time to finish a word before it is tried. */
const PAUSE_MS = 200;
const MOST_SUGGESTED = 30;

/** One column set to one text on many rows, with what that would do before it is done. */
export class BulkDialog extends LitElement {
  static override properties = { rows: { attribute: false }, column: { state: true }, text: { state: true } };
  declare rows: readonly number[];
  declare column: Column | null;
  declare text: string | null;
  store!: Store;
  commands!: Commands;
  readonly #trial = new TryController(this, (cells) => this.commands.tryEdit(cells));
  #timer: ReturnType<typeof setTimeout> | undefined;

  static override styles = [
    shared,
    dialogStyles,
    css`
      .field {
        width: min(100%, 340px);
      }
    `,
  ];

  constructor() {
    super();
    this.rows = [];
    this.column = null;
    this.text = null;
  }

  override render(): TemplateResult {
    const { all, now, ticked } = this.#trial;
    const wanted = this.text === null ? [] : this.rows.filter((row) => ticked.has(row));
    return html`<dialog aria-labelledby="title" @close=${() => this.commands.closeDialog()}>
      <div class="head">
        <h2 id="title">Set a column on ${countRows(this.rows.length)}</h2>
        <p>The selected rows, or else the rows now shown that are fasteners. One step, which can be undone.</p>
      </div>
      <div class="body">
        ${this.#fields()}
        ${this.text === null ? '' : html`<try-table .all=${all} .now=${now} .ticked=${ticked} @tick-rows=${this.#tick}></try-table>`}
      </div>
      <footer>
        <button class="button" @click=${this.#close}>Cancel</button>
        <button class="button main" ?disabled=${wanted.length === 0 || !all} @click=${() => this.#apply(wanted)}>
          Set on ${countRows(wanted.length)}
        </button>
      </footer>
    </dialog>`;
  }

  #fields(): TemplateResult {
    const { list } = this.store.state;
    const columns = list ? bulkColumns(list) : [];
    return html`<div class="fields">
      <label for="column">Column</label>
      <select id="column" class="field" @change=${this.#chooseColumn}>
        ${columns.map((one) => html`<option value=${one.index} ?selected=${one.index === this.column?.index}>${columnName(one)}</option>`)}
      </select>
      <label for="text">Set to</label>
      <input id="text" class="field" list="texts" autocomplete="off" .value=${this.text ?? ''} @input=${this.#type} />
      <datalist id="texts">${this.#texts().map((text) => html`<option value=${text}></option>`)}</datalist>
    </div>`;
  }

  protected override willUpdate(): void {
    const { list } = this.store.state;
    this.column ??= (list && bulkColumns(list)[0]) ?? null;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('dialog')?.showModal();
  }

  /** What stands in the column already: the likeliest texts. */
  #texts(): readonly string[] {
    const index = this.column?.index ?? -1;
    const texts = this.store.state.rows.map(({ cells }) => cells[index]?.trim() ?? '').filter(Boolean);
    return [...new Set(texts)].slice(0, MOST_SUGGESTED);
  }

  readonly #chooseColumn = ({ target }: Event) => {
    const index = Number((target as HTMLSelectElement).value);
    this.column = this.store.state.list?.columns.find((one) => one.index === index) ?? null;
    this.#tryLater();
  };

  readonly #type = ({ target }: Event) => {
    this.text = (target as HTMLInputElement).value;
    this.#tryLater();
  };

  #tryLater(): void {
    clearTimeout(this.#timer);
    this.#trial.forget();
    this.#timer = setTimeout(() => this.#trial.begin(this.#cells(this.rows).cells), PAUSE_MS);
  }

  #cells(rows: readonly number[]) {
    const { column, text } = this;
    return column && text !== null ? bulkCells(this.store.state, column, text, rows) : { cells: [], name: '' };
  }

  readonly #tick = ({ detail }: TickRowsEvent) => this.#trial.tick(detail);

  readonly #close = () => this.renderRoot.querySelector('dialog')?.close();

  async #apply(rows: readonly number[]): Promise<void> {
    clearTimeout(this.#timer);
    const { cells, name } = this.#cells(rows);
    this.#close();
    await this.commands.editCells(cells, name);
  }
}

customElements.define('bulk-dialog', BulkDialog);
