import { css, html, type TemplateResult } from 'lit';
import type { AppState } from '../app/state.ts';
import type { AuditedList } from '../core/model/audited.ts';
import { groupBy } from '../core/rollup/group-by.ts';
import { headingOf, type Question, questionKey, showQuestions } from '../core/rollup/questions.ts';
import { footOf } from '../core/rollup/report.ts';
import { SAFETY_SHORT } from '../core/say/safety.ts';
import { PrintPage } from './print-page.ts';
import { copyText, demoMark, rowLinks, waiting } from './report-parts.ts';
import { reportStyles } from './report-styles.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';

/** What to ask the sender, numbered, by panel; a question without its tick goes into neither letter nor sheet. */
export class QuestionsView extends StoreElement {
  readonly page = new PrintPage(this, () => {
    const { list } = this.store.state;
    return list && { orientation: 'portrait', head: `Questions: ${list.file}`, foot: footOf(list, [SAFETY_SHORT]) };
  });

  static override styles = [
    shared,
    reportStyles,
    css`
      .page {
        max-width: 1120px;
      }
      section {
        margin-top: 20px;
      }
      .hint {
        margin-top: 12px;
        color: var(--soft);
      }
      ol {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: grid;
        grid-template-columns: 24px 34px minmax(0, 1fr) minmax(140px, 30%);
        gap: 4px 12px;
        align-items: baseline;
        padding: 9px 0;
        border-bottom: 1px solid var(--line);
        font-size: var(--reading);
      }
      .number {
        color: var(--soft);
        text-align: right;
      }
      .about {
        color: var(--soft);
        font-size: var(--base);
        overflow-wrap: anywhere;
      }
      .left-out p,
      .left-out .number {
        color: var(--soft);
        text-decoration: line-through;
      }
      .why {
        margin-top: 3px;
        color: var(--soft);
        font-size: var(--base);
      }
      input[type='checkbox'] {
        width: 16px;
        height: 16px;
        accent-color: var(--blue);
      }
      @media print {
        li {
          grid-template-columns: 26px minmax(0, 1fr) 30%;
          font-size: 10pt;
        }
        .why,
        .about {
          font-size: 8.5pt;
        }
        .left-out {
          display: none;
        }
      }
    `,
  ];

  override render(): TemplateResult {
    const { state } = this.store;
    const { list, rollups } = state;
    if (!list || !rollups) return waiting('Questions');
    return this.#content(state, rollups.list, rollups.questions);
  }

  #content(state: AppState, list: AuditedList, questions: readonly Question[]): TemplateResult {
    const kept = questions.filter((question) => !state.leftOut.has(questionKey(question)));
    return html`<div class="page" aria-busy=${list !== state.list}>
      <div class="top">
        <div>
          <h2>Questions to the sender</h2>
          <p class="soft">${countWords(questions.length, kept.length)} ${questions.length > 0 ? html`<span class="screen">Take the tick off what is not to be asked.</span>` : ''}</p>
          ${demoMark(list)}
        </div>
        ${questions.length > 0 ? html`<div class="buttons screen">${this.#buttons(list, kept)}</div>` : ''}
      </div>
      ${
        questions.length > 0
          ? html`<p class="hint screen">The sheet has an empty column for the answers.</p>
              ${groupBy(questions, ({ panel }) => headingOf(panel)).map((group) => this.#group(group, state))}`
          : html`<p class="empty">Nothing to ask: no row is unknown or marginal, and every quantity can be used.</p>`
      }
      <p class="words screen">${SAFETY_SHORT}</p>
    </div>`;
  }

  #buttons(list: AuditedList, kept: readonly Question[]): TemplateResult {
    const { reports } = this.commands;
    const isEmpty = kept.length === 0;
    const copy = () => copyText(showQuestions(list, kept), 'The letter', this.commands);
    return html`<button class="button main" ?disabled=${isEmpty} title="A plain letter with the ticked questions" @click=${copy}>Copy as text</button>
      <button class="button" ?disabled=${isEmpty} @click=${() => reports.save('questions', 'xlsx')}>Save as XLSX</button>
      <button class="button" ?disabled=${isEmpty} @click=${() => reports.save('questions', 'csv')}>Save as CSV</button>
      <button class="button" ?disabled=${isEmpty} @click=${() => print()}>Print</button>`;
  }

  #group(questions: readonly [Question, ...Question[]], { leftOut }: AppState): TemplateResult {
    const isOut = questions.every((question) => leftOut.has(questionKey(question)));
    return html`<section class=${isOut ? 'left-out' : ''}>
      <h3>${headingOf(questions[0].panel)}</h3>
      <ol>${questions.map((question) => this.#question(question, leftOut.has(questionKey(question))))}</ol>
    </section>`;
  }

  #question(question: Question, isOut: boolean): TemplateResult {
    const { number, rows, partNumbers, text, because } = question;
    return html`<li class=${isOut ? 'left-out' : ''} data-number=${number}>
      <input class="screen" type="checkbox" .checked=${!isOut} aria-label="Ask question ${number}" title="Ask this question"
        @change=${() => this.commands.reports.toggleQuestion(question)} />
      <span class="number">${number}.</span>
      <div><p>${text}</p>${because.length > 0 ? html`<p class="why">Why it matters: ${because.join('; ')}.</p>` : ''}</div>
      <div class="about">${rows.length === 1 ? 'Row' : 'Rows'} ${rowLinks(rows, this.#showRow)}${partNumbers.length > 0 ? html`<div>${partNumbers.join(', ')}</div>` : ''}</div>
    </li>`;
  }

  readonly #showRow = (row: number) => this.commands.reports.showRow(row);
}

function countWords(all: number, kept: number): string {
  if (all === 0) return 'No questions.';
  const count = all === 1 ? 'One question' : `${all} questions`;
  return kept === all ? `${count}.` : `${count}, ${all - kept} left out of letter and sheet.`;
}

customElements.define('questions-view', QuestionsView);
