import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Commands } from '../../app/commands.ts';
import { rankParts } from '../../core/catalogue/find-part.ts';
import { conflictNotices } from '../../core/engine/conflict-notices.ts';
import type { Catalogue } from '../../core/model/fastener.ts';
import { shared } from '../styles.ts';

/** More problems of a file than this are shown on request. */
const MOST_OPEN = 10;

/** The loaded catalogues in their order of rank: what is in them, what of their files could not be used, where they contradict each other. Sends `open-part`. */
export class CatalogueRanks extends LitElement {
  static override properties = { catalogues: { attribute: false } };
  declare catalogues: readonly Catalogue[];
  commands!: Commands;
  #conflicts: readonly string[] = [];

  static override styles = [
    shared,
    css`
      :host {
        display: block;
      }
      ol {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li.catalogue {
        padding: 8px 0;
        border-bottom: 1px solid var(--line);
      }
      .line {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 14px;
        align-items: baseline;
      }
      .name {
        flex: 1 1 280px;
        font-size: var(--reading);
        overflow-wrap: anywhere;
      }
      .demo {
        color: var(--marginal);
      }
      details {
        margin-top: 4px;
      }
      summary {
        cursor: pointer;
      }
      .problems {
        max-height: 200px;
        margin: 4px 0 0;
        padding-left: 18px;
        overflow: auto;
      }
      .wrong {
        color: var(--fails);
      }
    `,
  ];

  constructor() {
    super();
    this.catalogues = [];
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('catalogues'))
      this.#conflicts = conflictNotices(rankParts(this.catalogues).conflicts).map(({ text }) => text);
  }

  override render(): TemplateResult {
    return html`<ol aria-label="Catalogues by rank">
        ${this.catalogues.map((catalogue, position) => this.#catalogue(catalogue, position))}
      </ol>
      ${
        this.#conflicts.length > 0
          ? html`<details>
              <summary>Parts that the catalogues describe differently</summary>
              <ul class="problems">${this.#conflicts.map((text) => html`<li>${text}</li>`)}</ul>
            </details>`
          : ''
      }`;
  }

  #catalogue(catalogue: Catalogue, position: number): TemplateResult {
    const { name, demo, fasteners } = catalogue;
    const { catalogues } = this.commands;
    const last = this.catalogues.length - 1;
    return html`<li class="catalogue">
      <div class="line">
        <span class="name">${name} · ${fasteners.length === 1 ? '1 part' : `${fasteners.length} parts`}${demo ? html` · <span class="demo">demo: invented, not for production</span>` : ''}</span>
        ${
          last > 0
            ? html`<button class="link" ?disabled=${position === 0} aria-label="Higher: ${name}" @click=${() => catalogues.move(position, -1)}>Higher</button>
              <button class="link" ?disabled=${position === last} aria-label="Lower: ${name}" @click=${() => catalogues.move(position, 1)}>Lower</button>`
            : ''
        }
        <button class="link" aria-label="Save as CSV: ${name}" @click=${() => catalogues.save(position)}>Save as CSV</button>
        ${catalogues.isDemoStandingIn ? '' : html`<button class="link" aria-label="Remove: ${name}" @click=${() => this.#remove(catalogue, position)}>Remove</button>`}
      </div>
      ${this.#problems(catalogue, position)} ${this.#takenOut(catalogue, position)}
    </li>`;
  }

  #problems({ problems, fasteners }: Catalogue, position: number): TemplateResult | '' {
    if (problems.length === 0) return '';
    const byRow = new Map(fasteners.map((part) => [part.origin.row, part]));
    const count = problems.length === 1 ? 'One cell or row' : `${problems.length} cells or rows`;
    return html`<details ?open=${problems.length <= MOST_OPEN}>
      <summary class="wrong">${count} of the file could not be used</summary>
      <ul class="problems">
        ${problems.map(({ row, column, text }) => {
          const part = byRow.get(row);
          return html`<li>
            <span class="wrong">Row ${row}${column ? `, ${column}` : ''}: ${text}</span>
            ${part ? html`<button class="link" @click=${() => this.#open(part.partNumber, position)}>${part.origin.edited ? `${part.partNumber}, edited since` : `Show ${part.partNumber}`}</button>` : ''}
          </li>`;
        })}
      </ul>
    </details>`;
  }

  #takenOut({ edits = [] }: Catalogue, position: number): TemplateResult | '' {
    const out = edits.filter(({ cells }) => cells === null);
    if (out.length === 0) return '';
    return html`<p class="small">
      <span class="soft">Taken out here:</span>
      ${out.map(({ partNumber }) => html`${partNumber} <button class="link" aria-label="Put back: ${partNumber}" @click=${() => this.commands.catalogues.revertPart(position, partNumber)}>Put back</button> `)}
    </p>`;
  }

  #remove({ name, edits }: Catalogue, position: number): void {
    const isSure = !edits || confirm(`Removing ${name} drops your edits of it. Remove it?`);
    if (isSure) void this.commands.catalogues.remove(position);
  }

  #open(partNumber: string, position: number): void {
    const detail = { partNumber, position };
    this.dispatchEvent(new CustomEvent('open-part', { detail, bubbles: true, composed: true }));
  }
}

customElements.define('catalogue-ranks', CatalogueRanks);
