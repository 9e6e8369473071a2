import { css, html, LitElement, type TemplateResult } from 'lit';
import type { LeftOut, LeftOutRow } from '../../core/rollup/purchase.ts';
import { BeforePrint } from '../before-print.ts';
import { type OnRow, rowLink, verdictWord } from '../report-parts.ts';
import { reportStyles } from '../report-styles.ts';
import { shared } from '../styles.ts';

/** More rows than this are shown on request, and on paper. */
const MOST_ROWS = 200;

type Entry = LeftOutRow & Pick<LeftOut, 'partNumber' | 'onFile'>;

/** Rows that are not ordered, each with the reason; nothing where there are none. */
export class LeftOutTable extends LitElement {
  static override properties = {
    heading: { attribute: false },
    parts: { attribute: false },
    showsAll: { state: true },
  };
  declare heading: string;
  declare parts: readonly LeftOut[];
  declare showsAll: boolean;
  onRow: OnRow = () => {};

  static override styles = [
    shared,
    reportStyles,
    css`
      :host {
        display: block;
      }
      .more {
        margin-top: 10px;
      }
    `,
  ];

  constructor() {
    super();
    this.heading = '';
    this.parts = [];
    this.showsAll = false;
    new BeforePrint(this, this.#showAll);
  }

  override render(): TemplateResult | '' {
    const rows = this.parts.flatMap(({ partNumber, onFile, rows }) =>
      rows.map((row) => ({ ...row, partNumber, onFile })),
    );
    if (rows.length === 0) return '';
    const shown = this.showsAll ? rows : rows.slice(0, MOST_ROWS);
    return html`<section class="left-out">
      <h2>${this.heading} <span class="soft">(${rows.length} ${rows.length === 1 ? 'row' : 'rows'})</span></h2>
      <div class="wide"><table>
        <thead><tr>
          <th scope="col">Part</th><th scope="col" class="number">Row</th><th scope="col">Panel</th>
          <th scope="col">Verdict</th><th scope="col" class="number">Per build</th><th scope="col">Reason</th>
        </tr></thead>
        <tbody>${shown.map((row) => this.#row(row))}</tbody>
      </table></div>
      ${shown.length < rows.length ? html`<p class="more screen"><button class="button" @click=${this.#showAll}>Show all ${rows.length} rows</button></p>` : ''}
    </section>`;
  }

  #row({ partNumber, onFile, row, panel, verdict, pieces, reason }: Entry): TemplateResult {
    return html`<tr>
      <td class="part">${partNumber || 'no part number'}${onFile ? '' : html` <span class="small soft">not on file</span>`}</td>
      <td class="number">${rowLink(row, this.onRow)}</td><td>${panel || '–'}</td><td>${verdictWord(verdict)}</td>
      <td class="number">${pieces ?? '–'}</td><td>${reason}</td>
    </tr>`;
  }

  /** At once: paper does not wait for the next turn. */
  readonly #showAll = () => {
    this.showsAll = true;
    this.performUpdate();
  };
}

customElements.define('left-out-table', LeftOutTable);
