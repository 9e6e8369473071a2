import { css, html, LitElement } from 'lit';
import { type ColumnChoice, columnName } from '../app/column-choices.ts';
import { UNIT_NAMES } from '../app/role-names.ts';
import type { Column, LengthUnit } from '../core/model/list.ts';
import { shared } from './styles.ts';

/** Asks once for a whole column whether its numbers are millimetres or inches. Sends `set-column`. */
export class UnitQuestion extends LitElement {
  static override properties = { column: { attribute: false } };
  declare column: Column | null;

  static override styles = [
    shared,
    css`
      p {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 12px;
        align-items: center;
        margin-top: 10px;
        padding: 4px 12px;
        border-left: 3px solid var(--blue);
        background: var(--blue-ground);
        font-size: var(--reading);
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
    return html`<p role="status">
      <span>${columnName(column)}: are these millimetres or inches?</span>
      ${(['mm', 'in'] as const).map((unit) => html`<button class="button" @click=${() => this.#answer(column, unit)}>${UNIT_NAMES[unit]}</button>`)}
    </p>`;
  }

  #answer({ index, role }: Column, unit: LengthUnit): void {
    const detail: ColumnChoice = { index, role, unit };
    this.dispatchEvent(new CustomEvent('set-column', { detail, bubbles: true, composed: true }));
  }
}

customElements.define('unit-question', UnitQuestion);
