import { css, html, LitElement } from 'lit';
import type { ShelfEntry } from '../app/shelf.ts';
import { SAFETY_WORDS } from '../core/say/safety.ts';
import './saved-lists.ts';
import { shared } from './styles.ts';

/** Before a list is open: what the product does, where to drop a file, the demo one click away, lists kept from earlier, and the safety words. */
export class FirstScreen extends LitElement {
  static override properties = {
    over: { type: Boolean, reflect: true },
    kept: { attribute: false },
    recalled: { attribute: false },
  };
  /** A file is being dragged over the page. */
  declare over: boolean;
  declare kept: readonly ShelfEntry[];
  /** Names of the catalogues of the last visit, by which a list will be judged. */
  declare recalled: readonly string[];

  static override styles = [
    shared,
    css`
      :host {
        display: grid;
        grid-template-rows: 1fr auto;
        grid-auto-rows: auto;
        height: 100%;
        overflow: auto;
        padding: 24px;
        gap: 16px;
      }
      .drop {
        display: grid;
        place-content: center;
        justify-items: center;
        gap: 16px;
        padding: 24px;
        border: 1.5px dashed var(--line);
        border-radius: 6px;
        background: var(--sheet);
        text-align: center;
      }
      :host([over]) .drop {
        border-color: var(--blue);
        background: var(--blue-ground);
      }
      h2 {
        max-width: 24em;
        font-size: 28px;
        font-weight: 600;
        line-height: 1.25;
        text-wrap: balance;
      }
      p {
        max-width: 62ch;
        font-size: var(--reading);
      }
      .actions {
        display: flex;
        gap: 12px;
      }
      .actions .button {
        min-height: 40px;
        padding: 6px 20px;
        font-size: var(--reading);
      }
      footer {
        max-width: 130ch;
        margin: 0 auto;
        color: var(--soft);
        font-size: var(--small);
      }
    `,
  ];

  constructor() {
    super();
    this.over = false;
    this.kept = [];
    this.recalled = [];
  }

  override render() {
    return html`
      <section class="drop" aria-label="Open a list">
        ${drawing}
        <h2>Will every press-in fastener on this list hold in its sheet metal?</h2>
        <p>
          Drop a hardware list here. Every row that puts a nut, stud, standoff, pin or captive screw into sheet metal is judged:
          hardness, thickness, hole and edge, with the numbers, the source and the cure.
        </p>
        <div class="actions">
          <button class="button main" @click=${() => this.#ask('open-list')}>Open list…</button>
          <button class="button" @click=${() => this.#ask('open-demo')}>Try the demo list</button>
        </div>
        <p class="soft">Reads CSV and XLSX, in mm, inches or gauge. The list stays on this computer.
          <button class="link" @click=${() => this.#ask('open-help')}>What is checked, and what is not</button></p>
        ${this.recalled.length > 0 ? html`<p>It is judged by the catalogues of your last visit: <b>${this.recalled.join(', ')}</b>. Change them under Catalogue.</p>` : ''}
      </section>
      ${this.kept.length > 0 ? html`<saved-lists .entries=${this.kept}></saved-lists>` : ''}
      <footer>${SAFETY_WORDS.join(' ')}</footer>
    `;
  }

  #ask(what: 'open-list' | 'open-demo' | 'open-help'): void {
    this.dispatchEvent(new CustomEvent(what, { bubbles: true, composed: true }));
  }
}

/** A press-in nut in section: the sheet flows into the groove of the shank. */
const drawing = html`
  <svg width="264" height="92" viewBox="0 0 264 92" fill="none" stroke="var(--ink)" stroke-width="1.4" aria-hidden="true">
    <path d="M6 50H100v8l6 5-6 5v6H6zM258 50H164v8l-6 5 6 5v6h94z" fill="var(--blue-ground)" />
    <path d="M78 10h36v64h-14v-6l6-5-6-5v-8H78zM186 10h-36v64h14v-6l-6-5 6-5v-8h22z" fill="var(--paper)" />
    <path d="M114 10h36M114 74h36" />
    <path d="M118 10v64M146 10v64" stroke-dasharray="3 2.5" stroke-width="1" />
    <path d="M132 2v86" stroke="var(--blue)" stroke-dasharray="10 3 2 3" stroke-width="1" />
  </svg>
`;

customElements.define('first-screen', FirstScreen);
