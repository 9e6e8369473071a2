import { html, type TemplateResult } from 'lit';
import {
  ANY_PART,
  choicesOf,
  findParts,
  isEdited,
  type ListedPart,
  listParts,
  type PartQuery,
  stockOf,
} from '../app/find-parts.ts';
import { partKey } from '../core/catalogue/part-key.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import './catalogue/catalogue-ranks.ts';
import { catalogueViewStyles } from './catalogue/catalogue-view-styles.ts';
import './catalogue/part-panel.ts';
import { showField } from './catalogue/show-field.ts';
import { undoButtons } from './report-parts.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';

/** As many parts are put on the page at a time. */
const STEP = 200;

/** The part that is shown in full: one of a catalogue, or a new one. */
type Opened = { readonly partNumber: string; readonly position: number } | 'new' | null;

/** Every part of every loaded catalogue: search, one part in full, edits, import problems, order of rank. */
export class CatalogueView extends StoreElement {
  static override properties = { query: { state: true }, most: { state: true }, opened: { state: true } };
  declare query: PartQuery;
  declare most: number;
  declare opened: Opened;
  #catalogues: readonly Catalogue[] = [];
  #parts: readonly ListedPart[] = [];

  static override styles = [shared, catalogueViewStyles];

  constructor() {
    super();
    this.query = ANY_PART;
    this.most = STEP;
    this.opened = null;
  }

  override render(): TemplateResult {
    const { catalogues, shop, work } = this.store.state;
    return html`
      <div class="scroll" @open-part=${this.#open}>
        <div class="page">
          <div class="head">
            <div>
              <h2>Catalogue</h2>
              <p class="soft">What each part needs comes from here and from nowhere else. A part in two catalogues is taken from the upper one.
                ${this.commands.catalogues.isDemoStandingIn ? 'The demo catalogue is used until you load one of your own (CSV or XLSX, one fastener a row); drop files anywhere on this page.' : ''}</p>
            </div>
            <div class="buttons">
              ${undoButtons(this.store.state, this.commands)}
              <button class="button" ?disabled=${catalogues.length === 0} @click=${this.#add}>Add a part…</button>
              <button class="button main" @click=${this.#load}>Load catalogue…</button>
            </div>
          </div>
          ${
            catalogues.length === 0
              ? html`<p class="none soft" role="status">${work ? 'Reading the catalogue…' : 'No catalogue could be read: load one of your own.'}</p>`
              : html`<catalogue-ranks .catalogues=${catalogues} .commands=${this.commands}></catalogue-ranks>
                ${this.#filters()} ${this.#table(findParts(this.#parts, this.query))}`
          }
        </div>
      </div>
      ${
        this.opened
          ? html`<aside class="panel" aria-label="Part">
        <part-panel .listed=${this.#openedPart()} .catalogues=${catalogues} .commands=${this.commands} units=${shop.units}
          @close-part=${this.#close} @open-part=${this.#open}></part-panel>
      </aside>`
          : ''
      }
    `;
  }

  /** A part that is gone (taken out, its catalogue removed) closes its panel. */
  protected override willUpdate(): void {
    const { catalogues } = this.store.state;
    if (catalogues === this.#catalogues) return;
    this.#catalogues = catalogues;
    this.#parts = listParts(catalogues);
    if (this.opened !== 'new' && !this.#openedPart()) this.opened = null;
  }

  #openedPart(): ListedPart | null {
    const { opened } = this;
    if (opened === null || opened === 'new') return null;
    const isIt = ({ part, position }: ListedPart) =>
      position === opened.position && partKey(part.partNumber) === partKey(opened.partNumber);
    return this.#parts.find(isIt) ?? null;
  }

  #filters(): TemplateResult {
    const { kinds, threads } = choicesOf(this.#parts);
    const { query } = this;
    return html`<div class="filters" role="search" aria-label="Find a part">
      <label>Find <input class="field" type="search" placeholder="Number, kind, thread, material, supplier" aria-label="Find a part" .value=${query.text} @input=${this.#find} /></label>
      ${this.#choice('Kind', 'kind', kinds)} ${this.#choice('Thread', 'thread', threads)}
      ${this.#choice('Stock', 'stock', ['stocked', 'not stocked', 'not said'])}
      <label class="check"><input type="checkbox" .checked=${query.isEdited} @change=${this.#onlyEdited} /> Edited here</label>
    </div>`;
  }

  #choice(name: string, key: 'kind' | 'thread' | 'stock', choices: readonly string[]): TemplateResult {
    const choose = ({ target }: Event) => this.#ask({ [key]: (target as HTMLSelectElement).value });
    return html`<label>${name}
      <select class="field" @change=${choose}>
        ${['', ...choices].map((one) => html`<option value=${one} .selected=${one === this.query[key]}>${one || 'any'}</option>`)}
      </select>
    </label>`;
  }

  #table(found: readonly ListedPart[]): TemplateResult {
    const all = this.#parts.length;
    const { units } = this.store.state.shop;
    if (found.length === 0)
      return html`<p class="none soft" role="status">${all === 0 ? 'No parts in these catalogues.' : html`No part matches this search. <button class="link" @click=${() => this.#ask(ANY_PART)}>Show all ${all} parts</button>`}</p>`;
    const shown = found.slice(0, this.most);
    return html`
      <p class="soft small" role="status">${found.length === all ? '' : `${found.length} of `}${all === 1 ? '1 part' : `${all} parts`}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">Part</th><th scope="col">Kind</th><th scope="col">Thread</th><th scope="col">Material</th>
            <th scope="col" class="number">Minimum sheet (${units})</th><th scope="col" class="number">Hole (${units})</th>
            <th scope="col" class="number">Edge (${units})</th><th scope="col">Stock</th>
            ${this.#catalogues.length > 1 ? html`<th scope="col">Catalogue</th>` : ''}
          </tr>
        </thead>
        <tbody>${shown.map((one) => this.#row(one))}</tbody>
      </table>
      ${
        found.length > shown.length
          ? html`<p class="more"><button class="button" @click=${() => (this.most += STEP)}>Show more</button><span class="soft">${shown.length} of ${found.length} shown</span></p>`
          : ''
      }
    `;
  }

  #row({ part, position, takenFrom }: ListedPart): TemplateResult {
    const { units } = this.store.state.shop;
    const { opened } = this;
    const isOpen =
      opened !== null && opened !== 'new' && opened.position === position && opened.partNumber === part.partNumber;
    const size = (field: 'sheetMinMm' | 'holeMm' | 'edgeMm') =>
      showField(part, field, units).replace(/ (?:mm|in)$/, '');
    const stock = part.supersededBy
      ? `superseded by ${part.supersededBy}`
      : part.stocked
        ? (part.stocked.quantity ?? stockOf(part))
        : '';
    return html`<tr class="${isOpen ? 'open' : ''} ${takenFrom ? 'shadowed' : ''}">
      <td>
        <button class="link" aria-expanded=${isOpen} @click=${() => (this.opened = { partNumber: part.partNumber, position })}>${part.partNumber}</button>
        ${isEdited(part) ? html`<span class="edited small">${part.origin.row === 0 ? 'added here' : 'edited here'}</span>` : ''}
      </td>
      <td>${part.kind}</td><td>${part.thread}</td><td>${part.material.text}</td>
      <td class="number">${size('sheetMinMm')}</td><td class="number">${size('holeMm')}</td><td class="number">${size('edgeMm')}</td><td>${stock}</td>
      ${this.#catalogues.length > 1 ? html`<td class="small">${this.#catalogues[position]?.name}${takenFrom ? ', not used' : ''}</td>` : ''}
    </tr>`;
  }

  #ask(change: Partial<PartQuery>): void {
    this.query = { ...this.query, ...change };
    this.most = STEP;
  }

  readonly #find = ({ target }: Event) => this.#ask({ text: (target as HTMLInputElement).value });
  readonly #onlyEdited = ({ target }: Event) => this.#ask({ isEdited: (target as HTMLInputElement).checked });
  readonly #load = () => this.dispatchEvent(new CustomEvent('load-catalogue', { bubbles: true, composed: true }));
  readonly #add = () => {
    this.opened = 'new';
  };
  readonly #open = ({ detail }: CustomEvent<{ partNumber: string; position: number }>) => {
    this.opened = detail;
  };
  /** The focus goes back to the part in the table, so that nobody starts again at the top. */
  readonly #close = async () => {
    const button = this.renderRoot.querySelector<HTMLElement>('[aria-expanded=true]');
    this.opened = null;
    await this.updateComplete;
    button?.focus();
  };
}

customElements.define('catalogue-view', CatalogueView);
