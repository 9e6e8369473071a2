import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { Commands } from '../app/commands.ts';
import { countRows } from '../app/many-cells.ts';
import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import type { SheetChange } from '../core/remedies/sheet-change.ts';
import type { SwapOffer } from '../core/remedies/swap.ts';
import type { SwapAnswer } from '../worker/protocol.ts';
import { shared } from './styles.ts';

/** Rows are passed over quickly with the arrow keys; offers are sought where one stays. */
const PAUSE_MS = 120;
const MOST_OFFERS = 5;

/** Parts that would hold in place of the listed one, each with the rows that it would hold on, and sheets in which the listed one would. */
export class RemedyList extends LitElement {
  static override properties = { line: { attribute: false }, list: { attribute: false }, swaps: { state: true } };
  declare line: AuditedLine | null;
  /** The whole list: when it changes, so may the offers. */
  declare list: AuditedList | null;
  declare swaps: { readonly row: number; readonly answer: SwapAnswer } | null;
  commands!: Commands;
  #timer: ReturnType<typeof setTimeout> | undefined;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
      }
      section {
        margin-top: 20px;
      }
      .remedy {
        display: flex;
        gap: 4px 12px;
        justify-content: space-between;
        align-items: start;
        margin-top: 8px;
        padding: 8px 10px;
        border: 1px solid var(--line);
        border-radius: 4px;
      }
      .remedy b {
        font-size: 14px;
      }
      .remedy .button {
        flex: none;
      }
    `,
  ];

  constructor() {
    super();
    this.line = null;
    this.list = null;
    this.swaps = null;
  }

  override render(): TemplateResult | typeof nothing {
    const { line, swaps } = this;
    if (!line || !needsRemedy(line) || swaps?.row !== line.row) return nothing;
    const { offers, sheets, groups } = swaps.answer;
    const here = offers.filter(({ rows }) => rows.includes(line.row)).slice(0, MOST_OFFERS);
    const sheetsHere = line.verdict === 'holds' ? [] : sheets;
    if (here.length === 0 && sheetsHere.length === 0) return nothing;
    const all = groups.flatMap(({ rows }) => rows).length;
    return html`<section>
      <h3>${line.verdict === 'holds' ? 'What would hold as well' : 'What would hold'}</h3>
      ${here.map((offer, index) => this.#offer(offer, all, index))} ${sheetsHere.map((sheet) => sheetChange(sheet, line))}
    </section>`;
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (!changed.has('line') && !changed.has('list')) return;
    clearTimeout(this.#timer);
    const { line } = this;
    if (line && needsRemedy(line)) this.#timer = setTimeout(() => this.#find(line.row), PAUSE_MS);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
  }

  async #find(row: number): Promise<void> {
    const answer = await this.commands.findSwaps({ row }).catch(() => null);
    if (this.line?.row === row) this.swaps = answer && { row, answer };
  }

  #offer(offer: SwapOffer, all: number, index: number): TemplateResult {
    const { partNumber, change, rows } = offer;
    const where = rows.length === all ? '' : ` · holds on ${rows.length} of the ${countRows(all)} with this part`;
    return html`<div class="remedy">
      <div><b>${partNumber}</b><br /><span class="soft">${change}${stock(offer)}${price(offer.priceDifference)}${where}</span></div>
      <button class="button ${index === 0 ? 'main' : ''}" @click=${() => this.commands.openDialog({ kind: 'swap', partNumber, rows })}>
        Use on ${countRows(rows.length)}
      </button>
    </div>`;
  }
}

/** A part that is not stocked or runs out is worth replacing even where it holds. */
function needsRemedy({ verdict, findings }: AuditedLine): boolean {
  const runsOut = findings.some(
    ({ rule, outcome }) => outcome === 'note' && (rule === 'part/stocked' || rule === 'part/superseded'),
  );
  return verdict !== 'holds' || runsOut;
}

function sheetChange({ words }: SheetChange, { line }: AuditedLine): TemplateResult {
  const panel = line.panel.trim();
  return html`<div class="remedy">
    <div><b>${words.charAt(0).toUpperCase() + words.slice(1)}</b><br /><span class="soft">changes ${panel ? `panel ${panel}` : 'the sheet'}; check what else is pressed into it</span></div>
  </div>`;
}

function stock({ stocked, stock: held }: SwapOffer): string {
  if (stocked === null) return '';
  if (!stocked) return ' · not stocked';
  return held?.quantity ? ` · ${held.quantity} in stock` : ' · in stock';
}

function price(difference: number | null): string {
  if (difference === null || difference === 0) return '';
  return ` · ${difference > 0 ? '+' : '−'}${Math.abs(difference).toFixed(2)} each`;
}

customElements.define('remedy-list', RemedyList);
