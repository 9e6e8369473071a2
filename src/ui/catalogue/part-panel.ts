import { html, LitElement, type TemplateResult } from 'lit';
import type { Commands } from '../../app/commands.ts';
import { isEdited, type ListedPart, stockOf } from '../../app/find-parts.ts';
import type { CatalogueField } from '../../core/catalogue/catalogue-fields.ts';
import { FIELD_GROUPS, FIELD_NAMES } from '../../core/catalogue/field-words.ts';
import type { CellFault } from '../../core/catalogue/read-cells.ts';
import type { Catalogue, Fastener } from '../../core/model/fastener.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import { takenForGranted } from '../../core/rules/taken-for-granted.ts';
import { shared } from '../styles.ts';
import './part-form.ts';
import { sidePanelStyles } from '../side-panel-styles.ts';
import type { TypePartEvent } from './part-form.ts';
import { partPanelStyles } from './part-panel-styles.ts';
import { showField, showFileCell } from './show-field.ts';

/** One part in full: each number with its unit and where it came from, and a form to change it. Sends `close-part`, and `open-part` for one that was added. */
export class PartPanel extends LitElement {
  static override properties = {
    listed: { attribute: false },
    catalogues: { attribute: false },
    units: { type: String },
    edits: { state: true },
    faults: { state: true },
  };
  /** Null: a new part. */
  declare listed: ListedPart | null;
  declare catalogues: readonly Catalogue[];
  declare units: LengthUnit;
  declare edits: boolean;
  declare faults: readonly CellFault[];
  commands!: Commands;

  static override styles = [shared, sidePanelStyles, partPanelStyles];

  constructor() {
    super();
    this.listed = null;
    this.catalogues = [];
    this.units = 'mm';
    this.edits = false;
    this.faults = [];
  }

  override render(): TemplateResult {
    const { listed } = this;
    return html`
      <div class="head">
        <h2>${listed?.part.partNumber ?? 'New part'}</h2>
        <button class="close" aria-label="Close this panel" title="Close" @click=${() => this.#send('close-part')}>×</button>
      </div>
      ${listed ? this.#about(listed) : this.#whereTo()}
      ${
        this.edits || !listed
          ? html`<part-form .fastener=${listed?.part ?? null} units=${this.units} .faults=${this.faults} @type-part=${this.#take} @leave-form=${this.#leave}></part-form>`
          : this.#facts(listed)
      }
    `;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    const former = changed.get('listed') as ListedPart | null | undefined;
    if (!changed.has('listed') || former?.part.partNumber === this.listed?.part.partNumber) return;
    this.edits = false;
    this.faults = [];
  }

  #about({ part, position, takenFrom }: ListedPart): TemplateResult {
    const { origin, source, sourceDate } = part;
    const stated = [source, sourceDate].filter(Boolean).join(', ');
    const from = origin.row === 0 ? 'Added here, to' : `Row ${origin.row} of`;
    return html`
      ${this.catalogues[position]?.demo ? html`<p class="demo">Demo: invented, not for production.</p>` : ''}
      ${takenFrom ? html`<p class="note">Not used: “${takenFrom}” ranks higher and has this part too.</p>` : ''}
      <p>${from} “${origin.catalogue}”. ${stated ? html`Source: ${stated}.` : 'It names no source.'} ${isEdited(part) && origin.row > 0 ? 'What was edited here is marked.' : ''}</p>
    `;
  }

  #whereTo(): TemplateResult {
    return html`<label class="where">Goes into
      <select class="field">
        ${this.catalogues.map(({ name }, position) => html`<option value=${position}>${name}</option>`)}
      </select>
    </label>`;
  }

  #facts({ part, position }: ListedPart): TemplateResult {
    return html`
      <div class="acts">
        <button class="button main" @click=${this.#edit}>Edit</button>
        <button class="button" @click=${() => this.#setStock(part, position)}>${stockOf(part) === 'stocked' ? 'Mark as not stocked' : 'Mark as stocked'}</button>
        ${isEdited(part) && part.origin.row > 0 ? html`<button class="button" @click=${() => this.commands.catalogues.revertPart(position, part.partNumber)}>As in the file</button>` : ''}
        <button class="button" @click=${() => this.#remove(part, position)}>Take out</button>
      </div>
      ${FIELD_GROUPS.map(
        ({ title, fields }) => html`<section>
          <h3>${title}</h3>
          <table><tbody>${fields.map((field) => this.#fact(part, field))}</tbody></table>
        </section>`,
      )}
    `;
  }

  #fact(part: Fastener, field: CatalogueField): TemplateResult {
    const shown = showField(part, field, this.units);
    const assumed = shown === '' ? takenForGranted(part, field, this.units) : null;
    const was = part.origin.edited?.[field];
    return html`<tr>
      <th scope="row">${FIELD_NAMES[field]}</th>
      <td>
        ${shown || html`<span class="soft">not given</span>`}
        ${assumed ? html`<span class="from small">${assumed}</span>` : ''}
        ${was === undefined ? '' : html`<span class="from edited small">edited here; the file says ${showFileCell(was, field, this.units)}</span>`}
      </td>
    </tr>`;
  }

  readonly #edit = () => {
    this.faults = [];
    this.edits = true;
  };

  readonly #leave = () => {
    this.edits = false;
    this.faults = [];
    if (!this.listed) this.#send('close-part');
  };

  readonly #take = async ({ detail }: TypePartEvent) => {
    const { listed } = this;
    const position = listed?.position ?? Number(this.renderRoot.querySelector('select')?.value ?? 0);
    const { catalogues } = this.commands;
    this.faults = listed
      ? await catalogues.editPart(position, listed.part, detail)
      : await catalogues.addPart(position, detail);
    if (this.faults.length > 0) return;
    this.edits = false;
    if (!listed) this.#send('open-part', { partNumber: detail.partNumber ?? '', position });
  };

  async #setStock(part: Fastener, position: number): Promise<void> {
    await this.commands.catalogues.editPart(position, part, { stocked: stockOf(part) === 'stocked' ? 'no' : 'yes' });
  }

  async #remove(part: Fastener, position: number): Promise<void> {
    await this.commands.catalogues.removePart(position, part);
    this.#send('close-part');
  }

  #send(name: string, detail: unknown = null): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}

customElements.define('part-panel', PartPanel);
