import { css, html, LitElement, type TemplateResult } from 'lit';
import type { ExportChoice } from '../app/reports.ts';
import type { ExportHow } from '../worker/protocol.ts';
import { shared } from './styles.ts';

/** The user wants the judged list as a file. */
export type ExportEvent = CustomEvent<ExportChoice>;

/** The Export button and its menu: where to write the list, and how a CSV file is written. Sends `export-list` or `print-findings`. */
export class ExportMenu extends LitElement {
  static override properties = {
    disabled: { type: Boolean },
    inPlace: { type: Boolean },
    escapes: { state: true },
    isOpen: { state: true },
  };
  declare disabled: boolean;
  /** The list came in a workbook that can be written into. */
  declare inPlace: boolean;
  declare escapes: boolean;
  declare isOpen: boolean;

  static override styles = [
    shared,
    css`
      :host {
        position: relative;
      }
      .choices {
        position: absolute;
        z-index: 100000;
        top: 38px;
        right: 0;
        display: grid;
        width: 300px;
        padding: 6px;
        border: 1px solid var(--line);
        border-radius: 6px;
        background: var(--sheet);
        box-shadow: 0 4px 16px rgb(0 0 0 / 18%);
      }
      .choices button {
        padding: 6px 12px;
        border: 0;
        border-radius: 3px;
        background: none;
        text-align: left;
      }
      .choices button:hover,
      .choices button:focus {
        background: var(--blue-ground);
        color: var(--blue);
      }
      .choices .tick {
        display: grid;
        grid-template-columns: 14px 1fr;
        gap: 2px 8px;
        align-items: center;
        padding-left: 28px;
      }
      .tick svg {
        border: 1px solid var(--soft);
        border-radius: 3px;
      }
      .tick[aria-checked='false'] path {
        display: none;
      }
      .tick .small {
        grid-column: 2;
      }
    `,
  ];

  constructor() {
    super();
    this.disabled = false;
    this.inPlace = false;
    this.escapes = true;
    this.isOpen = false;
  }

  override render(): TemplateResult {
    const { disabled, isOpen } = this;
    return html`<div @keydown=${this.#key} @focusout=${this.#leave}>
      <button class="button main" ?disabled=${disabled} aria-haspopup="menu" aria-expanded=${isOpen ? 'true' : 'false'} @click=${this.#toggle}>Export</button>
      ${isOpen ? html`<div class="choices" role="menu" aria-label="Export">${this.#choices()}</div>` : ''}
    </div>`;
  }

  #choices(): TemplateResult {
    return html`
      ${this.inPlace ? this.#choice('in-place', 'In your workbook') : ''}
      ${this.#choice('new', 'As a new workbook')}
      ${this.#choice('csv', 'As CSV')}
      <button class="tick" role="menuitemcheckbox" tabindex="-1" aria-checked=${this.escapes ? 'true' : 'false'}
        aria-labelledby="safe" aria-describedby="why" @click=${this.#tick}>
        <svg width="14" height="14" viewBox="0 0 12 12" aria-hidden="true"><path d="M2.5 6.5 5 9l4.5-6" fill="none" stroke="currentColor" stroke-width="2" /></svg>
        <span id="safe">Safe for spreadsheets</span>
        <span class="small soft" id="why">Cells that begin like a formula get an apostrophe in front. Untick only for programs that never calculate.</span>
      </button>
      <button role="menuitem" tabindex="-1" @click=${this.#print}>Print findings…</button>`;
  }

  #choice(how: ExportHow, name: string): TemplateResult {
    return html`<button role="menuitem" tabindex="-1" @click=${() => this.#send(how)}>${name}</button>`;
  }

  readonly #toggle = () => {
    if (this.isOpen) this.isOpen = false;
    else this.#open();
  };

  readonly #print = () => {
    this.#close();
    this.dispatchEvent(new CustomEvent('print-findings', { bubbles: true, composed: true }));
  };

  readonly #tick = () => {
    this.escapes = !this.escapes;
  };

  readonly #key = (event: KeyboardEvent) => {
    const { key } = event;
    // Tab goes on from the button.
    if ((key === 'Escape' || key === 'Tab') && this.isOpen) this.#close();
    if (!this.isOpen && !key.startsWith('Arrow')) return;
    const items = this.#items();
    const next = NEXT[key]?.(
      items.findIndex((item) => item.matches(':focus')),
      items.length,
    );
    if (next === undefined) return;
    event.preventDefault();
    if (this.isOpen) items.at(next)?.focus();
    else this.#open(next);
  };

  readonly #leave = ({ relatedTarget }: FocusEvent) => {
    if (!(relatedTarget instanceof Node && this.renderRoot.contains(relatedTarget))) this.isOpen = false;
  };

  #items(): readonly HTMLButtonElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLButtonElement>('.choices button')];
  }

  /** Opens the menu on its first item, or on the last. */
  async #open(at = 0): Promise<void> {
    this.isOpen = true;
    await this.updateComplete;
    this.#items().at(at)?.focus();
  }

  #close(): void {
    this.renderRoot.querySelector<HTMLElement>('.main')?.focus();
    this.isOpen = false;
  }

  #send(how: ExportHow): void {
    this.#close();
    const detail: ExportChoice = { how, escapes: this.escapes };
    this.dispatchEvent(new CustomEvent('export-list', { detail, bubbles: true, composed: true }));
  }
}

/** The item that a key leads to from another; -1 is the last, and stands for none where there is none yet. */
const NEXT: Readonly<Record<string, (at: number, items: number) => number>> = {
  ArrowDown: (at, items) => (at + 1 < items ? at + 1 : 0),
  ArrowUp: (at) => Math.max(at, 0) - 1,
  Home: () => 0,
  End: () => -1,
};

customElements.define('export-menu', ExportMenu);
