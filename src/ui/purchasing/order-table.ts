import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { nextSorting, type Sorting, type SortKey, sortOrder } from '../../app/sort-order.ts';
import { groupBy } from '../../core/rollup/group-by.ts';
import type { PurchaseLine } from '../../core/rollup/purchase.ts';
import { totalsOf } from '../../core/rollup/purchase-totals.ts';
import { type OnRow, rowLinks } from '../report-parts.ts';
import { reportStyles } from '../report-styles.ts';
import { shared } from '../styles.ts';
import { showPrice } from './money.ts';

interface Heading {
  readonly text: string;
  readonly title?: string;
  readonly sort?: SortKey;
  readonly isNumber?: true;
}

const HEADINGS: readonly Heading[] = [
  { text: 'Part', sort: 'part' },
  { text: 'On panels', title: 'Pieces in one product on each panel' },
  { text: 'Per build', title: 'Pieces in one product', isNumber: true },
  { text: 'All builds', isNumber: true },
  { text: 'Spares', isNumber: true },
  { text: 'From stock', title: 'Pieces that the stock stated by the catalogue covers', isNumber: true },
  { text: 'To order', title: 'What stock does not cover', isNumber: true },
  { text: 'MOQ', title: 'Minimum order quantity', isNumber: true },
  { text: 'Pack', isNumber: true },
  { text: 'Order', title: 'At least the minimum order quantity, in whole packs', isNumber: true },
  { text: 'Price each', isNumber: true },
  { text: 'Price', sort: 'price', isNumber: true },
  { text: 'Lead days', sort: 'lead', isNumber: true },
  { text: 'Supplier', sort: 'supplier' },
  { text: 'Check before ordering' },
];

/** Keeps the arrows on the line of their heading's last word. */
const JOINED = '\u2060';

/** The order by part; a click on some headings sorts it, by supplier in groups with their totals. */
export class OrderTable extends LitElement {
  static override properties = { lines: { attribute: false }, sorting: { state: true } };
  declare lines: readonly PurchaseLine[];
  declare sorting: Sorting;
  onRow: OnRow = () => {};

  static override styles = [
    shared,
    reportStyles,
    css`
      :host {
        display: block;
      }
      th button {
        padding: 0;
        border: 0;
        background: none;
        color: inherit;
        font-weight: inherit;
        text-align: inherit;
        white-space: nowrap;
      }
      th button:hover {
        color: var(--ink);
      }
      th svg {
        margin-left: 2px;
      }
      td {
        font-size: var(--base);
      }
      td.panels {
        min-width: 96px;
      }
      td.look {
        min-width: 150px;
        width: 16%;
      }
      .paper {
        display: none;
      }
      .none td {
        color: var(--soft);
      }
      .group td {
        padding-top: 14px;
        font-weight: 600;
      }
      @media (max-width: 1199px) {
        th,
        td {
          padding-right: 9px;
        }
        th.number,
        th button {
          white-space: normal;
        }
        td.panels {
          min-width: 84px;
        }
        td.look {
          min-width: 112px;
        }
      }
      @media print {
        td {
          font-size: inherit;
        }
        td.look {
          min-width: 110px;
        }
        td.panels {
          min-width: 64px;
        }
        .number:has(.paper) {
          white-space: normal;
        }
        /* A repeated heading shows no buttons. */
        .paper {
          display: inline;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.lines = [];
    this.sorting = null;
  }

  override render(): TemplateResult {
    const lines = sortOrder(this.lines, this.sorting);
    const isGrouped = this.sorting?.by === 'supplier';
    return html`<div class="wide"><table>
      <thead><tr>${HEADINGS.map((heading) => this.#heading(heading))}</tr></thead>
      <tbody>${isGrouped ? groupBy(lines, supplierOf).map((group) => this.#group(group)) : lines.map((line) => this.#line(line))}</tbody>
    </table></div>`;
  }

  #heading({ text, title, sort, isNumber }: Heading): TemplateResult {
    const sorted = sort !== undefined && this.sorting?.by === sort ? this.sorting : null;
    const direction = sorted ? (sorted.isDescending ? 'descending' : 'ascending') : nothing;
    const content = sort
      ? html`<button class="screen" title="Sort by this" @click=${() => this.#sortBy(sort)}>${text}${JOINED}${arrow(sorted)}</button><span class="paper">${text}</span>`
      : text;
    return html`<th scope="col" class=${isNumber ? 'number' : ''} title=${title ?? nothing} aria-sort=${direction}>${content}</th>`;
  }

  #group(lines: readonly [PurchaseLine, ...PurchaseLine[]]): TemplateResult {
    const totals = totalsOf(lines).map(({ currency, price }) => `${currency} ${showPrice(price)}`);
    const name = supplierOf(lines[0]) || 'No supplier named';
    return html`<tr class="group"><td colspan=${HEADINGS.length}>${[name, ...totals].join(' · ')}</td></tr>${lines.map((line) => this.#line(line))}`;
  }

  #line(line: PurchaseLine): TemplateResult {
    const { partNumber, kind, thread, rows, panels, need, stock, moq, packSize, packs, order } = line;
    const about = [kind, thread].filter(Boolean).join(', ');
    const off = stock === null ? '–' : Math.min(stock, need);
    return html`<tr class=${order === 0 ? 'none' : ''} data-part=${partNumber}>
      <td class="part"><b>${partNumber}</b><div class="small soft">${about ? `${about} · ` : ''}${rows.length === 1 ? 'row' : 'rows'} ${rowLinks(rows, this.onRow)}</div></td>
      <td class="panels">${panels.map(({ panel, pieces }) => html`<div>${panel || 'no panel'}: ${pieces}</div>`)}</td>
      <td class="number">${line.perBuild}</td><td class="number">${line.used}</td><td class="number">${line.spares}</td>
      <td class="number" title=${stock === null ? nothing : `${stock} in stock by the catalogue`}>${off}</td>
      <td class="number">${line.toOrder}</td><td class="number">${moq ?? '–'}</td><td class="number">${packSize ?? '–'}</td>
      <td class="number"><b>${order}</b>${packs !== null && packs > 1 ? html`<div class="small soft">${packs} packs</div>` : ''}</td>
      <td class="number">${showPrice(line.unitPrice)}</td>
      <td class="number">${line.price === null ? '–' : `${showPrice(line.price)} ${line.currency ?? ''}`}</td>
      <td class="number">${line.leadDays ?? '–'}</td><td>${line.supplier ?? '–'}</td>
      <td class="look">${line.flags.join(' ')}</td>
    </tr>`;
  }

  #sortBy(by: SortKey): void {
    this.sorting = nextSorting(this.sorting, by);
  }
}

function supplierOf({ supplier }: PurchaseLine): string {
  return supplier?.trim() ?? '';
}

/** Points the way in which the values grow; both ways, faintly, while nothing is sorted by the column. */
function arrow(sorted: Sorting): TemplateResult {
  const [up, down] = sorted ? [sorted.isDescending ? 0.25 : 1, sorted.isDescending ? 1 : 0.25] : [0.5, 0.5];
  return html`<svg width="9" height="10" viewBox="0 0 9 10" aria-hidden="true">
    <path fill="currentColor" opacity=${up} d="M4.5 0 8 4H1z"/><path fill="currentColor" opacity=${down} d="M4.5 10 8 6H1z"/>
  </svg>`;
}

customElements.define('order-table', OrderTable);
