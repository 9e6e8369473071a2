import type { AnswerSheet } from '../core/answers/read-answers.ts';
import type { ListOptions } from '../core/intake/build-list.ts';
import { type ColumnChoices, NO_CHOICES } from '../core/intake/columns.ts';
import { headingKey } from '../core/intake/heading-set.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { TextReading } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { ReadBack } from '../core/readback/read-back.ts';
import type { OnProgress, WorkerClient } from '../worker/client.ts';
import type { CellEdit, HandedFile } from '../worker/protocol.ts';
import { hasChoices } from './column-choices.ts';
import { recallColumns, rememberColumns } from './column-memory.ts';
import { CurrentWorker } from './current-worker.ts';
import { deedOfCells, deedOfTakenOver, sayNotDone, sayTakenOver } from './deeds.ts';
import { guardWork } from './guard-work.ts';
import { addStep, type Change, type Deed, type History, NO_HISTORY } from './history.ts';
import { OpenCatalogues } from './open-catalogues.ts';
import { type OpenedFile, openedFile } from './opened-file.ts';
import { cellsAfter, type OpenWork, type Project } from './project.ts';
import { noticeShop } from './shop-notice.ts';
import { showAnswers, showOwnAnswers } from './show-answers.ts';
import { weaveRows, withConceded, withRows } from './state.ts';
import type { Store } from './store.ts';
import type { Surroundings } from './surroundings.ts';
import { Turns } from './turns.ts';
import { withHistory } from './with-history.ts';

/**
 * The open list with its worker, the user's choices on how to read it, its catalogues and its history. Each list has a worker of
 * its own: a new list is read in a fresh one, which takes over only when all went well, so that cancelling or a bad file leaves
 * the open list as it was.
 */
export class OpenDocument {
  readonly #store: Store;
  readonly #around: Surroundings;
  readonly #workers: CurrentWorker;
  /** What the open list, and the next one, is judged by. */
  readonly catalogues: OpenCatalogues;
  #opened: OpenedFile | null = null;
  #history: History = NO_HISTORY;
  readonly #turns = new Turns();
  /** The history as it was when last saved to a project file or read from one. */
  #filed: History | null = null;

  constructor(store: Store, around: Surroundings) {
    this.#store = store;
    this.#around = around;
    this.#workers = new CurrentWorker(around.startWorker);
    this.catalogues = new OpenCatalogues(around, this.#workers, {
      progress: (what) => this.progress(what),
      guard: (work) => this.guard(work),
      show: ({ list, catalogues }) => (list ? this.#show(list, catalogues) : store.set({ catalogues })),
    });
  }

  /** The worker of the open list; null before the first one. */
  get worker(): WorkerClient | null {
    return this.#workers.current;
  }

  get history(): History {
    return this.#history;
  }

  /** What the user chose for the columns, now or for an earlier list with these headings. */
  get columns(): ColumnChoices {
    return this.#opened?.columns ?? NO_CHOICES;
  }

  /** The work with this history stands in a project file. */
  markFiled(history: History): void {
    this.#filed = history;
  }

  /** What is open, besides the state; null before the first list. */
  get work(): OpenWork | null {
    if (!this.#opened) return null;
    const { list, table, reading, columns, kept } = this.#opened;
    return {
      list,
      catalogues: this.catalogues.files,
      options: { ...table, ...columns, ...reading },
      history: this.#history,
      isFiled: this.#filed === this.#history,
      kept,
    };
  }

  /** Reads the open file again in another way. */
  async reopen(options: ListOptions, reading = this.#opened?.reading): Promise<void> {
    const list = this.#opened?.list;
    if (!list) return;
    // A copy stands for a document of its own: what was done before stays kept as it was.
    const file = this.#history === NO_HISTORY ? list : { ...list };
    await this.guard(() => this.open(file, options, reading));
  }

  /** Ends the work under way; whatever was open stays as it was. */
  cancel(): void {
    this.#workers.cancel();
    this.#store.set({ work: null });
  }

  /**
   * Reads a list in a fresh worker and shows it. With `looks`, a question sheet that has come back leaves the open list where it is:
   * what its answers would fill in is shown, and so it is for answers in the list's own workbook.
   */
  async open(file: HandedFile, options: ListOptions, reading: TextReading = {}, looks = false): Promise<void> {
    const catalogues = await this.catalogues.settled();
    const { shop } = this.#store.state;
    const remembered = recallColumns(this.#around.memory);
    let own: AnswerSheet | null = null;
    await this.#workers.openInFresh(async (worker) => {
      const onProgress = this.progress(`Opening ${file.name}`);
      const sheet = looks ? (await worker.ask('answers', { list: file, reading }, onProgress)).sheet : null;
      if (sheet && (await showAnswers(this.#store, this.worker, file, sheet))) return null;
      if (sheet && sheet.answered.length > 0) own = sheet;
      const ask = { list: file, options, reading, catalogues, shop, remembered };
      const answer = await worker.ask('open', ask, onProgress);
      return () => {
        this.#opened = openedFile(file, options, reading, answer.columns);
        this.#setHistory(NO_HISTORY);
        this.#show(answer.list, answer.catalogues);
        this.#takeBack(answer.back);
        const columnsBy = hasChoices(answer.columns) ? 'memory' : null;
        this.#store.set({ view: 'list', columnsBy, filter: new Set(), focus: null, search: '', selectedRow: null });
      };
    });
    if (own) await showOwnAnswers(this.#store, this.worker, file, own);
  }

  /** What was accepted before an export stands again when the workbook comes back, as a step that can be taken back; what came is told. */
  #takeBack(back: ReadBack): void {
    const { concessions, changes, notices } = back;
    this.#store.set({ changesBefore: changes });
    if (concessions.length > 0) {
      const step = { ...deedOfTakenOver(concessions), when: new Date().toISOString(), by: this.#store.state.userName };
      this.#setHistory(addStep(NO_HISTORY, step));
    }
    const text = sayTakenOver(back);
    if (text !== '') this.#store.set({ message: { kind: notices.length > 0 ? 'error' : 'done', text } });
  }

  /** Opens kept work: list, edits, undo and redo as they were. */
  async restore(project: Project): Promise<void> {
    const { list, options, shop, steps, undone, selectedRow, kept } = project;
    const catalogues = await this.catalogues.orDemo(project.catalogues);
    await this.#workers.openInFresh(async (worker) => {
      const onProgress = this.progress(`Opening ${list.name}`);
      const ask = { list, options, reading: options, catalogues, shop, remembered: [] };
      const answer = await worker.ask('open', ask, onProgress);
      const edited = await worker.ask('edit', { cells: cellsAfter(steps) }, onProgress);
      return () => {
        const message = noticeShop(this.#store.state.shop, shop);
        this.#opened = openedFile(list, options, options, answer.columns, kept);
        this.catalogues.files = project.catalogues;
        this.#show(answer.list, answer.catalogues);
        this.#store.set(withRows(this.#store.state, edited.rows, edited.totals));
        const columnsBy = hasChoices(answer.columns) ? 'user' : null;
        const filter = new Set(project.filter);
        this.#store.set({ view: 'list', columnsBy, shop, filter, focus: null, search: '', selectedRow, message });
        this.#store.set({ changesBefore: answer.back.changes });
        this.#setHistory({ done: steps, undone });
      };
    });
  }

  /**
   * One step after the other: each is made from what the one before has left. A step for a list that is gone is dropped. Where none is
   * under way it begins at once: the worker is at it while the page still moves on to the next cell.
   */
  inTurn(work: () => Promise<void>): Promise<void> {
    const list = this.#opened?.list;
    return this.#turns.take(async () => {
      if (list === this.#opened?.list) await work();
    });
  }

  /** Does something as one step that can be taken back. */
  async do(deed: Deed): Promise<void> {
    const step = { ...deed, when: new Date().toISOString(), by: this.#store.state.userName };
    await this.replay(deed.after, addStep(this.#history, step), sayNotDone(deed));
  }

  /** Makes a change and puts the history that goes with it in place. `ifNot`: what the user is told besides where it cannot be made. */
  async replay(change: Change, history: History, ifNot = ''): Promise<void> {
    await this.guard(async () => {
      if ('cells' in change) await this.#edit(change.cells);
      else if ('columns' in change) await this.#readColumns(change.columns);
      else if ('parts' in change) await this.catalogues.editParts(change.parts);
      else if ('shop' in change) await this.judgeBy({ ...change.shop, units: this.#store.state.shop.units });
      this.#setHistory(history);
    }, ifNot);
  }

  /** Judges by other settings. */
  async judgeBy(shop: ShopSettings): Promise<void> {
    this.#store.set({ shop });
    const answer = await this.worker?.ask('shop', { shop }, this.progress('Judging again'));
    if (answer) this.#show(answer.list);
  }

  async #readColumns(columns: ColumnChoices): Promise<void> {
    const answer = await this.worker?.ask('columns', columns, this.progress('Reading the columns'));
    if (!answer || !this.#opened) return;
    this.#opened = { ...this.#opened, columns };
    this.#show(answer.list);
    this.#store.set({ columnsBy: hasChoices(columns) ? 'user' : null });
    const key = headingKey(answer.list.columns.map(({ heading }) => heading));
    rememberColumns(this.#around.memory, key, columns);
  }

  async #edit(cells: readonly CellEdit[]): Promise<void> {
    const answer = await this.worker?.ask('edit', { cells });
    if (answer) this.#store.set(withRows(this.#store.state, answer.rows, answer.totals));
  }

  #setHistory(history: History): void {
    this.#history = history;
    this.#store.set(withHistory(this.#store.state, history));
  }

  #show(list: AuditedList, catalogues: readonly Catalogue[] = this.#store.state.catalogues): void {
    const rows = withConceded(weaveRows(list), this.#store.state.concessions);
    this.#store.set({ list, rows, catalogues, message: null });
  }

  /** Shows that something is under way; the answer reports how far it is. */
  progress(what: string): OnProgress {
    const canCancel = this.#workers.isOpening;
    this.#store.set({ work: { what, phase: 'reading', share: 0, canCancel } });
    return (phase, share) => this.#store.set({ work: { what, phase, share, canCancel } });
  }

  /** Runs one piece of work; a refusal becomes a sentence on screen and changes nothing else. `ifNot` is said behind it. */
  async guard(work: () => Promise<void>, ifNot = ''): Promise<void> {
    await guardWork(this.#store, work, ifNot);
  }

  /** Sets the cells that do not hold their text yet, as one step; one with something to tell is made even without a cell. */
  async editCells(cells: readonly CellEdit[], name: string, told?: Deed['told']): Promise<void> {
    const deed = deedOfCells(this.#store.state.rows, cells, name, told);
    if (deed) await this.do(deed);
  }
}
