import { css, html, LitElement } from 'lit';
import { type FindQuery, type FoundCell, findCells, nameReplacement, replaceInCells } from '../app/find-cells.ts';
import { shared } from './styles.ts';

/**
 * A bar to find and replace in the sender's cells that are displayed. Sends `show-cell` for the match to show, `edit-cells` for
 * replacements as one step, and `close-find`.
 */
export class FindReplace extends LitElement {
  static override properties = {
    cells: { attribute: false },
    query: { state: true },
    at: { state: true },
  };
  /** The cells to search, in their order on screen; given anew when they may have changed. */
  declare cells: () => Iterable<FoundCell>;
  declare query: FindQuery;
  /** Which match is shown, counted from 0; -1 before the first. */
  declare at: number;
  #by = '';

  static override styles = [
    shared,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 12px;
        align-items: center;
        padding: 8px 12px;
        border-bottom: 1px solid var(--line);
        background: var(--paper);
      }
      .field {
        width: 180px;
        min-height: 30px;
      }
      .button {
        min-height: 30px;
        padding: 2px 10px;
      }
      .button:disabled {
        opacity: 0.5;
        cursor: default;
      }
      label {
        display: inline-flex;
        gap: 6px;
        align-items: center;
      }
      .pair {
        display: inline-flex;
        gap: 4px;
      }
      output {
        min-width: 92px;
        color: var(--soft);
      }
      .close {
        margin-left: auto;
      }
    `,
  ];

  constructor() {
    super();
    this.cells = () => [];
    this.query = { text: '', matchCase: false, wholeCell: false };
    this.at = -1;
  }

  override render() {
    const { text, matchCase, wholeCell } = this.query;
    const found = this.#found();
    const isNone = found.length === 0;
    return html`<input class="field" aria-label="Find" placeholder="Find" .value=${text} @input=${this.#type} @keydown=${this.#findKey} />
      <span class="pair">
        <button class="button" aria-label="Previous match" title="Previous (Shift+Enter)" ?disabled=${isNone} @click=${() => this.#step(-1)}>↑</button>
        <button class="button" aria-label="Next match" title="Next (Enter)" ?disabled=${isNone} @click=${() => this.#step(1)}>↓</button>
      </span>
      <output aria-live="polite">${this.#count(found.length)}</output>
      <label><input type="checkbox" .checked=${matchCase} @change=${() => this.#seek({ matchCase: !matchCase })} />Match case</label>
      <label><input type="checkbox" .checked=${wholeCell} @change=${() => this.#seek({ wholeCell: !wholeCell })} />Whole cell</label>
      <input class="field" aria-label="Replace with" placeholder="Replace with" @input=${this.#typeBy} @keydown=${this.#replaceKey} />
      <span class="pair">
        <button class="button" ?disabled=${isNone} @click=${this.#replaceOne}>Replace</button>
        <button class="button" ?disabled=${isNone} @click=${this.#replaceAll}>Replace all</button>
      </span>
      <button class="link close" title="Close (Escape)" @click=${this.#close}>Close</button>`;
  }

  protected override firstUpdated(): void {
    this.addEventListener('keydown', (event) => event.key === 'Escape' && this.#close());
    this.focus();
  }

  override focus(): void {
    this.renderRoot.querySelector('input')?.select();
  }

  #found(): readonly FoundCell[] {
    return findCells(this.query.text === '' ? [] : this.cells(), this.query);
  }

  #count(found: number): string {
    if (this.query.text === '') return '';
    if (found === 0) return 'not found';
    const cells = found === 1 ? '1 cell' : `${found} cells`;
    return this.at >= 0 && this.at < found ? `${this.at + 1} of ${cells}` : cells;
  }

  readonly #type = ({ target }: Event) => this.#seek({ text: (target as HTMLInputElement).value });
  readonly #typeBy = ({ target }: Event) => {
    this.#by = (target as HTMLInputElement).value;
  };

  /** Seeks anew and shows the first match. */
  #seek(change: Partial<FindQuery>): void {
    this.query = { ...this.query, ...change };
    this.#show(this.#found(), 0);
  }

  #step(by: 1 | -1): void {
    const found = this.#found();
    const from = this.at < 0 && by < 0 ? 0 : this.at;
    this.#show(found, found.length === 0 ? 0 : (from + by + found.length) % found.length);
  }

  #show(found: readonly FoundCell[], at: number): void {
    const cell = found[at];
    this.at = cell ? at : -1;
    if (cell) this.dispatchEvent(new CustomEvent('show-cell', { detail: cell }));
  }

  readonly #findKey = (event: KeyboardEvent) => {
    if (event.key === 'Enter') this.#step(event.shiftKey ? -1 : 1);
  };
  readonly #replaceKey = (event: KeyboardEvent) => {
    if (event.key === 'Enter') this.#replaceOne();
  };

  /** Replaces in the match that is shown and shows the one after it. */
  readonly #replaceOne = () => {
    const found = this.#found();
    const at = Math.max(this.at, 0);
    const cell = found[at];
    if (!cell) return;
    this.#replace([cell]);
    const still = findCells(replaceInCells([cell], this.query, this.#by), this.query);
    const left = [...found.slice(0, at), ...still, ...found.slice(at + 1)];
    this.#show(left, (at + still.length) % Math.max(left.length, 1));
  };

  readonly #replaceAll = () => this.#replace(this.#found());

  #replace(found: readonly FoundCell[]): void {
    const cells = replaceInCells(found, this.query, this.#by);
    const detail = { cells, name: nameReplacement(this.query, this.#by, cells.length), say: null };
    this.dispatchEvent(new CustomEvent('edit-cells', { detail, bubbles: true, composed: true }));
  }

  readonly #close = () => this.dispatchEvent(new CustomEvent('close-find'));
}

customElements.define('find-replace', FindReplace);
