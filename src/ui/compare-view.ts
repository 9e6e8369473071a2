import { css, html, type TemplateResult } from 'lit';
import { type ComparedState, carriedOver } from '../app/compare-deeds.ts';
import type { AppState } from '../app/state.ts';
import { footOf } from '../core/rollup/report.ts';
import { SAFETY_SHORT } from '../core/say/safety.ts';
import { CHANGE_KINDS, type ChangeKind } from './compare/change-kinds.ts';
import './compare/change-table.ts';
import './compare/choose-earlier.ts';
import { comparedLine, sameWords } from './compare/compared-words.ts';
import { LISTS_AND_PROJECTS, pickFiles } from './pick-files.ts';
import { PrintPage } from './print-page.ts';
import { demoMark, undoButtons, waiting } from './report-parts.ts';
import { reportStyles } from './report-styles.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';

/** The open list against an earlier one: what is newly wrong, what became of concessions, and every other change by its kind. */
export class CompareView extends StoreElement {
  static override properties = { chooses: { state: true } };
  /** The user looks for another earlier list. */
  declare chooses: boolean;
  #last: ComparedState | null = null;

  readonly page = new PrintPage(this, () => {
    const { compared } = this.store.state;
    if (!compared) return null;
    const head = `Compared: ${compared.name} with ${compared.shown.after.file}`;
    return { orientation: 'landscape', head, foot: footOf(compared.list, [SAFETY_SHORT]) };
  });

  static override styles = [
    shared,
    reportStyles,
    css`
      .line {
        margin-top: 12px;
        font-size: var(--reading);
      }
      .short {
        margin: 12px 0 0;
        padding-left: 18px;
      }
      .kinds {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        margin-top: 20px;
      }
      .kinds button {
        min-height: 32px;
        padding: 3px 12px;
        border: 1px solid var(--line);
        border-radius: 5px;
        background: var(--sheet);
      }
      .kinds button:hover {
        border-color: var(--soft);
      }
      .kinds button[aria-pressed='true'] {
        border-color: var(--blue);
        box-shadow: inset 0 0 0 1px var(--blue);
        background: var(--blue-ground);
        color: var(--blue);
      }
      .kinds b {
        font-weight: 600;
      }
      choose-earlier {
        margin-top: 8px;
      }
      .note {
        margin-top: 10px;
        color: var(--soft);
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
    this.chooses = false;
  }

  protected override willUpdate(): void {
    const { compared } = this.store.state;
    if (compared?.shown !== this.#last?.shown) this.chooses = false;
    this.#last = compared;
  }

  override render(): TemplateResult {
    const { state } = this.store;
    if (!state.list) return waiting('Compare');
    if (!state.compared || this.chooses) return this.#choice(state);
    return this.#content(state, state.compared);
  }

  #choice({ shelf, history, compared }: AppState): TemplateResult {
    const edited = history.done.some(({ after }) => 'cells' in after);
    return html`<div class="page" aria-busy="false">
      <div class="top">
        <h2>Compare</h2>
        ${compared ? html`<button class="button" @click=${this.#goBack}>Back to the comparison</button>` : ''}
      </div>
      <choose-earlier .kept=${shelf} .edited=${edited} .busy=${this.commands.comparing.isUnderWay}
        @choose-file=${this.#pick} @choose-as-opened=${() => this.commands.comparing.withAsOpened()}></choose-earlier>
      <p class="words">Both lists are judged by the catalogues and shop settings in use now. ${SAFETY_SHORT}</p>
    </div>`;
  }

  #content(state: AppState, compared: ComparedState): TemplateResult {
    const { shown, list } = compared;
    const kinds = CHANGE_KINDS.filter((kind) => kind.count(shown) > 0);
    const alone = kinds.find(({ id }) => id === compared.kind);
    const isBehind = list !== state.list;
    return html`<div class="page" aria-busy=${isBehind}>
      <div class="top">
        <div>
          <h2>Compare</h2>
          ${demoMark(list)}
        </div>
        <div class="buttons screen">${this.#buttons(state)}</div>
      </div>
      <p class="line">${comparedLine(compared)}</p>
      <p class="note">Both judged by ${list.catalogues.map(({ name }) => name).join(', ')} and the shop settings in use now.
        <span class="screen" role="status">${isBehind ? 'The list has changed: comparing again…' : 'Compared again by itself when the list changes.'}</span></p>
      ${shown.notices.map((notice) => html`<p class="note">${notice}</p>`)}
      ${kinds.length > 0 || shown.inShort.length > 1 ? html`<ul class="short">${shown.inShort.map((sentence) => html`<li>${sentence}</li>`)}</ul>` : ''}
      ${kinds.length > 1 ? this.#kinds(kinds, compared) : ''}
      ${alone ? html`<p class="paper">Of this comparison only “${alone.title}” is printed here.</p>` : ''}
      ${kinds.length === 0 ? html`<p class="empty">${sameWords(shown)}</p>` : ''}
      ${(alone ? [alone] : kinds).map((kind) => this.#group(kind, compared, state))}
      <p class="words screen">${SAFETY_SHORT}</p>
    </div>`;
  }

  #buttons(state: AppState): TemplateResult {
    const { comparing } = this.commands;
    return html`${undoButtons(state, this.commands)}
      <button class="button" @click=${() => comparing.save('csv')}>Save as CSV</button>
      <button class="button" @click=${() => comparing.save('xlsx')}>Save as XLSX</button>
      <button class="button" @click=${() => print()}>Print</button>
      <button class="button" @click=${this.#chooseAnother}>Another earlier list…</button>`;
  }

  /** Pressed once more, a kind gives way to all of them. */
  #kinds(kinds: readonly ChangeKind[], { shown, kind: alone }: ComparedState): TemplateResult {
    const show = (id: string) => this.commands.comparing.showKind(id === alone ? null : id);
    return html`<div class="kinds screen" role="group" aria-label="Kinds of change">
      ${kinds.map(({ id, chip, count }) => html`<button data-kind=${id} aria-pressed=${id === alone} title=${id === alone ? 'Show all kinds again' : 'Show only these'} @click=${() => show(id)}><b>${count(shown)}</b> ${chip}</button>`)}
    </div>`;
  }

  #group(kind: ChangeKind, compared: ComparedState, state: AppState): TemplateResult {
    return html`<change-table .kind=${kind} .compared=${compared.shown} .onRow=${this.#showRow}>
      ${kind.id === 'concessions' ? this.#takeOver(compared, state) : ''}
    </change-table>`;
  }

  #takeOver(compared: ComparedState, { list, concessions }: AppState): TemplateResult | '' {
    if (!list || !compared.shown.concessions.some(({ state }) => state === 'carried')) return '';
    const count = carriedOver(compared, compared.list, concessions).length;
    if (count === 0) return html`<span class="soft screen">Those carried over stand in this list.</span>`;
    const name = count === 1 ? 'Take over one concession' : `Take over ${count} concessions`;
    return html`<button class="button main screen" ?disabled=${compared.list !== list} title="Puts those carried over into this list, as one step that can be undone"
      @click=${() => this.commands.comparing.takeOver()}>${name}</button>`;
  }

  readonly #showRow = (row: number) => this.commands.reports.showRow(row);

  readonly #chooseAnother = () => {
    this.chooses = true;
  };

  readonly #goBack = () => {
    this.chooses = false;
  };

  readonly #pick = async () => {
    const [file] = await pickFiles(false, LISTS_AND_PROJECTS);
    if (file) await this.commands.comparing.withFile({ name: file.name, data: file });
  };
}

customElements.define('compare-view', CompareView);
