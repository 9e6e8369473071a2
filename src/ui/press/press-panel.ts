import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import type { Commands } from '../../app/commands.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import type { NotYet, PressPanel } from '../../core/rollup/press.ts';
import { ORDER_SET } from '../../core/rollup/press-practice.ts';
import { fixtureNotes } from '../../core/rollup/press-report.ts';
import type { PressStep } from '../../core/rollup/press-step.ts';
import { headingOf } from '../../core/rollup/questions.ts';
import { rowLink, rowLinks, verdictWord } from '../report-parts.ts';
import { reportStyles } from '../report-styles.ts';
import { shared } from '../styles.ts';
import { firstPieceTable } from './first-piece.ts';

/** One panel of the press sheet: its steps in order, what to look at on the first piece, look-alikes, and what is not to be pressed yet. */
export class PressPanelSection extends LitElement {
  static override properties = { panel: { attribute: false }, units: { type: String }, told: { state: true } };
  declare panel: PressPanel;
  /** Unit of the sheet thickness. */
  declare units: LengthUnit;
  /** Where a step was moved to, for whoever does not see it. */
  declare told: string;
  commands!: Commands;
  /** The step that was moved last, and which way: its button keeps the focus in the new place. */
  #follow: { readonly row: number; readonly by: 1 | -1 } | null = null;

  static override styles = [
    shared,
    reportStyles,
    css`
      :host {
        display: block;
        margin-top: 30px;
      }
      /* A long list has hundreds of panels: those out of sight are not laid out. */
      @media screen {
        :host {
          content-visibility: auto;
          contain-intrinsic-size: auto 900px;
        }
      }
      .head {
        display: flex;
        gap: 8px 20px;
        justify-content: space-between;
        align-items: baseline;
        padding-bottom: 4px;
        border-bottom: 2px solid var(--ink);
      }
      .order {
        white-space: nowrap;
      }
      .order b {
        display: inline-block;
        min-width: 20px;
        font-size: var(--reading);
      }
      .move {
        width: 26px;
        height: 26px;
        padding: 0;
        border: 1px solid var(--line);
        border-radius: 4px;
        background: var(--sheet);
      }
      .force b,
      .hole {
        font-size: var(--reading);
        white-space: nowrap;
      }
      .notes {
        margin: 10px 0 0;
        padding-left: 18px;
      }
      .alike {
        color: var(--marginal);
      }
      .not-yet {
        margin-top: 16px;
      }
      h3 {
        margin-top: 18px;
      }
      .box {
        vertical-align: -2px;
      }
      .sign {
        min-width: 140px;
      }
      .told {
        position: absolute;
        overflow: hidden;
        width: 1px;
        height: 1px;
        clip-path: inset(50%);
      }
      @media print {
        .force b,
        .hole,
        .order b {
          font-size: 9.5pt;
        }
        .steps .small {
          display: inline;
          margin-left: 5px;
        }
        .alike,
        .notes {
          color: inherit;
          font-size: 8pt;
        }
        h3 {
          margin-top: 12px;
        }
        .sign {
          min-width: 110px;
        }
        .not-yet,
        .first-piece {
          break-inside: avoid;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.units = 'mm';
    this.told = '';
  }

  override render(): TemplateResult {
    const { panel, steps, warnings, notYet, isOrderSet } = this.panel;
    return html`
      <div class="head">
        <h2 tabindex="-1">${headingOf(panel)}</h2>
        ${isOrderSet ? html`<span class="soft">${ORDER_SET} <button class="link screen" @click=${this.#forget}>Back to the suggested order</button></span>` : ''}
      </div>
      ${steps.length > 0 ? this.#steps() : html`<p class="soft">Nothing is to be pressed into this panel yet.</p>`}
      ${notYet.length > 0 ? this.#notYet(notYet) : ''}
      <ul class="notes">
        ${warnings.map((warning) => html`<li class="alike">Look-alikes: ${warning}</li>`)}
        ${fixtureNotes(steps).map((note) => html`<li class="small">${note}</li>`)}
      </ul>
      ${firstPieceTable(this.panel)}
      <p class="told" role="status">${this.told}</p>
    `;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('panel') || !this.#follow) return;
    const { row, by } = this.#follow;
    this.#follow = null;
    const buttons = [...this.renderRoot.querySelectorAll<HTMLButtonElement>(`.move[data-row="${row}"]`)];
    const same = buttons.find(({ dataset, disabled }) => !disabled && dataset.by === String(by));
    (same ?? buttons.find(({ disabled }) => !disabled))?.focus();
  }

  #steps(): TemplateResult {
    const { steps } = this.panel;
    return html`<div class="wide"><table class="steps">
      <thead><tr>
        <th scope="col">Order</th><th scope="col">Hole at the press</th><th scope="col">Fastener</th><th scope="col">Into sheet (${this.units})</th>
        <th scope="col" class="number">Force</th><th scope="col">Press from</th><th scope="col" class="number">Pieces</th>
        <th scope="col" class="number">All builds</th><th scope="col">Rows</th><th scope="col">Settle first</th>
      </tr></thead>
      <tbody>${steps.map((step, at) => this.#step(step, at))}</tbody>
    </table></div>`;
  }

  #step(step: PressStep, at: number): TemplateResult {
    const { rows, partNumber, kind, thread, sheet, hole, side, forceKn, forceBasis, pieces, lot, verdict } = step;
    return html`<tr data-part=${partNumber}>
      <td class="order"><b>${step.order}</b> <span class="screen">${this.#mover(step, at, -1)} ${this.#mover(step, at, 1)}</span></td>
      <td class="hole">${hole ?? 'not in the catalogue'}</td>
      <td class="part"><b>${partNumber}</b><div class="small soft">${[kind, thread].filter(Boolean).join(', ')}</div></td>
      <td>${sheet || 'not known'}</td>
      <td class="number force">${forceKn === null ? 'not in the catalogue' : html`<b>${forceKn} kN</b>`}<div class="small soft">${forceBasis}</div></td>
      <td>${side}</td><td class="number">${pieces ?? 'not known'}</td><td class="number">${lot ?? 'not known'}</td>
      <td>${rowLinks(rows, this.#showRow)}</td>
      <td>${verdict === 'holds' ? '' : html`${verdictWord(verdict)}<div>${step.settle}</div>`}</td>
    </tr>`;
  }

  #mover({ rows, partNumber }: PressStep, at: number, by: 1 | -1): TemplateResult {
    const [row = 0] = rows;
    const isEnd = at + by < 0 || at + by >= this.panel.steps.length;
    const name = `Press ${partNumber} ${by < 0 ? 'earlier' : 'later'}`;
    return html`<button class="move" data-row=${row} data-by=${by} aria-label=${name} title=${name} ?disabled=${isEnd}
      @click=${() => this.#move(partNumber, row, at, by)}>${by < 0 ? '↑' : '↓'}</button>`;
  }

  #notYet(notYet: readonly NotYet[]): TemplateResult {
    return html`<div class="not-yet"><h3>${headingOf(this.panel.panel)}: not to be pressed yet</h3><table>
      <thead><tr><th scope="col">Row</th><th scope="col">Part</th><th scope="col">Verdict</th><th scope="col">Reason</th></tr></thead>
      <tbody>${notYet.map(
        ({ row, partNumber, verdict, reason }) => html`<tr>
          <td>${rowLink(row, this.#showRow)}</td><td class="part">${partNumber || 'no part number'}</td><td>${verdictWord(verdict)}</td><td>${reason}</td>
        </tr>`,
      )}</tbody>
    </table></div>`;
  }

  readonly #showRow = (row: number) => this.commands.reports.showRow(row);
  readonly #forget = () => this.commands.reports.forgetPressOrder(this.panel);

  #move(partNumber: string, row: number, at: number, by: 1 | -1): void {
    this.#follow = { row, by };
    this.told = `${partNumber} is now number ${at + by + 1} of ${this.panel.steps.length}.`;
    void this.commands.reports.movePressStep(this.panel, at, at + by);
  }
}

customElements.define('press-panel', PressPanelSection);
