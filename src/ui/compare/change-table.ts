import { css, html, LitElement, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { Compared } from '../../worker/compared.ts';
import { BeforePrint } from '../before-print.ts';
import type { OnRow } from '../report-parts.ts';
import { reportStyles } from '../report-styles.ts';
import { shared } from '../styles.ts';
import type { ChangeHeading, ChangeKind } from './change-kinds.ts';

/** As many rows as are looked through at once; the rest are shown on request. */
const FIRST_SHOWN = 200;
/** Rows that are put on the page in one go, so that it never stands still. */
const AT_ONCE = 500;
/** Paper shows no more than this of one kind. */
const MOST_PRINTED = 2000;

/** The changes of one kind as a table, with a slot for what can be done with them. */
export class ChangeTable extends LitElement {
  static override properties = {
    kind: { attribute: false },
    compared: { attribute: false },
    wanted: { state: true },
    shown: { state: true },
  };
  declare kind: ChangeKind;
  declare compared: Compared;
  declare wanted: number;
  declare shown: number;
  onRow: OnRow = () => {};

  static override styles = [
    shared,
    reportStyles,
    css`
      :host {
        display: block;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        gap: 6px 24px;
        justify-content: space-between;
        align-items: end;
        padding-bottom: 4px;
      }
      .note {
        margin-top: 2px;
      }
      td {
        overflow-wrap: anywhere;
      }
      th.number:first-child,
      td.number:first-child {
        width: 76px;
        padding-right: 20px;
      }
      td.number .small {
        display: block;
      }
      td .verdict {
        font-weight: 400;
        vertical-align: bottom;
      }
      del {
        color: var(--soft);
        text-decoration: none;
      }
      ins {
        font-weight: 600;
        text-decoration: none;
      }
      .date {
        white-space: nowrap;
      }
      .lapsed {
        color: var(--fails);
      }
      .more {
        margin-top: 10px;
      }
      .paper {
        display: none;
      }
      @media print {
        .paper {
          display: block;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.wanted = FIRST_SHOWN;
    this.shown = FIRST_SHOWN;
    new BeforePrint(this, this.#fillPaper);
  }

  override render(): TemplateResult {
    const { title, of, note, headings, id } = this.kind;
    const count = this.kind.count(this.compared);
    return html`<section data-kind=${id}>
      <div class="head">
        <div>
          <h2>${title} <span class="soft">(${count} ${count === 1 ? of : `${of}s`})</span></h2>
          ${note ? html`<p class="note soft">${note}</p>` : ''}
        </div>
        <slot></slot>
      </div>
      <div class="wide"><table aria-label=${title}>
        <thead><tr>${headings.map(heading)}</tr></thead>
        ${this.#bodies(Math.min(this.shown, count))}
      </table></div>
      ${this.wanted < count ? html`<p class="more screen"><button class="button" @click=${this.#showAll}>Show all ${count}</button></p>` : ''}
      ${count > MOST_PRINTED ? html`<p class="more paper">Printed: ${Math.min(Math.max(this.shown, MOST_PRINTED), count)} of ${count}. The saved file has them all.</p>` : ''}
    </section>`;
  }

  /** Rows in bodies of a size, each made once as long as the comparison is the same. */
  #bodies(end: number): readonly unknown[] {
    const starts = [0];
    for (let start = FIRST_SHOWN; start < end; start += AT_ONCE) starts.push(start);
    return starts.map((from, at) => {
      const to = Math.min(starts[at + 1] ?? end, end);
      return guard([this.compared, this.kind, from, to], () => this.#body(from, to));
    });
  }

  #body(from: number, to: number): TemplateResult {
    return html`<tbody>${this.kind.rows(this.compared, from, to, this.onRow)}</tbody>`;
  }

  protected override updated(): void {
    if (this.shown < Math.min(this.wanted, this.kind.count(this.compared)))
      requestAnimationFrame(() => {
        this.shown += AT_ONCE;
      });
  }

  readonly #showAll = () => {
    this.wanted = Number.POSITIVE_INFINITY;
  };

  /** At once: paper does not wait for the next turn. */
  readonly #fillPaper = () => {
    this.shown = Math.max(this.shown, MOST_PRINTED);
    this.wanted = Math.max(this.wanted, MOST_PRINTED);
    this.performUpdate();
  };
}

function heading({ text, isNumber }: ChangeHeading): TemplateResult {
  return html`<th scope="col" class=${isNumber ? 'number' : ''}>${text}</th>`;
}

customElements.define('change-table', ChangeTable);
