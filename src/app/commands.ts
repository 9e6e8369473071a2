import { concede } from '../core/concede/standing.ts';
import type { ListOptions } from '../core/intake/build-list.ts';
import { type ColumnChoices, NO_CHOICES } from '../core/intake/columns.ts';
import { headingKey } from '../core/intake/heading-set.ts';
import type { AuditedList, Totals } from '../core/model/audited.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { LengthUnit, Role } from '../core/model/list.ts';
import type { Verdict } from '../core/model/outcome.ts';
import type { TextReading } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import { type OnProgress, Refused, type WorkerClient } from '../worker/client.ts';
import type { CellEdit, ExportHow, HandedFile, RowState, SwapAnswer, SwapQuestion, Trial } from '../worker/protocol.ts';
import { toChangeRecords } from './change-records.ts';
import { columnName, hasChoices, withChoice } from './column-choices.ts';
import { recallColumns, rememberColumns } from './column-memory.ts';
import { deedOfConcession, deedOfShop, deedOfWithdrawal } from './deeds.ts';
import {
  addStep,
  type Change,
  concessionsAfter,
  type Deed,
  type History,
  NO_HISTORY,
  stepBack,
  stepForward,
} from './history.ts';
import { holdFile } from './hold-file.ts';
import { swapCells } from './many-cells.ts';
import { recallName, rememberName } from './name-memory.ts';
import { isProject, parseProject } from './parse-project.ts';
import {
  cellsAfter,
  type KeptFields,
  NOTHING_KEPT,
  type OpenWork,
  type Project,
  showProject,
  toProject,
} from './project.ts';
import { ROLE_NAMES, UNIT_NAMES } from './role-names.ts';
import type { OpenMemory } from './shop-memory.ts';
import { noticeShop } from './shop-notice.ts';
import { type AppState, type Dialog, type GridRow, type View, weaveRows, withConceded } from './state.ts';
import type { Store } from './store.ts';

/** Where the demo files come from and how a worker is started; a test can hand in its own. */
export interface Surroundings {
  readonly startWorker: () => WorkerClient;
  readonly fetchDemo: (which: 'list' | 'catalogue') => Promise<HandedFile>;
  readonly save: (name: string, bytes: Uint8Array) => void;
  readonly today: () => string;
  readonly memory: OpenMemory;
}

/**
 * Everything that the user can do. Each list has a worker of its own: a new list is read in a fresh one, which takes over only
 * when all went well, so that cancelling or a bad file leaves the open list as it was.
 */
export class Commands {
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
    store.set({ userName: recallName(around.memory) });
  }

  async openDemo(): Promise<void> {
    await this.#guard(async () => this.#open(await this.#around.fetchDemo('list'), {}));
  }

  /** Opens a list or a project. */
  async openFile(file: HandedFile): Promise<void> {
    await this.#guard(async () => {
      const held = await holdFile(file);
      if (!(await isProject(held))) return this.#open(held, {});
      await this.#restore(parseProject(await held.data.text(), held.name));
      this.#filed = this.#history;
    });
  }

  /** Opens kept work: its list read as it was, its edits made again, undo and redo as they were. */
  async restore(project: Project): Promise<void> {
    await this.#guard(() => this.#restore(project));
  }

  /** Saves all of the work on the open list as one file. */
  async saveProject(): Promise<void> {
    await this.#guard(async () => {
      const { work } = this;
      if (!work) return;
      const text = await showProject(toProject(work, this.#store.state, new Date().toISOString()));
      const name = `${work.list.name.replace(/\.[^.]+$/, '')}-work.json`;
      this.#around.save(name, new TextEncoder().encode(text));
      this.#filed = work.history;
      this.#store.set({
        message: { kind: 'done', text: `Saved as ${name}. Open it with Open list to go on from here.` },
      });
    });
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

  /**
   * Reads the open file again in another way: other sheet, heading row, column meanings or units, for a text file other
   * encoding or delimiter. Edits are lost, so ask first.
   */
  async reopen(options: ListOptions, reading: TextReading = this.#reading): Promise<void> {
    if (!this.#listFile) return;
    // A copy stands for a document of its own: what was done before stays kept as it was.
    const file = this.#history === NO_HISTORY ? this.#listFile : { ...this.#listFile };
    await this.#guard(() => this.#open(file, options, reading));
  }

  /** Ends the work under way; whatever was open stays as it was. */
  cancel(): void {
    this.#opening?.stop();
    this.#opening = null;
    this.#store.set({ work: null });
  }

  /** Adds catalogues behind those already loaded. */
  async addCatalogues(files: readonly HandedFile[]): Promise<void> {
    await this.#guard(async () => {
      const held = await Promise.all(files.map(holdFile));
      await this.#useCatalogues((loaded) => [...loaded, ...held]);
    });
  }

  /** Takes a catalogue out by its position; with none left the demo catalogue stands in. */
  async removeCatalogue(position: number): Promise<void> {
    await this.#useCatalogues((loaded) => loaded.filter((_, index) => index !== position));
  }

  /** Judges by other settings, as one step where a list is open. In which unit lengths are shown is no step. */
  async setShop(shop: ShopSettings): Promise<void> {
    await this.#inTurn(async () => {
      const deed = this.#worker && deedOfShop(this.#store.state.shop, shop);
      if (deed) await this.#do(deed);
      else await this.#guard(() => this.#judgeBy(shop));
    });
  }

  /** Sets one cell and has its row judged. */
  async editCell(row: number, column: number, text: string): Promise<void> {
    const edited = this.#store.state.list?.columns.find(({ index }) => index === column);
    const name = `edit ${columnName(edited ?? { heading: '', index: column })} in row ${row}`;
    await this.editCells([{ row, column, text }], name);
  }

  /** Sets several cells as one step (a paste, a fill, a swap). Cells that already hold the text, and rows that are not there, are left out. */
  async editCells(cells: readonly CellEdit[], name: string): Promise<void> {
    await this.#inTurn(() => this.#editCells(cells, name));
  }

  /** Puts another part into rows, as one step; their descriptions stay as they are. */
  async swap(partNumber: string, rows: readonly number[]): Promise<void> {
    const { cells, name } = swapCells(this.#store.state, partNumber, rows);
    await this.editCells(cells, name);
  }

  /** What could be put in place of a part; null where it is not on file or no list is open. */
  async findSwaps(question: SwapQuestion): Promise<SwapAnswer | null> {
    return (await this.#worker?.ask('swaps', question))?.swaps ?? null;
  }

  /** What an edit would do, without making it; null where no list is open. */
  async tryEdit(cells: readonly CellEdit[]): Promise<Trial | null> {
    return (await this.#worker?.ask('tryEdit', { cells }))?.trial ?? null;
  }

  /** Accepts one check of a row as it is. Its verdict stays; the concession lapses when what it rests on changes. */
  async concede(row: number, rule: string, { reason, by }: Pick<Concession, 'reason' | 'by'>): Promise<void> {
    this.setName(by);
    await this.#inTurn(async () => {
      const { list, concessions } = this.#store.state;
      const line = list?.lines.find((one) => one.row === row);
      const finding = line?.findings.find((one) => one.rule === rule);
      const concession = line && finding && concede(line, finding, { reason, by, date: this.#around.today() });
      if (concession) await this.#do(deedOfConcession(concessions, concession, line.line.partNumber));
    });
  }

  /** Takes a concession back. */
  async withdraw(row: number, rule: string): Promise<void> {
    await this.#inTurn(async () => {
      const deed = deedOfWithdrawal(this.#store.state.concessions, row, rule);
      if (deed) await this.#do(deed);
    });
  }

  /** The name that steps and concessions are signed with; kept for the next visit. */
  setName(name: string): void {
    this.#store.set({ userName: name.trim() });
    rememberName(this.#around.memory, name.trim());
  }

  openDialog(dialog: Dialog): void {
    this.#store.set({ dialog });
  }

  closeDialog(): void {
    this.#store.set({ dialog: null });
  }

  async #editCells(cells: readonly CellEdit[], name: string): Promise<void> {
    const texts = new Map(this.#store.state.rows.map(({ row, cells: own }) => [row, own]));
    const after = cells.filter(({ row, column, text }) => texts.has(row) && (texts.get(row)?.[column] ?? '') !== text);
    if (after.length === 0) return;
    const before = after.map(({ row, column }) => ({ row, column, text: texts.get(row)?.[column] ?? '' }));
    await this.#do({ name, after: { cells: after }, before: { cells: before } });
  }

  /** Says what a column means and, for lengths, the unit of its bare numbers. Kept for the next list with the same headings. */
  async setColumn(index: number, role: Role, unit?: LengthUnit): Promise<void> {
    await this.#inTurn(async () => {
      const column = this.#store.state.list?.columns.find((one) => one.index === index);
      if (!column) return;
      const after = withChoice(this.#columns, { index, role, ...(unit && { unit }) });
      const what = unit && role === column.role ? UNIT_NAMES[unit] : ROLE_NAMES[role];
      const name = `set column ${columnName(column)} to ${what}`;
      await this.#do({ name, after: { columns: after }, before: { columns: this.#columns } });
    });
  }

  /** Reads the columns as their headings and cells say, and forgets what was set for such headings. */
  async forgetColumns(): Promise<void> {
    await this.#inTurn(async () => {
      const before = { columns: this.#columns };
      await this.#do({ name: 'forget the set columns', after: { columns: NO_CHOICES }, before });
    });
  }

  async undo(): Promise<void> {
    await this.#inTurn(async () => {
      const back = stepBack(this.#history);
      if (back) await this.#replay(back.step.before, back.history);
    });
  }

  async redo(): Promise<void> {
    await this.#inTurn(async () => {
      const forward = stepForward(this.#history);
      if (forward) await this.#replay(forward.step.after, forward.history);
    });
  }

  /** Writes the judged list into the workbook that it came in, or into a new one where that is wanted or cannot be done otherwise. */
  async exportWorkbook(how: ExportHow): Promise<void> {
    const { list } = this.#store.state;
    const worker = this.#worker;
    if (!list || !worker) return;
    await this.#guard(async () => {
      const { concessions, history } = this.#store.state;
      const work = { concessions, changes: toChangeRecords(history, list.columns) };
      const ask = { date: this.#around.today(), work, how };
      const { bytes, refused } = await worker.ask('export', ask, this.#progress('Writing the workbook'));
      const isNew = how === 'new' || refused !== undefined;
      const name = exportName(list.file, isNew);
      this.#around.save(name, bytes);
      const why =
        refused === undefined ? '' : ` It is a new workbook, because yours could not be written into: ${refused}`;
      this.#store.set({ message: { kind: 'done', text: `Saved as ${name}.${why}` } });
    });
  }

  toggleFilter(verdict: Verdict): void {
    const filter = new Set(this.#store.state.filter);
    if (!filter.delete(verdict)) filter.add(verdict);
    this.#store.set({ filter });
  }

  search(search: string): void {
    this.#store.set({ search });
  }

  select(selectedRow: number | null): void {
    this.#store.set({ selectedRow });
  }

  show(view: View, openRule: string | null = null): void {
    this.#store.set({ view, openRule });
    if (view === 'catalogue' && this.#store.state.catalogues.length === 0) void this.#useCatalogues((loaded) => loaded);
  }

  dismiss(): void {
    this.#store.set({ message: null });
  }

  async #open(file: HandedFile, options: ListOptions, reading: TextReading = {}): Promise<void> {
    await this.#catalogueTurn;
    const catalogues = await this.#orDemo(this.#catalogueFiles);
    const { shop } = this.#store.state;
    const remembered = recallColumns(this.#around.memory);
    await this.#openInFreshWorker(file.name, async (worker, onProgress) => {
      const ask = { list: file, options, reading, catalogues, shop, remembered };
      const answer = await worker.ask('open', ask, onProgress);
      return () => {
        this.#takeOver(file, options, reading, answer.columns);
        this.#setHistory(NO_HISTORY);
        this.#show(answer.list, answer.catalogues);
        const columnsBy = hasChoices(answer.columns) ? 'memory' : null;
        this.#store.set({ view: 'list', columnsBy, filter: new Set(), search: '', selectedRow: null });
      };
    });
  }

  async #restore(project: Project): Promise<void> {
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
        this.#store.set({ view: 'list', columnsBy, shop, filter, search: '', selectedRow, message });
        this.#setHistory({ done: steps, undone });
      };
    });
  }

  /** Opens something in a worker of its own; `open` asks for what it needs and gives back how to take it over. */
  async #openInFreshWorker(
    name: string,
    open: (worker: WorkerClient, onProgress: OnProgress) => Promise<() => void>,
  ): Promise<void> {
    this.#opening?.stop();
    const worker = this.#around.startWorker();
    this.#opening = worker;
    try {
      const takeOver = await open(worker, this.#progress(`Opening ${name}`));
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
  #useCatalogues(change: (loaded: readonly HandedFile[]) => readonly HandedFile[]): Promise<void> {
    this.#catalogueTurn = this.#catalogueTurn.then(() => this.#judgeByCatalogues(change(this.#catalogueFiles)));
    return this.#catalogueTurn;
  }

  async #judgeByCatalogues(files: readonly HandedFile[]): Promise<void> {
    await this.#guard(async () => {
      const catalogues = await this.#orDemo(files);
      const worker = this.#worker ?? this.#around.startWorker();
      try {
        const answer = await worker.ask('catalogues', { catalogues }, this.#progress('Judging by the catalogue'));
        if (answer.list) this.#show(answer.list, answer.catalogues);
        else this.#store.set({ catalogues: answer.catalogues });
        this.#catalogueFiles = files;
      } finally {
        if (worker !== this.#worker) worker.stop();
      }
    });
  }

  async #orDemo(files: readonly HandedFile[]): Promise<readonly HandedFile[]> {
    return files.length > 0 ? files : [await this.#around.fetchDemo('catalogue')];
  }

  /** One step after the other: each is made from what the one before has left. A step for a list that is gone is dropped. */
  #inTurn(work: () => Promise<void>): Promise<void> {
    const file = this.#listFile;
    this.#turn = this.#turn.then(async () => {
      if (file === this.#listFile) await work();
    });
    return this.#turn;
  }

  async #do(deed: Deed): Promise<void> {
    const step = { ...deed, when: new Date().toISOString(), by: this.#store.state.userName };
    await this.#replay(deed.after, addStep(this.#history, step));
  }

  async #replay(change: Change, history: History): Promise<void> {
    await this.#guard(async () => {
      if ('cells' in change) await this.#edit(change.cells);
      else if ('columns' in change) await this.#readColumns(change.columns);
      else if ('shop' in change) await this.#judgeBy({ ...change.shop, units: this.#store.state.shop.units });
      this.#setHistory(history);
    });
  }

  async #judgeBy(shop: ShopSettings): Promise<void> {
    this.#store.set({ shop });
    const answer = await this.#worker?.ask('shop', { shop }, this.#progress('Judging again'));
    if (answer) this.#show(answer.list);
  }

  async #readColumns(columns: ColumnChoices): Promise<void> {
    const answer = await this.#worker?.ask('columns', columns, this.#progress('Reading the columns'));
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
    const rows = withConceded(this.#store.state.rows, concessions);
    this.#store.set({ history, concessions, rows, undoName, redoName });
  }

  #show(list: AuditedList, catalogues: readonly Catalogue[] = this.#store.state.catalogues): void {
    const rows = withConceded(weaveRows(list), this.#store.state.concessions);
    this.#store.set({ list, rows, catalogues, message: null });
  }

  #progress(what: string): OnProgress {
    this.#store.set({ work: { what, phase: 'reading', share: 0 } });
    return (phase, share) => this.#store.set({ work: { what, phase, share } });
  }

  /** Runs one piece of work; a refusal becomes a sentence on screen and changes nothing else. */
  async #guard(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      const cancelled = error instanceof Refused && error.message === 'Cancelled.';
      const text = error instanceof Error ? error.message : String(error);
      if (!cancelled) this.#store.set({ message: { kind: 'error', text } });
    } finally {
      if (this.#store.state.work) this.#store.set({ work: null });
    }
  }
}

/** The user's own workbook keeps its kind, because one with macros opens under no other ending. */
function exportName(file: string, isNew: boolean): string {
  const ending = isNew ? undefined : /\.xl[st][xm]$/i.exec(file)?.[0];
  return `${file.replace(/\.[^.]+$/, '')}-judged${ending ?? '.xlsx'}`;
}

function keyOf({ columns }: AuditedList): string {
  return headingKey(columns.map(({ heading }) => heading));
}

/** The state with some rows judged anew. */
function withRows(state: AppState, changed: readonly RowState[], totals: Totals): Partial<AppState> {
  const states = new Map<number, GridRow>(
    changed.map((row) =>
      'line' in row
        ? [row.line.row, { row: row.line.row, cells: row.line.line.cells, line: row.line }]
        : [row.other.row, { row: row.other.row, cells: row.other.cells, other: row.other }],
    ),
  );
  const rows = state.rows.map((row) => states.get(row.row) ?? row);
  const lines = rows.flatMap(({ line }) => line ?? []);
  const others = rows.flatMap(({ other }) => other ?? []);
  return { rows, list: state.list && { ...state.list, lines, others, totals } };
}
