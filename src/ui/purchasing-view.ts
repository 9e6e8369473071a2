import { css, html, type TemplateResult } from 'lit';
import { writeClipboard } from '../app/clipboard.ts';
import type { AppState } from '../app/state.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Purchase } from '../core/rollup/purchase.ts';
import { purchaseReport } from '../core/rollup/purchase-report.ts';
import { footOf } from '../core/rollup/report.ts';
import { SAFETY_SHORT } from '../core/say/safety.ts';
import { PrintPage } from './print-page.ts';
import './purchasing/build-fields.ts';
import './purchasing/left-out-table.ts';
import { showPrice } from './purchasing/money.ts';
import './purchasing/order-table.ts';
import { copyText, demoMark, undoButtons, waiting } from './report-parts.ts';
import { reportStyles } from './report-styles.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';

/** What to order for the builds of the list, by part; what is left out of it stands below, apart. */
export class PurchasingView extends StoreElement {
  readonly page = new PrintPage(this, () => {
    const { list } = this.store.state;
    return list && { orientation: 'landscape', head: `Purchasing: ${list.file}`, foot: footOf(list, [SAFETY_SHORT]) };
  });

  static override styles = [
    shared,
    reportStyles,
    css`
      .total {
        margin-top: 6px;
        font-size: var(--reading);
      }
      .bar {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 28px;
        align-items: center;
        justify-content: space-between;
        margin-top: 16px;
      }
      order-table {
        display: block;
        margin-top: 18px;
      }
      .notes {
        margin-top: 10px;
        color: var(--soft);
      }
    `,
  ];

  override render(): TemplateResult {
    const { state } = this.store;
    const { list, rollups } = state;
    if (!list || !rollups) return waiting('Purchasing');
    return this.#content(state, rollups.purchase, rollups.list);
  }

  /** What was added up last stays while the next is waited for, with the words of the list that it belongs to. */
  #content(state: AppState, purchase: Purchase, list: AuditedList): TemplateResult {
    const { lines, heldBack, uncounted } = purchase;
    return html`<div class="page" aria-busy=${list !== state.list}>
      <div class="top">
        <div>
          <h2>Purchasing</h2>
          <p class="total">${totalLine(purchase)}</p>
          ${demoMark(list)}
        </div>
      </div>
      <div class="bar screen">
        <build-fields .shop=${state.shop}></build-fields>
        <div class="buttons">${this.#buttons(state, lines.length === 0)}</div>
      </div>
      <p class="notes">${purchaseReport(list, purchase).blocks[0]?.notes.join(' ')}</p>
      ${lines.length === 0 ? '' : html`<order-table .lines=${lines} .onRow=${this.#showRow}></order-table>`}
      ${this.#notes(purchase)}
      <left-out-table .heading=${'Not ordered: these rows do not hold yet'} .parts=${heldBack} .onRow=${this.#showRow}></left-out-table>
      <left-out-table .heading=${'Not ordered: these rows hold and have no usable quantity'} .parts=${uncounted} .onRow=${this.#showRow}></left-out-table>
      <p class="words screen">${SAFETY_SHORT}</p>
    </div>`;
  }

  #buttons(state: AppState, isEmpty: boolean): TemplateResult {
    const { reports } = this.commands;
    return html`${undoButtons(state, this.commands)}
      <button class="button" ?disabled=${isEmpty} title="The order as rows to paste into a spreadsheet or a mail" @click=${this.#copy}>Copy as text</button>
      <button class="button" @click=${() => reports.save('purchase', 'csv')}>Save as CSV</button>
      <button class="button" @click=${() => reports.save('purchase', 'xlsx')}>Save as XLSX</button>
      <button class="button" @click=${() => print()}>Print</button>`;
  }

  #notes({ unpriced, lead }: Purchase): TemplateResult {
    const notes = [
      unpriced.length > 0 ? `In no total, as price or currency is not known: ${unpriced.join(', ')}.` : '',
      lead.unknown.length > 0 ? `Lead time not known: ${lead.unknown.join(', ')}.` : '',
    ].filter(Boolean);
    return html`${notes.map((note) => html`<p class="notes">${note}</p>`)}`;
  }

  readonly #showRow = (row: number) => this.commands.reports.showRow(row);

  readonly #copy = () => {
    const { rollups } = this.store.state;
    const block = rollups && purchaseReport(rollups.list, rollups.purchase).blocks[0];
    if (!block) return;
    const cells = [block.headings, ...block.rows].map((row) => row.map((cell) => String(cell ?? '')));
    void copyText(writeClipboard(cells), 'The order', this.commands);
  };
}

/** Totals, each currency by itself, and the longest lead time, in one line. */
function totalLine({ lines, totals, unpriced, lead }: Purchase): string {
  const ordered = lines.filter(({ order }) => order > 0).length;
  if (ordered === 0) return lines.length === 0 ? 'Nothing to order.' : 'Nothing to order: stock covers every part.';
  const covered = lines.length - ordered;
  return [
    ...totals.map(({ currency, price }) => `${currency} ${showPrice(price)}`),
    ...(unpriced.length > 0 ? [`${unpriced.length} without a price`] : []),
    ...(lead.longestDays === null
      ? []
      : [`longest lead time ${lead.longestDays} days (${lead.partNumbers.join(', ')})`]),
    `${ordered} ${ordered === 1 ? 'part' : 'parts'} to order${covered > 0 ? `, ${covered} covered by stock` : ''}`,
  ].join(' · ');
}

customElements.define('purchasing-view', PurchasingView);
