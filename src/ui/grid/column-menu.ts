import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { shared } from '../styles.ts';
import { type ColumnFilter, FILTER_WAYS, type FilterWay } from './column-filter.ts';

/** What can be done with a column besides filtering it. */
export type ColumnAct = 'hide' | 'freeze' | 'unfreeze';
export type FilterColumnEvent = CustomEvent<ColumnFilter | null>;
export type ActOnColumnEvent = CustomEvent<ColumnAct>;

const NO_FILTER: ColumnFilter = { how: 'contains', text: '' };
const ACTS: Readonly<Record<ColumnAct, string>> = {
  hide: 'Hide column',
  freeze: 'Keep columns to here in sight',
  unfreeze: 'Let all columns scroll',
};

/**
 * A box hung on a heading: filters the column while one types, hides it, freezes the columns up to it. Sends `filter-column`,
 * `act-on-column` and `close-menu`; whoever opened it places it and gives the focus back.
 */
export class ColumnMenu extends LitElement {
  static override properties = {
    heading: {},
    about: {},
    filter: { attribute: false },
    acts: { attribute: false },
  };
  declare heading: string;
  /** What the column says; '' for one of the sender's, whose menu of meanings tells. */
  declare about: string;
  declare filter: ColumnFilter | null;
  declare acts: readonly ColumnAct[];

  static override styles = [
    shared,
    css`
      :host {
        position: fixed;
        z-index: 100000;
        width: 240px;
        padding: 8px;
        border: 1px solid var(--line);
        border-radius: 6px;
        background: var(--sheet);
        box-shadow: 0 4px 16px rgb(0 0 0 / 18%);
        color: var(--ink);
        font-size: 13px;
      }
      .filter {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr);
        gap: 8px;
        padding: 4px 8px 8px;
      }
      .title {
        grid-column: 1 / -1;
        overflow: hidden;
        color: var(--soft);
        font-size: 12px;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      .about {
        padding: 4px 8px 6px;
      }
      .field {
        min-width: 0;
        min-height: 30px;
        padding: 2px 8px;
      }
      .act {
        display: block;
        width: 100%;
        padding: 4px 8px;
        border: 0;
        border-radius: 3px;
        background: none;
        text-align: left;
      }
      .act:hover,
      .act:focus-visible {
        background: var(--blue-ground);
        color: var(--blue);
      }
    `,
  ];

  constructor() {
    super();
    this.heading = '';
    this.about = '';
    this.filter = null;
    this.acts = [];
  }

  override render() {
    const { how, text } = this.filter ?? NO_FILTER;
    return html`<div role="dialog" tabindex="-1" aria-label=${`Filter, hide or keep in sight ${this.heading}`} aria-describedby=${this.about ? 'about' : nothing} @keydown=${this.#key} @focusout=${this.#leave}>
      ${this.about ? html`<p class="about" id="about">${this.about}</p>` : ''}
      <div class="filter">
        <span class="title">Show rows whose ${this.heading}</span>
        <select class="field" aria-label="How to compare" @change=${this.#filter}>
          ${Object.entries(FILTER_WAYS).map(([way, name]) => html`<option value=${way} ?selected=${way === how}>${name}</option>`)}
        </select>
        <input class="field" aria-label="Text to compare with" ?disabled=${how === 'empty'} .value=${text} @input=${this.#filter} />
      </div>
      ${this.filter ? this.#button('Clear filter', () => this.#send('filter-column', null)) : ''}
      ${this.acts.map((act) => this.#button(ACTS[act], () => this.#send('act-on-column', act)))}
    </div>`;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('input')?.select();
  }

  #button(name: string, done: () => void): TemplateResult {
    const click = () => {
      done();
      this.#close();
    };
    return html`<button class="act" @click=${click}>${name}</button>`;
  }

  readonly #filter = () => {
    const how = (this.renderRoot.querySelector('select')?.value ?? 'contains') as FilterWay;
    this.#send('filter-column', { how, text: this.renderRoot.querySelector('input')?.value ?? '' });
  };

  readonly #key = (event: KeyboardEvent) => {
    const isDone = event.key === 'Escape' || (event.key === 'Enter' && event.target instanceof HTMLInputElement);
    if (!isDone) return;
    event.preventDefault();
    event.stopPropagation();
    this.#close();
  };

  readonly #leave = ({ relatedTarget }: FocusEvent) => {
    if (!(relatedTarget instanceof Node && this.renderRoot.contains(relatedTarget))) this.#close();
  };

  #send(name: string, detail: ColumnFilter | ColumnAct | null): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }

  #close(): void {
    this.dispatchEvent(new CustomEvent('close-menu'));
  }
}

customElements.define('column-menu', ColumnMenu);
