import { css, html, LitElement, nothing } from 'lit';
import type { ListOptions } from '../core/intake/build-list.ts';
import type { AuditedList } from '../core/model/audited.ts';
import { shared } from './styles.ts';

/** The user wants another sheet or row of headings read. */
export type ChooseTableEvent = CustomEvent<Pick<ListOptions, 'sheet' | 'headerRow'>>;

/** Which sheet and which row of headings to read, behind a link. Sends `choose-table`. */
export class TableChoice extends LitElement {
  static override properties = {
    list: { attribute: false },
    losesEdits: { type: Boolean },
    isOpen: { state: true },
    sheet: { state: true },
  };
  declare list: AuditedList | null;
  declare losesEdits: boolean;
  declare isOpen: boolean;
  declare sheet: string;

  static override styles = [
    shared,
    css`
      :host {
        position: relative;
      }
      form {
        position: absolute;
        z-index: 10;
        top: 26px;
        left: 0;
        display: grid;
        grid-template-columns: auto 200px;
        gap: 8px 12px;
        align-items: center;
        padding: 12px;
        border: 1px solid var(--line);
        border-radius: 6px;
        background: var(--sheet);
        box-shadow: 0 4px 16px rgb(0 0 0 / 18%);
        white-space: nowrap;
      }
      .field {
        width: 100%;
      }
      .wide {
        display: flex;
        gap: 8px;
        grid-column: 1 / -1;
      }
    `,
  ];

  constructor() {
    super();
    this.list = null;
    this.losesEdits = false;
    this.isOpen = false;
    this.sheet = '';
  }

  override render() {
    const { list } = this;
    if (!list) return html``;
    return html`<button class="link" aria-expanded=${this.isOpen} @click=${this.#toggle}>Change</button>
      ${this.isOpen ? this.#form(list) : ''}`;
  }

  #form({ sheet, sheets, headerRow }: AuditedList) {
    const isSame = this.sheet === sheet;
    return html`<form aria-label="What to read" @submit=${this.#submit} @keydown=${this.#key}>
      ${
        sheets.length > 0
          ? html`<label for="sheet">Sheet</label>
            <select id="sheet" class="field" @change=${this.#chooseSheet}>
              ${sheets.map((name) => html`<option ?selected=${name === this.sheet}>${name}</option>`)}
            </select>`
          : ''
      }
      <label for="row">Row of headings</label>
      <input id="row" class="field" type="number" min="1" step="1" .value=${isSame ? String(headerRow) : ''}
        placeholder=${isSame ? nothing : 'found automatically'} ?required=${isSame} />
      ${this.losesEdits ? html`<p class="wide soft">Your edits are dropped.</p>` : ''}
      <div class="wide">
        <button class="button main">Read again</button>
        <button class="button" type="button" @click=${this.#toggle}>Cancel</button>
      </div>
    </form>`;
  }

  readonly #toggle = async () => {
    this.isOpen = !this.isOpen;
    this.sheet = this.list?.sheet ?? '';
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(this.isOpen ? '.field' : '.link')?.focus();
  };

  readonly #chooseSheet = ({ target }: Event) => {
    this.sheet = (target as HTMLSelectElement).value;
  };

  readonly #key = (event: KeyboardEvent) => {
    if (event.key === 'Escape') this.#toggle();
  };

  readonly #submit = (event: Event) => {
    event.preventDefault();
    const row = this.renderRoot.querySelector<HTMLInputElement>('#row')?.valueAsNumber ?? Number.NaN;
    const detail = { ...(this.sheet && { sheet: this.sheet }), ...(Number.isInteger(row) && { headerRow: row }) };
    this.dispatchEvent(new CustomEvent('choose-table', { detail, bubbles: true, composed: true }));
    this.#toggle();
  };
}

customElements.define('table-choice', TableChoice);
