import type { AuditedList } from '../core/model/audited.ts';
import type { PressPanel } from '../core/rollup/press.ts';
import { forgetOrder, moveStep, type PressOrder } from '../core/rollup/press-order.ts';
import { headingOf, type Question, questionKey } from '../core/rollup/questions.ts';
import type { ExportHow, ReportAsk } from '../worker/protocol.ts';
import { changesToTell } from './change-records.ts';
import type { OpenDocument } from './open-document.ts';
import { outputName } from './output-name.ts';
import type { View } from './state.ts';
import type { Store } from './store.ts';
import type { Surroundings } from './surroundings.ts';

const ROLLUP_VIEWS: ReadonlySet<View> = new Set(['purchasing', 'press', 'questions']);
const FILE_ENDS = { purchase: 'purchase', press: 'press-sheet', questions: 'questions' } as const;

/** How the list is to be exported. */
export interface ExportChoice {
  readonly how: ExportHow;
  /** CSV: cells that begin like a formula get an apostrophe. */
  readonly escapes: boolean;
}

/**
 * What the list comes to, and what leaves the app as a file or on paper. While one of its views is shown, the worker is asked for it whenever the list has changed; the answer is
 * kept with the list that it belongs to, and one that comes after the next change is dropped.
 */
export class Reports {
  readonly #store: Store;
  readonly #around: Surroundings;
  readonly #document: OpenDocument;
  /** The file that questions were left out for. */
  #file: object | null = null;
  #asked: AuditedList | null = null;
  /** The view to go back to from the page that is printed. */
  #before: View = 'list';

  constructor(store: Store, around: Surroundings, document: OpenDocument) {
    this.#store = store;
    this.#around = around;
    this.#document = document;
    store.addEventListener('change', () => this.#notice());
  }

  /** Shows one row in the list, whatever the list was narrowed down to. */
  showRow(row: number): void {
    const { filter, focus, rows } = this.#store.state;
    const verdict = rows.find((one) => one.row === row)?.line?.verdict;
    const isFiltered = filter.size > 0 && !(verdict && filter.has(verdict));
    const isOutside = focus !== null && !focus.rows.has(row);
    const widened = { ...(isFiltered && { filter: new Set<never>() }), ...(isOutside && { focus: null }) };
    this.#store.set({ view: 'list', selectedRow: row, search: '', ...widened });
  }

  /** Puts a step of a panel in another place, as one undoable step; places are counted from 0. */
  async movePressStep(panel: PressPanel, from: number, to: number): Promise<void> {
    const { partNumber } = panel.steps[from] ?? { partNumber: 'a part' };
    const name = `press ${partNumber} as number ${to + 1} in ${placeName(panel)}`;
    await this.#setOrder(name, (order) => moveStep(order, panel, from, to));
  }

  /** Goes back to the suggested order of a panel. */
  async forgetPressOrder(panel: PressPanel): Promise<void> {
    const name = `press ${placeName(panel)} in the suggested order`;
    await this.#setOrder(name, (order) => forgetOrder(order, panel));
  }

  async #setOrder(name: string, change: (order: PressOrder) => PressOrder): Promise<void> {
    await this.#document.inTurn(async () => {
      const { pressOrder } = this.#store.state;
      await this.#document.do({ name, after: { pressOrder: change(pressOrder) }, before: { pressOrder } });
    });
  }

  /** Leaves a question out of the letter and the sheet, or takes it in again. */
  toggleQuestion(question: Question): void {
    const leftOut = new Set(this.#store.state.leftOut);
    if (!leftOut.delete(questionKey(question))) leftOut.add(questionKey(question));
    this.#store.set({ leftOut });
  }

  /** Saves one report as a file. */
  async save(which: ReportAsk['which'], format: ReportAsk['format']): Promise<void> {
    const { list, pressOrder, leftOut } = this.#store.state;
    const { worker } = this.#document;
    if (!list || !worker) return;
    await this.#document.guard(async () => {
      const ask = { which, format, pressOrder, leftOut: [...leftOut] };
      const { bytes } = await worker.ask('report', ask, this.#document.progress('Writing the file'));
      const name = outputName(list.file, `${FILE_ENDS[which]}.${format}`);
      this.#around.save(name, bytes);
      this.#store.set({ message: { kind: 'done', text: `Saved as ${name}.` } });
    });
  }

  /** Writes the judged list into the workbook that it came in, into a new one where that is wanted or cannot be done otherwise, or as CSV. */
  async exportList({ how, escapes }: ExportChoice): Promise<void> {
    const { list } = this.#store.state;
    const { worker } = this.#document;
    if (!list || !worker) return;
    await this.#document.guard(async () => {
      const { concessions, pressOrder } = this.#store.state;
      const work = { concessions, changes: changesToTell(this.#store.state), pressOrder };
      const ask = { date: this.#around.today(), work, how, escapes };
      const { bytes, refused } = await worker.ask('export', ask, this.#document.progress('Writing the file'));
      const name = exportName(list.file, refused === undefined ? how : 'new');
      this.#around.save(name, bytes);
      this.#store.set({ message: { kind: 'done', text: `Saved as ${name}.${whatIsMissing(list, how, refused)}` } });
    });
  }

  /** Says how something went that the page did by itself, such as copying. */
  say(text: string, kind: 'done' | 'error' = 'done'): void {
    this.#store.set({ message: { kind, text } });
  }

  /** Shows the findings as a page that prints itself. */
  printFindings(): void {
    const { view, list } = this.#store.state;
    if (!list || view === 'findings') return;
    this.#before = view;
    this.#store.set({ view: 'findings', message: null });
  }

  /** Goes back to what was shown before the page was printed. */
  leaveFindings(): void {
    if (this.#store.state.view === 'findings') this.#store.set({ view: this.#before });
  }

  get today(): string {
    return this.#around.today();
  }

  #notice(): void {
    const { view, list } = this.#store.state;
    const file = this.#document.work?.list ?? null;
    if (file !== this.#file) {
      this.#file = file;
      this.#store.set({ rollups: null, leftOut: new Set() });
    }
    if (!list || !ROLLUP_VIEWS.has(view) || list === this.#asked) return;
    this.#asked = list;
    void this.#ask(list);
  }

  async #ask(list: AuditedList): Promise<void> {
    try {
      const answer = await this.#document.worker?.ask('rollups', {});
      if (answer && list === this.#store.state.list) this.#store.set({ rollups: { list, ...answer } });
    } catch (error) {
      // A list that has been replaced takes its worker with it; nobody waits for that answer.
      if (list === this.#store.state.list) this.say(error instanceof Error ? error.message : String(error), 'error');
    }
  }
}

function placeName({ panel }: PressPanel): string {
  const heading = headingOf(panel);
  return heading.charAt(0).toLowerCase() + heading.slice(1);
}

/** The user's own workbook keeps its kind, because one with macros opens under no other ending. */
function exportName(file: string, how: ExportHow): string {
  const ending = how === 'in-place' ? /\.xl[st][xm]$/i.exec(file)?.[0] : undefined;
  return outputName(file, `judged${ending ?? (how === 'csv' ? '.csv' : '.xlsx')}`);
}

/** What of the list and the work on it the file does not hold, in a sentence; nothing where it holds all. */
function whatIsMissing({ sheets }: AuditedList, how: ExportHow, refused: string | undefined): string {
  if (refused !== undefined) return ` It is a new workbook, because yours could not be written into: ${refused}`;
  if (how === 'csv') return ' Findings, reports and changes are not in it; a workbook has them.';
  return how === 'new' && sheets.length > 1 ? ' Your other sheets are not in it.' : '';
}
