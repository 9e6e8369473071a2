import { css, html, LitElement, type TemplateResult } from 'lit';
import type { ShelfEntry } from '../app/shelf.ts';
import { shared } from './styles.ts';
import { VERDICT_WORDS } from './verdict-counts.ts';
import { verdictShape } from './verdict-mark.ts';

/** As many as are looked for at a glance; the rest are one click away. */
const FIRST_SHOWN = 4;
const DATE = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

/** Lists kept from earlier. A click fires `continue-list` or `drop-list` with the id of one. */
export class SavedLists extends LitElement {
  static override properties = { entries: { attribute: false }, showsAll: { state: true } };
  declare entries: readonly ShelfEntry[];
  declare showsAll: boolean;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        width: 100%;
        max-width: 860px;
        margin: 0 auto;
        font-size: var(--reading);
      }
      h2 {
        margin-bottom: 6px;
      }
      ul {
        max-height: 40vh;
        margin: 0;
        padding: 0;
        overflow: auto;
        list-style: none;
      }
      li {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto auto auto;
        gap: 4px 20px;
        align-items: center;
        padding: 6px 4px;
        border-top: 1px solid var(--line);
      }
      .name {
        overflow: hidden;
        min-height: 28px;
        text-align: left;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      .counts {
        display: inline-flex;
        gap: 12px;
      }
      .counts span {
        display: inline-flex;
        gap: 5px;
        align-items: center;
      }
      @media (max-width: 760px) {
        li {
          grid-template-columns: minmax(0, 1fr) auto;
        }
        li > :last-child {
          justify-self: end;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.entries = [];
    this.showsAll = false;
  }

  override render() {
    const shown = this.showsAll ? this.entries : this.entries.slice(0, FIRST_SHOWN);
    const more = this.entries.length - shown.length;
    return html`
      <h2 id="title">Lists kept on this computer</h2>
      <ul aria-labelledby="title">${shown.map((entry) => this.#entry(entry))}</ul>
      ${more > 0 ? html`<button class="link" @click=${this.#showAll}>Show ${more} more</button>` : ''}
    `;
  }

  #entry(entry: ShelfEntry): TemplateResult {
    const { id, name, savedAt, steps } = entry;
    return html`<li>
      <button class="link name" title=${name} @click=${() => this.#fire('continue-list', id)}>${name}</button>
      <span class="soft small">${DATE.format(new Date(savedAt))}${steps > 0 ? `, ${steps} ${steps === 1 ? 'change' : 'changes'}` : ''}</span>
      ${counts(entry)}
      <button class="link small" aria-label="Delete ${name} from this browser" @click=${() => this.#drop(entry)}>Delete</button>
    </li>`;
  }

  /** Changes on it are in no file of the user's, so they are given up knowingly. */
  #drop({ id, name, steps }: ShelfEntry): void {
    if (steps === 0 || confirm(`Delete ${name} with its changes from this browser?`)) this.#fire('drop-list', id);
  }

  readonly #showAll = () => {
    this.showsAll = true;
  };

  #fire(what: 'continue-list' | 'drop-list', detail: string): void {
    this.dispatchEvent(new CustomEvent(what, { detail, bubbles: true, composed: true }));
  }
}

function counts({ totals }: ShelfEntry): TemplateResult {
  return html`<span class="counts">
    ${VERDICT_WORDS.map(([verdict, one, many]) => {
      const words = `${totals[verdict]} ${totals[verdict] === 1 ? one : many}`;
      return html`<span title=${words}>${verdictShape(verdict, 14)} <span aria-label=${words} role="img">${totals[verdict]}</span></span>`;
    })}
  </span>`;
}

customElements.define('saved-lists', SavedLists);
