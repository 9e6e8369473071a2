import { css, html, type TemplateResult } from 'lit';
import type { AppState, GridRow } from '../app/state.ts';
import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import type { Finding } from '../core/model/finding.ts';
import type { LengthUnit } from '../core/model/list.ts';
import { VERDICTS } from '../core/model/outcome.ts';
import { basisOf } from '../core/rollup/basis.ts';
import { distinct } from '../core/rollup/group-by.ts';
import { footOf } from '../core/rollup/report.ts';
import { describeNumbers, describeRemedies, describeSheet, describeSources } from '../core/say/describe.ts';
import { SAFETY_SHORT, SAFETY_WORDS } from '../core/say/safety.ts';
import { drawingStyles } from './pictures/drawing-styles.ts';
import { printedPictureStyles, printedPictures } from './pictures/printed-pictures.ts';
import { PrintPage } from './print-page.ts';
import { demoMark, verdictWord } from './report-parts.ts';
import { reportStyles } from './report-styles.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';

const REMEDIES_SHOWN = 3;

/** The findings on paper: every row that does not hold, then counts, basis and safety words. Prints itself once it stands. */
export class FindingsPage extends StoreElement {
  readonly page = new PrintPage(this, () => {
    const { list } = this.store.state;
    return list && { orientation: 'landscape', head: `Findings: ${list.file}`, foot: footOf(list, [SAFETY_SHORT]) };
  });

  static override styles = [
    shared,
    reportStyles,
    drawingStyles,
    printedPictureStyles,
    css`
      .page {
        max-width: 1280px;
      }
      table {
        margin-top: 14px;
      }
      td {
        overflow-wrap: anywhere;
      }
      .findings td,
      .findings th {
        padding-right: 12px;
      }
      td p + p {
        margin-top: 6px;
      }
      .findings {
        table-layout: fixed;
      }
      .row {
        width: 4%;
      }
      .what {
        width: 14%;
      }
      .verdict-column {
        width: 8.5%;
      }
      .decides {
        width: 27%;
      }
      .numbers,
      .instead {
        width: 15%;
      }
      .basis {
        width: auto;
      }
      .words p + p {
        margin-top: 4px;
      }
      @media print {
        td p + p {
          margin-top: 4px;
        }
        .words {
          break-inside: avoid;
        }
      }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('afterprint', this.#leave);
    void this.#printWhenReady();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('afterprint', this.#leave);
  }

  override render(): TemplateResult {
    const { state } = this.store;
    const { list } = state;
    if (!list) return html`<div class="page"><p class="empty">No list is open.</p></div>`;
    const open = state.rows.filter(({ line }) => line && line.verdict !== 'holds');
    return html`<div class="page">
      <div class="top">
        <div>
          <h2>Findings: ${list.file}</h2>
          <p class="soft">${countsOf(list)}</p>
          ${demoMark(list)}
        </div>
        <div class="buttons screen">
          <button class="button main" @click=${() => print()}>Print</button>
          <button class="button" @click=${this.#leave}>Back</button>
        </div>
      </div>
      ${open.length === 0 ? html`<p class="empty">Every row holds.</p>` : findingsTable(open, state)}
      ${printedPictures(
        open.flatMap(({ line }) => line ?? []),
        state,
      )}
      ${basisSection(list, this.commands.reports.today)}
      <div class="words">${SAFETY_WORDS.map((words) => html`<p>${words}</p>`)}</div>
    </div>`;
  }

  readonly #leave = () => this.commands.reports.leaveFindings();

  /** Typeface and table are there before the page goes out. */
  async #printWhenReady(): Promise<void> {
    await this.updateComplete;
    await document.fonts.ready;
    await new Promise((resolve) => requestAnimationFrame(resolve));
    if (this.isConnected) print();
  }
}

function findingsTable(rows: readonly GridRow[], { shop }: AppState): TemplateResult {
  return html`<table class="findings">
    <thead><tr>
      <th scope="col" class="number row">Row</th><th scope="col" class="what">Part and sheet (${shop.units})</th><th scope="col" class="verdict-column">Verdict</th>
      <th scope="col" class="decides">What decides it, and what else is open</th><th scope="col" class="numbers">Numbers</th><th scope="col" class="instead">Would hold instead</th><th scope="col">Source</th>
    </tr></thead>
    <tbody>${rows.map(({ line, conceded }) => (line ? findingsRow(line, conceded ?? '', shop.units) : ''))}</tbody>
  </table>`;
}

function findingsRow(line: AuditedLine, conceded: string, units: LengthUnit): TemplateResult {
  const { row, verdict, line: listed } = line;
  const open = openFindings(line);
  const numbers = open.map(({ values }) => describeNumbers(values, units)).filter(Boolean);
  const sources = [...new Set(open.flatMap(({ cites }) => cites))].map((id) => describeSources([id]));
  return html`<tr>
    <td class="number">${row}</td>
    <td><b>${listed.partNumber || 'no part number'}</b><p class="soft">${describeSheet(line, units) || 'sheet not known'}${listed.panel ? `, panel ${listed.panel}` : ''}</p></td>
    <td>${verdictWord(verdict)}</td>
    <td>${distinct(open.map(({ text }) => text)).map((text) => html`<p>${text}</p>`)}${conceded ? html`<p><b>${conceded}</b></p>` : ''}</td>
    <td>${numbers.map((text) => html`<p>${text}</p>`)}</td>
    <td>${describeRemedies(line, REMEDIES_SHOWN) || '–'}</td>
    <td class="small">${sources.map((text) => html`<p>${text}</p>`)}</td>
  </tr>`;
}

/** What decides the row first, then whatever else does not hold. */
function openFindings({ decidedBy, findings }: AuditedLine): readonly Finding[] {
  const others = findings.filter(
    (finding) => finding.rule !== decidedBy?.rule && finding.outcome !== 'holds' && finding.outcome !== 'note',
  );
  return decidedBy ? [decidedBy, ...others] : others;
}

function countsOf({ totals, lines }: AuditedList): string {
  return `${lines.length} fastener rows: ${VERDICTS.map((verdict) => `${totals[verdict]} ${verdict}`).join(', ')}.`;
}

function basisSection(list: AuditedList, today: string): TemplateResult {
  return html`<section><h2>What this rests on</h2><table class="basis">
    <tbody>${basisOf(list, today).map(([name, value]) => html`<tr><th scope="row">${name}</th><td>${value}</td></tr>`)}</tbody>
  </table></section>`;
}

customElements.define('findings-page', FindingsPage);
