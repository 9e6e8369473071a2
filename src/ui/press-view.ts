import { css, html, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { AppState } from '../app/state.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { PressPanel, PressSheet } from '../core/rollup/press.ts';
import { inSetOrder } from '../core/rollup/press-order.ts';
import { SAMPLE_WORDS, SUGGESTED_ORDER } from '../core/rollup/press-practice.ts';
import { headingOf } from '../core/rollup/questions.ts';
import { footOf } from '../core/rollup/report.ts';
import { PRESS_WORDS, SAFETY_WORDS } from '../core/say/safety.ts';
import './press/press-panel.ts';
import { PrintPage } from './print-page.ts';
import { demoMark, undoButtons, waiting } from './report-parts.ts';
import { reportStyles } from './report-styles.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';

/** What to press, panel by panel, for the planner on screen and the operator on paper. */
export class PressView extends StoreElement {
  readonly page = new PrintPage(this, () => {
    const { list } = this.store.state;
    return list && { orientation: 'landscape', head: `Press sheet: ${list.file}`, foot: footOf(list, [PRESS_WORDS]) };
  });

  static override styles = [
    shared,
    reportStyles,
    css`
      .safety {
        margin-top: 14px;
        padding: 10px 14px;
        border-left: 3px solid var(--fails);
        background: var(--sheet);
        font-size: var(--reading);
        font-weight: 600;
      }
      .general {
        display: grid;
        gap: 4px;
        margin-top: 12px;
        max-width: 1120px;
        color: var(--soft);
      }
      .words p + p {
        margin-top: 4px;
      }
      @media print {
        press-panel + press-panel {
          break-before: page;
        }
        .safety {
          font-size: 10pt;
        }
        .general,
        .words {
          font-size: 8.5pt;
        }
        .words {
          break-inside: avoid;
        }
      }
    `,
  ];

  override render(): TemplateResult {
    const { state } = this.store;
    const { list, rollups, pressOrder } = state;
    if (!list || !rollups) return waiting('Press sheet');
    return this.#content(state, rollups.list, inSetOrder(rollups.press, pressOrder));
  }

  #content(state: AppState, list: AuditedList, { panels, builds }: PressSheet): TemplateResult {
    const hasSteps = panels.some(({ steps }) => steps.length > 0);
    return html`<div class="page" aria-busy=${list !== state.list}>
      <div class="top">
        <div>
          <h2>Press sheet</h2>
          <p class="soft">${list.file}, built ${builds} ${builds === 1 ? 'time' : 'times'}.</p>
          ${demoMark(list)}
        </div>
        <div class="buttons screen">${this.#buttons(state, panels)}</div>
      </div>
      <p class="safety">${PRESS_WORDS}</p>
      ${
        hasSteps
          ? html`<div class="general"><p>${SUGGESTED_ORDER} <span class="screen">Move a step with the arrows beside its number.</span></p><p>${SAMPLE_WORDS}</p></div>`
          : html`<p class="empty">${panels.length === 0 ? 'The list has no fastener rows: nothing to press.' : 'No row is to be pressed yet: none holds or is marginal.'}</p>`
      }
      ${repeat(panels, headingOfPanel, (panel) => html`<press-panel .panel=${panel} units=${list.shop.units} .commands=${this.commands}></press-panel>`)}
      <div class="words">${SAFETY_WORDS.map((words) => html`<p>${words}</p>`)}</div>
    </div>`;
  }

  #buttons(state: AppState, panels: readonly PressPanel[]): TemplateResult {
    const { reports } = this.commands;
    return html`<label>Go to panel
        <select class="field" @change=${this.#jump}><option value="">choose…</option>${panels.map((panel, at) => html`<option value=${at}>${headingOfPanel(panel)}</option>`)}</select>
      </label>
      ${undoButtons(state, this.commands)}
      <button class="button" @click=${() => reports.save('press', 'csv')}>Save as CSV</button>
      <button class="button" @click=${() => reports.save('press', 'xlsx')}>Save as XLSX</button>
      <button class="button" @click=${() => print()}>Print</button>`;
  }

  /** Brings a panel into sight and the keyboard to it. */
  readonly #jump = ({ target }: Event) => {
    const select = target as HTMLSelectElement;
    const panel = select.value === '' ? null : this.renderRoot.querySelectorAll('press-panel')[Number(select.value)];
    select.value = '';
    panel?.scrollIntoView();
    panel?.shadowRoot?.querySelector('h2')?.focus({ preventScroll: true });
  };
}

function headingOfPanel({ panel }: PressPanel): string {
  return headingOf(panel);
}

customElements.define('press-view', PressView);
