import { css, html, LitElement, type TemplateResult } from 'lit';
import type { ShelfEntry } from '../../app/shelf.ts';
import { shared } from '../styles.ts';

const DATE = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

/**
 * Asks for the earlier list. Fires `choose-file`, `choose-as-opened`, or `compare-kept` with the id of a kept list, and `show-kept` once, to
 * be told what is kept.
 */
export class ChooseEarlier extends LitElement {
  static override properties = {
    kept: { attribute: false },
    edited: { type: Boolean },
    busy: { type: Boolean },
  };
  declare kept: readonly ShelfEntry[];
  /** Cells of the open list were changed. */
  declare edited: boolean;
  declare busy: boolean;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        max-width: 860px;
        font-size: var(--reading);
      }
      .drop {
        display: flex;
        flex-wrap: wrap;
        gap: 12px 16px;
        align-items: center;
        margin-top: 16px;
        padding: 28px 24px;
        border: 1.5px dashed var(--line);
        border-radius: 6px;
        background: var(--sheet);
      }
      .drop .button {
        min-height: 40px;
        padding: 6px 20px;
      }
      h3 {
        margin-top: 28px;
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 2px 20px;
        justify-content: space-between;
        align-items: baseline;
        padding: 7px 0;
        border-bottom: 1px solid var(--line);
      }
      .name {
        min-height: 24px;
        overflow-wrap: anywhere;
        text-align: left;
      }
    `,
  ];

  constructor() {
    super();
    this.kept = [];
    this.edited = false;
    this.busy = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#fire('show-kept');
  }

  override render(): TemplateResult {
    return html`<p>What changed since an earlier list, what is newly wrong, and which concessions still apply.</p>
      <section class="drop" aria-label="Choose the earlier list">
        <button class="button main" ?disabled=${this.busy} @click=${() => this.#fire('choose-file')}>Choose the earlier list…</button>
        ${this.edited ? html`<button class="button" ?disabled=${this.busy} @click=${() => this.#fire('choose-as-opened')}>This list as it was opened</button>` : ''}
        <span class="soft">${this.busy ? html`<span role="status">Reading and comparing…</span>` : 'Or drop it here: a CSV or XLSX file, or a project that was saved from here.'}</span>
      </section>
      ${this.kept.length > 0 ? this.#keptLists() : ''}`;
  }

  #keptLists(): TemplateResult {
    return html`<h3 id="kept">Or a list kept on this computer, as it was left</h3>
      <ul aria-labelledby="kept">${this.kept.map((entry) => this.#entry(entry))}</ul>`;
  }

  #entry({ id, name, savedAt, steps }: ShelfEntry): TemplateResult {
    return html`<li>
      <button class="link name" ?disabled=${this.busy} @click=${() => this.#fire('compare-kept', id)}>${name}</button>
      <span class="soft small">${DATE.format(new Date(savedAt))}${steps > 0 ? `, ${steps} ${steps === 1 ? 'change' : 'changes'}` : ''}</span>
    </li>`;
  }

  #fire(what: string, detail?: string): void {
    this.dispatchEvent(new CustomEvent(what, { detail, bubbles: true, composed: true }));
  }
}

customElements.define('choose-earlier', ChooseEarlier);
