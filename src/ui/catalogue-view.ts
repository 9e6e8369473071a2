import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Catalogue, Fastener } from '../core/model/fastener.ts';
import type { LengthUnit } from '../core/model/list.ts';
import { showValue } from '../core/say/show-value.ts';
import { shared } from './styles.ts';

const MOST_SHOWN = 200;

/** The loaded catalogues in their order of rank: what is in them, what could not be used, and how to load another. */
export class CatalogueView extends LitElement {
  static override properties = { catalogues: { attribute: false }, units: { type: String }, wanted: { state: true } };
  declare catalogues: readonly Catalogue[];
  declare units: LengthUnit;
  declare wanted: string;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        height: 100%;
        overflow: auto;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        gap: 12px;
        margin-bottom: 12px;
      }
      section {
        margin-top: 24px;
      }
      h3 {
        display: flex;
        justify-content: space-between;
        gap: 12px;
        font-size: var(--reading);
      }
      .number {
        text-align: right;
      }
      .problems {
        margin: 8px 0 0;
        color: var(--fails);
      }
    `,
  ];

  constructor() {
    super();
    this.catalogues = [];
    this.units = 'mm';
    this.wanted = '';
  }

  override render() {
    return html`<div class="page">
      <div class="head">
        <div>
          <h2>Catalogue</h2>
          <p class="soft">What each part needs comes from here and from nowhere else. A part in two catalogues is taken from the upper one.</p>
        </div>
        <div>
          <input class="field" type="search" placeholder="Find a part" aria-label="Find a part" @input=${this.#find} />
          <button class="button main" @click=${() => this.#ask('load-catalogue')}>Load catalogue…</button>
        </div>
      </div>
      ${this.catalogues.length === 0 ? html`<p class="soft">The demo catalogue is used until you load one of your own (CSV or XLSX, one fastener a row).</p>` : ''}
      ${this.catalogues.map((catalogue, position) => this.#catalogue(catalogue, position))}
    </div>`;
  }

  #catalogue(catalogue: Catalogue, position: number): TemplateResult {
    const { name, demo, fasteners, problems } = catalogue;
    const wanted = this.wanted.toLowerCase();
    const found = fasteners.filter((part) =>
      `${part.partNumber} ${part.kind} ${part.thread}`.toLowerCase().includes(wanted),
    );
    return html`<section>
      <h3>
        <span>${name}${demo ? ' · demo: invented, not for production' : ''} · ${fasteners.length} parts</span>
        ${demo ? '' : html`<button class="link small" @click=${() => this.#ask('remove-catalogue', position)}>Remove</button>`}
      </h3>
      ${problems.length > 0 ? html`<ul class="problems">${problems.map(({ row, column, text }) => html`<li>Row ${row}${column ? `, ${column}` : ''}: ${text}</li>`)}</ul>` : ''}
      <table>
        <thead>
          <tr>
            <th scope="col">Part</th><th scope="col">Kind</th><th scope="col">Thread</th><th scope="col">Material</th>
            <th scope="col" class="number">Min. sheet (${this.units})</th><th scope="col" class="number">Hole (${this.units})</th>
            <th scope="col" class="number">Edge (${this.units})</th><th scope="col">Stock</th>
          </tr>
        </thead>
        <tbody>${found.slice(0, MOST_SHOWN).map((part) => this.#part(part))}</tbody>
      </table>
      ${found.length > MOST_SHOWN ? html`<p class="soft">${found.length - MOST_SHOWN} more: narrow the search.</p>` : ''}
    </section>`;
  }

  #part({
    partNumber,
    kind,
    thread,
    material,
    sheetMinMm,
    holeMm,
    edgeMm,
    stocked,
    supersededBy,
  }: Fastener): TemplateResult {
    const stock = supersededBy
      ? `superseded by ${supersededBy}`
      : stocked === null
        ? ''
        : stocked.yes
          ? (stocked.quantity ?? 'yes')
          : 'no';
    return html`<tr>
      <td>${partNumber}</td><td>${kind}</td><td>${thread}</td><td>${material.text}</td>
      <td class="number">${this.#length(sheetMinMm)}</td><td class="number">${this.#length(holeMm)}</td>
      <td class="number">${this.#length(edgeMm)}</td><td>${stock}</td>
    </tr>`;
  }

  #length(mm: number | null): string {
    return mm === null ? '–' : showValue('lengthMm', mm, this.units);
  }

  readonly #find = ({ target }: Event) => {
    this.wanted = (target as HTMLInputElement).value;
  };

  #ask(what: string, detail?: number): void {
    this.dispatchEvent(new CustomEvent(what, { detail, bubbles: true, composed: true }));
  }
}

customElements.define('catalogue-view', CatalogueView);
