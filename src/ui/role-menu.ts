import { css, html, LitElement, type TemplateResult } from 'lit';
import type { ColumnChoice } from '../app/column-choices.ts';
import { ROLE_NAMES, UNIT_NAMES } from '../app/role-names.ts';
import { isSizeRole } from '../core/intake/size-spans.ts';
import type { Column, LengthUnit, Role } from '../core/model/list.ts';
import { helpForColumn } from './grid/column-help.ts';
import { shared } from './styles.ts';

/** The user says what a column means. */
export type SetColumnEvent = CustomEvent<ColumnChoice>;

const MEANINGS: readonly (readonly [string, readonly Role[]])[] = [
  ['Fastener', ['partNumber', 'description', 'quantity', 'thread', 'length', 'fastenerMaterial']],
  ['Sheet', ['panel', 'material', 'thickness', 'finish']],
  ['Hole', ['hole', 'edge', 'spacing', 'bend', 'load']],
  ['List', ['index', 'level', 'parent', 'note', 'supplier', 'price', 'unit', 'stock', 'other']],
];
const UNITS: readonly LengthUnit[] = ['mm', 'in'];

/**
 * A menu of what a column may mean and, where it holds lengths, of their unit. Sends `set-column` with a choice and
 * `close-menu` when it is done with; whoever opened it places it and gives the focus back.
 */
export class RoleMenu extends LitElement {
  static override properties = { column: { attribute: false } };
  declare column: Column | null;

  static override styles = [
    shared,
    css`
      :host {
        position: fixed;
        z-index: 100000;
        width: 372px;
        padding: 8px;
        border: 1px solid var(--line);
        border-radius: 6px;
        background: var(--sheet);
        box-shadow: 0 4px 16px rgb(0 0 0 / 18%);
        color: var(--ink);
        font-size: 13px;
      }
      .meanings {
        columns: 2;
        column-gap: 8px;
      }
      .group {
        break-inside: avoid;
      }
      .units {
        margin-top: 6px;
        padding-top: 6px;
        border-top: 1px solid var(--line);
      }
      .units button {
        width: calc(50% - 4px);
      }
      .about {
        margin-bottom: 4px;
        padding: 2px 8px 6px;
        border-bottom: 1px solid var(--line);
        color: var(--soft);
      }
      .title {
        padding: 4px 8px 2px;
        color: var(--soft);
        font-size: 12px;
      }
      button {
        display: inline-block;
        width: 100%;
        padding: 3px 8px;
        border: 0;
        border-radius: 3px;
        background: none;
        text-align: left;
      }
      button:hover,
      button:focus {
        background: var(--blue-ground);
        color: var(--blue);
      }
      button::before {
        content: '';
        display: inline-block;
        width: 16px;
      }
      button[aria-checked='true'] {
        font-weight: 600;
      }
      button[aria-checked='true']::before {
        content: '✓';
      }
    `,
  ];

  constructor() {
    super();
    this.column = null;
  }

  override render() {
    const { column } = this;
    if (!column) return html``;
    return html`<div role="menu" tabindex="-1" aria-label="What this column means" aria-describedby="about" @keydown=${this.#key} @focusout=${this.#leave}>
      <p class="about" id="about">${helpForColumn(column)}</p>
      <div class="meanings">${MEANINGS.map(([title, roles]) => this.#group(title, roles, column))}</div>
      ${isSizeRole(column.role) ? this.#units(column) : ''}
    </div>`;
  }

  /** A menu that would go beyond the foot of the window is hung higher. */
  protected override firstUpdated(): void {
    const beyond = this.getBoundingClientRect().bottom + 8 - innerHeight;
    if (beyond > 0) this.style.top = `${Math.max(8, this.getBoundingClientRect().top - beyond)}px`;
    const items = this.#items();
    (items.find((item) => item.ariaChecked === 'true') ?? items[0])?.focus();
  }

  #group(title: string, roles: readonly Role[], { index, role }: Column): TemplateResult {
    return html`<div class="group" role="group" aria-label=${title}>
      <div class="title" aria-hidden="true">${title}</div>
      ${roles.map((one) => this.#item(ROLE_NAMES[one], one === role, { index, role: one }))}
    </div>`;
  }

  #units({ index, role, unit }: Column): TemplateResult {
    return html`<div class="units" role="group" aria-label="Unit of bare numbers">
      <div class="title" aria-hidden="true">Numbers without a unit are</div>
      ${UNITS.map((one) => this.#item(UNIT_NAMES[one], one === unit, { index, role, unit: one }))}
    </div>`;
  }

  #item(name: string, isChosen: boolean, choice: ColumnChoice): TemplateResult {
    const choose = () => {
      this.dispatchEvent(new CustomEvent('set-column', { detail: choice, bubbles: true, composed: true }));
      this.#close();
    };
    return html`<button role="menuitemradio" tabindex="-1" aria-checked=${isChosen ? 'true' : 'false'} @click=${choose}>${name}</button>`;
  }

  readonly #key = (event: KeyboardEvent) => {
    if (event.key === 'Escape' || event.key === 'Tab') this.#close();
    else if (!this.#move(event.key)) return;
    event.preventDefault();
    event.stopPropagation();
  };

  /** Up and down go around, Home and End to the ends, a letter to the next item that begins with it. */
  #move(key: string): boolean {
    const items = this.#items();
    const at = items.findIndex((item) => item.matches(':focus'));
    const after = [...items.slice(at + 1), ...items.slice(0, at + 1)];
    const next =
      {
        ArrowDown: after[0],
        ArrowUp: after.at(-2),
        Home: items[0],
        End: items.at(-1),
      }[key] ??
      (/^[a-z]$/i.test(key) ? after.find(({ innerText }) => innerText.startsWith(key.toLowerCase())) : undefined);
    next?.focus();
    return next !== undefined;
  }

  readonly #leave = ({ relatedTarget }: FocusEvent) => {
    if (!(relatedTarget instanceof Node && this.renderRoot.contains(relatedTarget))) this.#close();
  };

  #items(): readonly HTMLButtonElement[] {
    return [...this.renderRoot.querySelectorAll('button')];
  }

  #close(): void {
    this.dispatchEvent(new CustomEvent('close-menu'));
  }
}

customElements.define('role-menu', RoleMenu);
