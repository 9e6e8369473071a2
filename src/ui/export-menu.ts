import { css, html, LitElement } from 'lit';
import type { ExportHow } from '../worker/protocol.ts';
import { shared } from './styles.ts';

/** The user wants the judged list as a workbook. */
export type ExportEvent = CustomEvent<ExportHow>;

const CHOICES: readonly (readonly [ExportHow, string])[] = [
  ['in-place', 'In your workbook'],
  ['new', 'As a new workbook'],
];

/** The Export button: for a list that came in a workbook it asks where to write, else it exports at once. Sends `export-list`. */
export class ExportMenu extends LitElement {
  static override properties = {
    disabled: { type: Boolean },
    asks: { type: Boolean },
    isOpen: { state: true },
  };
  declare disabled: boolean;
  /** The list came in a workbook that can be written into. */
  declare asks: boolean;
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
        padding: 6px;
        border: 1px solid var(--line);
        border-radius: 6px;
        background: var(--sheet);
        box-shadow: 0 4px 16px rgb(0 0 0 / 18%);
        white-space: nowrap;
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
    `,
  ];

  constructor() {
    super();
    this.disabled = false;
    this.asks = false;
    this.isOpen = false;
  }

  override render() {
    const { asks, disabled, isOpen } = this;
    if (!asks)
      return html`<button class="button main" ?disabled=${disabled} @click=${() => this.#send('new')}>Export</button>`;
    return html`<div @keydown=${this.#key} @focusout=${this.#leave}>
      <button class="button main" ?disabled=${disabled} aria-haspopup="menu" aria-expanded=${isOpen ? 'true' : 'false'} @click=${this.#toggle}>Export</button>
      ${
        isOpen
          ? html`<div class="choices" role="menu" aria-label="Export">${CHOICES.map(
              ([how, name]) =>
                html`<button role="menuitem" tabindex="-1" @click=${() => this.#send(how)}>${name}</button>`,
            )}</div>`
          : ''
      }
    </div>`;
  }

  readonly #toggle = async () => {
    this.isOpen = !this.isOpen;
    await this.updateComplete;
    this.#items()[0]?.focus();
  };

  readonly #key = ({ key }: KeyboardEvent) => {
    const items = this.#items();
    const at = items.findIndex((item) => item.matches(':focus'));
    if (key === 'Escape' && this.isOpen) this.#close();
    if (key === 'ArrowDown') items[(at + 1) % items.length]?.focus();
    if (key === 'ArrowUp') items.at(at - 1)?.focus();
  };

  readonly #leave = ({ relatedTarget }: FocusEvent) => {
    if (!(relatedTarget instanceof Node && this.renderRoot.contains(relatedTarget))) this.isOpen = false;
  };

  #items(): readonly HTMLButtonElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLButtonElement>('.choices button')];
  }

  #close(): void {
    this.renderRoot.querySelector<HTMLElement>('.main')?.focus();
    this.isOpen = false;
  }

  #send(how: ExportHow): void {
    if (this.asks) this.#close();
    this.dispatchEvent(new CustomEvent('export-list', { detail: how, bubbles: true, composed: true }));
  }
}

customElements.define('export-menu', ExportMenu);
