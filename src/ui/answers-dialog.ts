import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { cellsOfAnswers } from '../app/answers.ts';
import type { Commands } from '../app/commands.ts';
import { countRows } from '../app/many-cells.ts';
import type { Store } from '../app/store.ts';
import { areAtOdds } from '../core/answers/at-odds.ts';
import type { AnswerCell, AnswerPlan } from '../core/answers/plan-answers.ts';
import type { Verdict } from '../core/model/outcome.ts';
import type { HandedFile, TriedRow } from '../worker/protocol.ts';
import { dialogStyles } from './dialog-styles.ts';
import { shared } from './styles.ts';
import { triedCounts, triedStyles, triedVerdict } from './tried-verdicts.ts';
import { TryController } from './try-controller.ts';

/** More cells of one answer than anybody reads. */
const MOST_CELLS = 20;

/** Answers that have come back before they are filled in: the cells that each would fill, with verdicts before and after. */
export class AnswersDialog extends LitElement {
  static override properties = {
    file: { attribute: false },
    plans: { attribute: false },
    isList: { attribute: false },
    ticked: { state: true },
  };
  declare file: HandedFile | null;
  declare plans: readonly AnswerPlan[];
  /** The file is also a list, and may have been meant as one. */
  declare isList: boolean;
  declare ticked: ReadonlySet<AnswerPlan>;
  store!: Store;
  commands!: Commands;
  #now: ReadonlyMap<number, Verdict> = new Map();
  #tried: ReadonlyMap<number, TriedRow> = new Map();
  readonly #trial = new TryController(this, (cells) => this.commands.tryEdit(cells));

  static override styles = [
    shared,
    dialogStyles,
    triedStyles,
    css`
      dialog {
        width: min(980px, calc(100vw - 48px));
      }
      h2 {
        overflow-wrap: anywhere;
      }
      section {
        display: grid;
        grid-template-columns: 24px minmax(0, 1fr);
        gap: 4px 8px;
        padding: 10px 0 14px;
        border-bottom: 1px solid var(--line);
      }
      section > :not(input) {
        grid-column: 2;
        overflow-wrap: anywhere;
      }
      section label {
        font-size: var(--reading);
      }
      input {
        width: 16px;
        height: 16px;
        margin-top: 3px;
        accent-color: var(--blue);
      }
      table {
        table-layout: fixed;
      }
      th {
        width: 21%;
      }
      th.number,
      td.number {
        width: 48px;
        text-align: right;
      }
      th:nth-child(5) {
        width: 15%;
      }
      footer .as-list {
        margin-right: auto;
      }
    `,
  ];

  constructor() {
    super();
    this.file = null;
    this.plans = [];
    this.isList = false;
    this.ticked = new Set();
  }

  override render(): TemplateResult {
    const count = this.ticked.size;
    return html`<dialog aria-labelledby="title" @close=${() => this.commands.closeDialog()}>
      <div class="head">
        <h2 id="title">Answers in ${this.file?.name ?? ''}</h2>
        <p>What each answer of the sender would fill into the open list. One step, which can be undone. ${this.#sayRest()}</p>
      </div>
      <div class="body">
        ${this.#counts()} ${this.plans.map((plan) => this.#answer(plan))}
      </div>
      <footer>
        ${this.isList ? html`<button class="button as-list" @click=${this.#openAsList}>Open it as a list instead</button>` : nothing}
        <button class="button" @click=${this.#close}>Cancel</button>
        <button class="button main" @click=${this.#apply}>
          ${count === 0 ? 'Keep under Changes only' : `Fill in ${count} ${count === 1 ? 'answer' : 'answers'}`}
        </button>
      </footer>
    </dialog>`;
  }

  #counts(): TemplateResult {
    const { now } = this.#trial;
    if (now) return triedCounts(now.before, now.after);
    return html`<p class="counts soft" role="status">${this.ticked.size > 0 ? 'Judging…' : 'Nothing is ticked: no cell changes.'}</p>`;
  }

  /** What is not ticked, and what goes into no cell. */
  #sayRest(): string {
    const none = this.plans.filter(({ cells }) => cells.length === 0).length;
    const open = this.plans.length - none - this.ticked.size;
    return [
      open > 0 ? `${open} not ticked; it says why.` : '',
      none > 0 ? `${none} ${none === 1 ? 'goes' : 'go'} into no cell.` : '',
      'Changes keeps every answer in the sender’s words.',
    ]
      .filter(Boolean)
      .join(' ');
  }

  #answer(plan: AnswerPlan): TemplateResult {
    const { question, cells, notes, heading } = plan;
    const id = `answer-${this.plans.indexOf(plan)}`;
    return html`<section>
      <input id=${id} type="checkbox" .checked=${this.ticked.has(plan)} ?disabled=${cells.length === 0} @change=${() => this.#toggle(plan)} />
      <label for=${id}>${question.number ? `${question.number}. ` : ''}${question.text || 'No question'}</label>
      <div class="soft">${[question.panel, question.partNumbers].filter(Boolean).join(' · ')}</div>
      <div>Answer: <b>${question.answer || '–'}</b></div>
      ${notes.map((note) => html`<div class="unknown">${note}</div>`)}
      ${cells.length > 0 ? this.#cells(plan, heading) : nothing}
    </section>`;
  }

  #cells(plan: AnswerPlan, heading: string): TemplateResult {
    const more = plan.cells.length - MOST_CELLS;
    return html`<table>
      <thead>
        <tr><th scope="col" class="number">Row</th><th scope="col">Column</th><th scope="col">Before</th><th scope="col">After</th><th scope="col">Now</th><th scope="col">Afterwards</th></tr>
      </thead>
      <tbody>${plan.cells.slice(0, MOST_CELLS).map((cell) => this.#cell(cell, heading, this.ticked.has(plan)))}</tbody>
    </table>
    ${more > 0 ? html`<p class="soft">And ${countRows(more)} more.</p>` : nothing}`;
  }

  #cell({ row, before, text }: AnswerCell, heading: string, isTicked: boolean): TemplateResult {
    const tried = this.#tried.get(row);
    const after = isTicked ? (tried ? triedVerdict(tried.after) : '…') : html`<span class="soft">stays</span>`;
    return html`<tr>
      <td class="number">${row}</td><td>${heading}</td><td>${before || '–'}</td><td>${text}</td>
      <td>${triedVerdict(this.#now.get(row) ?? null)}</td><td>${after}</td>
    </tr>`;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    this.#tried = new Map(this.#trial.now?.rows.map((row) => [row.row, row]));
    if (!changed.has('plans')) return;
    this.#now = new Map(this.store.state.list?.lines.map(({ row, verdict }) => [row, verdict]));
    this.#choose(new Set(this.plans.filter(({ isSure }) => isSure)));
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('dialog')?.showModal();
  }

  /** Of answers that contradict each other one at most is ticked. */
  #toggle(plan: AnswerPlan): void {
    const ticked = new Set([...this.ticked].filter((one) => one === plan || !areAtOdds(one, plan)));
    if (!ticked.delete(plan)) ticked.add(plan);
    this.#choose(ticked);
  }

  /** Answers act together on verdicts, so all that are ticked are tried as one. */
  #choose(ticked: ReadonlySet<AnswerPlan>): void {
    this.ticked = ticked;
    this.#trial.forget();
    if (ticked.size > 0) void this.#trial.begin(cellsOfAnswers(ticked));
  }

  readonly #close = () => this.renderRoot.querySelector('dialog')?.close();

  readonly #openAsList = async () => {
    const { file } = this;
    this.#close();
    if (file) await this.commands.openAsList(file);
  };

  readonly #apply = async () => {
    const { file, plans, ticked } = this;
    this.#close();
    await this.commands.fillAnswers(file?.name ?? '', plans, ticked);
  };
}

customElements.define('answers-dialog', AnswersDialog);
