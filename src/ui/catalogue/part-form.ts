import { css, html, LitElement, type TemplateResult } from 'lit';
import type { CatalogueField } from '../../core/catalogue/catalogue-fields.ts';
import { FIELD_GROUPS, FIELD_NAMES } from '../../core/catalogue/field-words.ts';
import type { CellFault } from '../../core/catalogue/read-cells.ts';
import { FASTENER_KINDS, type Fastener } from '../../core/model/fastener.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import type { PartCells } from '../../core/model/part-edit.ts';
import { shared } from '../styles.ts';
import { typedField, unitFor } from './show-field.ts';

/** What was typed, field by field: only what differs from before. */
export type TypePartEvent = CustomEvent<PartCells>;

const CHOICES: Partial<Record<CatalogueField, readonly string[]>> = { kind: FASTENER_KINDS, flush: ['yes', 'no'] };
const HINTS: Partial<Record<CatalogueField, string>> = {
  stocked: 'yes, no or pieces',
  hardnessMin: 'HRC 32',
  sheetHardnessMax: 'HRB 75',
  material: 'carbon-steel-hardened',
  thread: 'M4 or 8-32',
};

/** Every field of a part to type into, or of a new one. Sends `type-part` with what was typed and `leave-form`; faults come back by property. */
export class PartForm extends LitElement {
  static override properties = {
    fastener: { attribute: false },
    units: { type: String },
    faults: { attribute: false },
  };
  /** Null: a new part. */
  declare fastener: Fastener | null;
  declare units: LengthUnit;
  declare faults: readonly CellFault[];

  static override styles = [
    shared,
    css`
      :host {
        display: block;
      }
      fieldset {
        margin: 16px 0 0;
        padding: 0;
        border: 0;
      }
      legend {
        width: 100%;
        padding: 0 0 4px;
        border-bottom: 1px solid var(--line);
        color: var(--soft);
        font-size: var(--small);
        font-weight: 600;
      }
      .row {
        display: grid;
        grid-template-columns: 148px minmax(0, 1fr) 34px;
        gap: 2px 8px;
        align-items: center;
        margin-top: 6px;
      }
      .field {
        min-width: 0;
        min-height: 28px;
        padding: 2px 8px;
      }
      .field[aria-invalid='true'] {
        border-color: var(--fails);
      }
      .fault {
        grid-column: 1 / -1;
        color: var(--fails);
      }
      .foot {
        position: sticky;
        bottom: -24px;
        display: flex;
        gap: 8px;
        justify-content: flex-end;
        margin: 16px -20px -24px;
        padding: 12px 20px;
        border-top: 1px solid var(--line);
        background: var(--sheet);
      }
    `,
  ];

  constructor() {
    super();
    this.fastener = null;
    this.units = 'mm';
    this.faults = [];
  }

  override render(): TemplateResult {
    return html`<form @submit=${this.#submit} novalidate>
      ${this.fastener ? '' : html`<fieldset><legend>New part</legend>${this.#row('partNumber')}</fieldset>`}
      ${FIELD_GROUPS.map(
        ({ title, fields }) =>
          html`<fieldset><legend>${title}</legend>${fields.map((field) => this.#row(field))}</fieldset>`,
      )}
      <p class="small soft foot-note">A number that does not come from the source named above needs its own: change source and date with it.</p>
      <div class="foot">
        <button class="button" type="button" @click=${() => this.#send('leave-form')}>Cancel</button>
        <button class="button main">${this.fastener ? 'Save edits' : 'Add part'}</button>
      </div>
    </form>`;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>('.field')?.focus();
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (changed.has('faults')) this.renderRoot.querySelector<HTMLElement>('[aria-invalid=true]')?.focus();
  }

  #row(field: CatalogueField): TemplateResult {
    const faults = this.faults.filter((fault) => fault.field === field);
    const text = this.fastener ? typedField(this.fastener, field, this.units) : '';
    return html`<div class="row">
      <label for=${field}>${FIELD_NAMES[field]}</label>
      ${CHOICES[field] ? this.#choice(field, text, CHOICES[field]) : this.#text(field, text, faults.length > 0)}
      <span class="small soft">${unitFor(field, this.units)}</span>
      ${faults.map((fault) => html`<p class="fault small" id="fault-${field}" role="alert">${fault.text}</p>`)}
    </div>`;
  }

  #text(field: CatalogueField, text: string, isWrong: boolean): TemplateResult {
    return html`<input class="field" id=${field} data-before=${text} value=${text} placeholder=${HINTS[field] ?? ''} autocomplete="off"
      aria-invalid=${isWrong ? 'true' : 'false'} aria-describedby=${isWrong ? `fault-${field}` : ''} />`;
  }

  #choice(field: CatalogueField, text: string, choices: readonly string[]): TemplateResult {
    return html`<select class="field" id=${field} data-before=${text}>
      ${['', ...choices].map((one) => html`<option value=${one} ?selected=${one === text}>${one || 'not said'}</option>`)}
    </select>`;
  }

  readonly #submit = (event: Event) => {
    event.preventDefault();
    const fields = [...this.renderRoot.querySelectorAll<HTMLInputElement | HTMLSelectElement>('.field')];
    const typed = fields.filter(({ value, dataset }) => value.trim() !== (dataset.before ?? ''));
    const cells = Object.fromEntries(typed.map(({ id, value }) => [id, value.trim()]));
    this.#send('type-part', cells);
  };

  #send(name: string, detail: PartCells | null = null): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

customElements.define('part-form', PartForm);
