import type { AnswerPlan } from '../core/answers/plan-answers.ts';
import type { AnswerSheet } from '../core/answers/read-answers.ts';
import { itemOfRow } from '../core/caching/in-order.ts';
import type { ListOptions } from '../core/intake/build-list.ts';
import { type ColumnChoices, NO_CHOICES } from '../core/intake/columns.ts';
import { headingKey } from '../core/intake/heading-set.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import { type TextReading, Unreadable } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { ReadBack } from '../core/readback/read-back.ts';
import { type OnProgress, Refused, type WorkerClient } from '../worker/client.ts';
import type { CellEdit, HandedFile } from '../worker/protocol.ts';
import { areForAnotherList, isForOpenList, sayAnotherList } from './answers.ts';
import { usersFiles, withPartEdits } from './catalogue-files.ts';
import { hasChoices } from './column-choices.ts';
import { recallColumns, rememberColumns } from './column-memory.ts';
import { deedOfTakenOver, sayTakenOver } from './deeds.ts';
import {
  addStep,
  type Change,
  concessionsAfter,
  type Deed,
  type History,
  NO_HISTORY,
  type PartsChange,
  pressOrderAfter,
} from './history.ts';
import { cellsAfter, type KeptFields, NOTHING_KEPT, type OpenWork, type Project } from './project.ts';
import { noticeShop } from './shop-notice.ts';
import { weaveRows, withConceded, withRows } from './state.ts';
import type { Store } from './store.ts';
import type { Surroundings } from './surroundings.ts';

/**
 * The open list with its worker, the user's choices on how to read it, its catalogues and its history. Each list has a worker of
 * its own: a new list is read in a fresh one, which takes over only when all went well, so that cancelling or a bad file leaves
 * the open list as it was.
 */
export class OpenDocument {
  readonly #store: Store;
  readonly #around: Surroundings;
  #worker: WorkerClient | null = null;
  #opening: WorkerClient | null = null;
  #listFile: HandedFile | null = null;
  /** What the user chose on where the list is in the open file. */
  #table: Pick<ListOptions, 'sheet' | 'headerRow'> = {};
  /** What the user chose on how to decode and cut the open file. */
  #reading: TextReading = {};
  /** What the user chose for the columns, now or for an earlier list with these headings. */
  #columns: ColumnChoices = NO_CHOICES;
  #catalogueFiles: readonly HandedFile[] = [];
  #catalogueTurn: Promise<void> = Promise.resolve();
  #history: History = NO_HISTORY;
  #turn: Promise<void> = Promise.resolve();
  /** The history as it was when last saved to a project file or read from one. */
  #filed: History | null = null;
  #kept: KeptFields = NOTHING_KEPT;

  constructor(store: Store, around: Surroundings) {
    this.#store = store;
    this.#around = around;
  }

  /** The worker of the open list; null before the first one. */
  get worker(): WorkerClient | null {
    return this.#worker;
  }

  get history(): History {
    return this.#history;
  }

  get columns(): ColumnChoices {
    return this.#columns;
  }

  /** The work with this history stands in a project file. */
  markFiled(history: History): void {
    this.#filed = history;
  }

  /** What is open, besides the state; null before the first list. */
  get work(): OpenWork | null {
    if (!this.#listFile) return null;
    return {
      list: this.#listFile,
      catalogues: this.#catalogueFiles,
      options: { ...this.#table, ...this.#columns, ...this.#reading },
      history: this.#history,
      isFiled: this.#filed === this.#history,
      kept: this.#kept,
    };
  }

  /** Reads the open file again in another way. */
  async reopen(options: ListOptions, reading: TextReading = this.#reading): Promise<void> {
    if (!this.#listFile) return;
    // A copy stands for a document of its own: what was done before stays kept as it was.
    const file = this.#history === NO_HISTORY ? this.#listFile : { ...this.#listFile };
    await this.guard(() => this.open(file, options, reading));
  }

  /** Ends the work under way; whatever was open stays as it was. */
  cancel(): void {
    this.#opening?.stop();
    this.#opening = null;
    this.#store.set({ work: null });
  }

  /**
   * Reads a list in a fresh worker and shows it. With `looks`, a question sheet that has come back leaves the open list where it is:
   * what its answers would fill in is shown, and so it is for answers in the list's own workbook.
   */
  async open(file: HandedFile, options: ListOptions, reading: TextReading = {}, looks = false): Promise<void> {
    await this.#catalogueTurn;
    const catalogues = await this.#orDemo(this.#catalogueFiles);
    const { shop } = this.#store.state;
    const remembered = recallColumns(this.#around.memory);
    let own: AnswerSheet | null = null;
    await this.#openInFreshWorker(file.name, async (worker, onProgress) => {
      const sheet = looks ? (await worker.ask('answers', { list: file, reading }, onProgress)).sheet : null;
      if (sheet && (await this.#showAnswers(file, sheet))) return null;
      if (sheet && sheet.answered.length > 0) own = sheet;
      const ask = { list: file, options, reading, catalogues, shop, remembered };
      const answer = await worker.ask('open', ask, onProgress);
      return () => {
        this.#takeOver(file, options, reading, answer.columns);
        this.#setHistory(NO_HISTORY);
        this.#show(answer.list, answer.catalogues);
        this.#takeBack(answer.back);
        const columnsBy = hasChoices(answer.columns) ? 'memory' : null;
        this.#store.set({ view: 'list', columnsBy, filter: new Set(), focus: null, search: '', selectedRow: null });
      };
    });
    if (own) await this.#showOwnAnswers(file, own);
  }

  /** Shows what the answers of a file would fill into the open list; false for a file that is to be opened as a list. */
  async #showAnswers(file: HandedFile, sheet: AnswerSheet): Promise<boolean> {
    if (!isForOpenList(file.name, sheet, this.#worker !== null)) return false;
    const plans = await this.#planAnswers(sheet, false);
    if (!areForAnotherList(plans)) {
      this.#store.set({ dialog: { kind: 'answers', file, plans, isList: !sheet.isAlone } });
      return true;
    }
    if (sheet.isAlone) throw new Unreadable(sayAnotherList(file.name));
    return false;
  }

  /** Answers in the list's own workbook are shown while there is anything to fill in. */
  async #showOwnAnswers(file: HandedFile, sheet: AnswerSheet): Promise<void> {
    const plans = await this.#planAnswers(sheet, true);
    if (plans.some(({ cells }) => cells.length > 0))
      this.#store.set({ dialog: { kind: 'answers', file, plans, isList: false } });
  }

  async #planAnswers({ answered }: AnswerSheet, areOwn: boolean): Promise<readonly AnswerPlan[]> {
    return (await this.#worker?.ask('planAnswers', { answered, areOwn }))?.plans ?? [];
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
    const catalogues = await this.#orDemo(project.catalogues);
    await this.#openInFreshWorker(list.name, async (worker, onProgress) => {
      const ask = { list, options, reading: options, catalogues, shop, remembered: [] };
      const answer = await worker.ask('open', ask, onProgress);
      const edited = await worker.ask('edit', { cells: cellsAfter(steps) }, onProgress);
      return () => {
        const message = noticeShop(this.#store.state.shop, shop);
        this.#takeOver(list, options, options, answer.columns, kept);
        this.#catalogueFiles = project.catalogues;
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

  /** Opens something in a worker of its own; `open` asks for what it needs and gives back how to take it over, or null to leave what is open. */
  async #openInFreshWorker(
    name: string,
    open: (worker: WorkerClient, onProgress: OnProgress) => Promise<(() => void) | null>,
  ): Promise<void> {
    this.#opening?.stop();
    const worker = this.#around.startWorker();
    this.#opening = worker;
    try {
      const takeOver = await open(worker, this.progress(`Opening ${name}`));
      if (!takeOver) return;
      this.#worker?.stop();
      this.#worker = worker;
      takeOver();
    } finally {
      if (this.#worker !== worker) worker.stop();
      if (this.#opening === worker) this.#opening = null;
    }
  }

  #takeOver(
    file: HandedFile,
    { sheet, headerRow }: ListOptions,
    { encoding, delimiter }: TextReading,
    columns: ColumnChoices,
    kept: KeptFields = NOTHING_KEPT,
  ): void {
    this.#listFile = file;
    this.#table = { ...(sheet !== undefined && { sheet }), ...(headerRow !== undefined && { headerRow }) };
    this.#reading = { ...(encoding !== undefined && { encoding }), ...(delimiter !== undefined && { delimiter }) };
    this.#columns = columns;
    this.#kept = kept;
  }

  /** One change of the catalogues after the other: each is made to those that the one before has left. */
  useCatalogues(change: (loaded: readonly HandedFile[]) => readonly HandedFile[]): Promise<void> {
    return this.#inCatalogueTurn(() => this.guard(() => this.#judgeByCatalogues(change(this.#catalogueFiles))));
  }

  #inCatalogueTurn(work: () => Promise<void>): Promise<void> {
    const done = this.#catalogueTurn.then(work);
    this.#catalogueTurn = done.catch(() => {});
    return done;
  }

  async #judgeByCatalogues(files: readonly HandedFile[]): Promise<void> {
    const catalogues = await this.#orDemo(files);
    await this.#withWorker(async (worker) => {
      const answer = await worker.ask('catalogues', { catalogues }, this.progress('Judging by the catalogue'));
      if (answer.list) this.#show(answer.list, answer.catalogues);
      else this.#store.set({ catalogues: answer.catalogues });
      this.#catalogueFiles = usersFiles(files);
    });
  }

  /** Edits of a catalogue that is not loaded any more have gone with it: the step is passed over. */
  async #editParts(change: PartsChange): Promise<void> {
    const loaded = await this.#orDemo(this.#catalogueFiles);
    if (loaded.some(({ name }) => name === change.catalogue))
      await this.#judgeByCatalogues(withPartEdits(loaded, change));
  }

  /** The files of the catalogues in their order of rank; that of the demo catalogue where it stands in. */
  async catalogueFiles(): Promise<readonly HandedFile[]> {
    await this.#catalogueTurn;
    return this.#orDemo(this.#catalogueFiles);
  }

  /** Whether the user has loaded no catalogue. */
  get isDemoStandingIn(): boolean {
    return this.#catalogueFiles.every(({ standsIn }) => standsIn === true);
  }

  /** Names of the user's catalogue files, in the order in which the catalogues are shown now; they are told apart by these. */
  get catalogueNames(): readonly string[] {
    return this.#catalogueFiles.map(({ name }) => name);
  }

  /** A catalogue as the bytes of a table. */
  async writeCatalogue(catalogue: Catalogue): Promise<Uint8Array> {
    return this.#withWorker(async (worker) => (await worker.ask('catalogueFile', { catalogue })).bytes);
  }

  /** The worker of the open list, or one for this errand alone. */
  async #withWorker<T>(work: (worker: WorkerClient) => Promise<T>): Promise<T> {
    const worker = this.#worker ?? this.#around.startWorker();
    try {
      return await work(worker);
    } finally {
      if (worker !== this.#worker) worker.stop();
    }
  }

  async #orDemo(files: readonly HandedFile[]): Promise<readonly HandedFile[]> {
    return files.length > 0 ? files : [{ ...(await this.#around.fetchDemo('catalogue')), standsIn: true }];
  }

  /** One step after the other: each is made from what the one before has left. A step for a list that is gone is dropped. */
  inTurn(work: () => Promise<void>): Promise<void> {
    const file = this.#listFile;
    this.#turn = this.#turn.then(async () => {
      if (file === this.#listFile) await work();
    });
    return this.#turn;
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
      else if ('parts' in change) await this.#inCatalogueTurn(() => this.#editParts(change.parts));
      else if ('shop' in change) await this.judgeBy({ ...change.shop, units: this.#store.state.shop.units });
      this.#setHistory(history);
    }, ifNot);
  }

  /** Judges by other settings. */
  async judgeBy(shop: ShopSettings): Promise<void> {
    this.#store.set({ shop });
    const answer = await this.#worker?.ask('shop', { shop }, this.progress('Judging again'));
    if (answer) this.#show(answer.list);
  }

  async #readColumns(columns: ColumnChoices): Promise<void> {
    const answer = await this.#worker?.ask('columns', columns, this.progress('Reading the columns'));
    if (!answer) return;
    this.#columns = columns;
    this.#show(answer.list);
    this.#store.set({ columnsBy: hasChoices(columns) ? 'user' : null });
    rememberColumns(this.#around.memory, keyOf(answer.list), columns);
  }

  async #edit(cells: readonly CellEdit[]): Promise<void> {
    const answer = await this.#worker?.ask('edit', { cells });
    if (answer) this.#store.set(withRows(this.#store.state, answer.rows, answer.totals));
  }

  #setHistory(history: History): void {
    this.#history = history;
    const [undoName, redoName] = [history.done.at(-1)?.name ?? null, history.undone.at(-1)?.name ?? null];
    const concessions = concessionsAfter(history);
    const rows = withConceded(this.#store.state.rows, concessions, this.#store.state.concessions);
    const pressOrder = pressOrderAfter(history);
    this.#store.set({ history, concessions, pressOrder, rows, undoName, redoName });
  }

  #show(list: AuditedList, catalogues: readonly Catalogue[] = this.#store.state.catalogues): void {
    const rows = withConceded(weaveRows(list), this.#store.state.concessions);
    this.#store.set({ list, rows, catalogues, message: null });
  }

  /** Shows that something is under way; the answer reports how far it is. */
  progress(what: string): OnProgress {
    const canCancel = this.#opening !== null;
    this.#store.set({ work: { what, phase: 'reading', share: 0, canCancel } });
    return (phase, share) => this.#store.set({ work: { what, phase, share, canCancel } });
  }

  /** Runs one piece of work; a refusal becomes a sentence on screen and changes nothing else. `ifNot` is said behind it. */
  async guard(work: () => Promise<void>, ifNot = ''): Promise<void> {
    try {
      await work();
    } catch (error) {
      const cancelled = error instanceof Refused && error.message === 'Cancelled.';
      const text = error instanceof Error ? error.message : String(error);
      if (!cancelled) this.#store.set({ message: { kind: 'error', text: `${text} ${ifNot}`.trim() } });
    } finally {
      if (this.#store.state.work) this.#store.set({ work: null });
    }
  }
  /** Sets the cells that do not hold their text yet, as one step; one with something to tell is made even without a cell. */
  async editCells(cells: readonly CellEdit[], name: string, told?: Deed['told']): Promise<void> {
    const { rows } = this.#store.state;
    const textIn = ({ row, column }: CellEdit) => itemOfRow(rows, row)?.cells[column] ?? '';
    const after = cells.filter((cell) => itemOfRow(rows, cell.row) && textIn(cell) !== cell.text);
    if (after.length === 0 && !told) return;
    const before = after.map((cell) => ({ ...cell, text: textIn(cell) }));
    await this.do({ name, after: { cells: after }, before: { cells: before }, ...(told && { told }) });
  }
}

/** What was wanted, with the text that was typed into a single cell. */
function sayNotDone({ name, after }: Deed): string {
  const cell = 'cells' in after && after.cells.length === 1 ? after.cells[0] : undefined;
  return `Not done: ${name}${cell ? ` (“${cell.text}”)` : ''}.`;
}

function keyOf({ columns }: AuditedList): string {
  return headingKey(columns.map(({ heading }) => heading));
}
