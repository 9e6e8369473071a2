import type { ListOptions } from '../core/intake/build-list.ts';
import { type ColumnChoices, NO_CHOICES } from '../core/intake/columns.ts';
import { headingKey } from '../core/intake/heading-set.ts';
import type { AuditedList, Totals } from '../core/model/audited.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { LengthUnit, Role } from '../core/model/list.ts';
import type { Verdict } from '../core/model/outcome.ts';
import type { TextReading } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import { type OnProgress, Refused, type WorkerClient } from '../worker/client.ts';
import type { CellEdit, HandedFile, RowState } from '../worker/protocol.ts';
import { columnName, hasChoices, withChoice } from './column-choices.ts';
import { recallColumns, rememberColumns } from './column-memory.ts';
import { addStep, type Change, type History, NO_HISTORY, type Step, stepBack, stepForward } from './history.ts';
import { ROLE_NAMES, UNIT_NAMES } from './role-names.ts';
import type { OpenMemory } from './shop-memory.ts';
import { type AppState, type GridRow, type View, weaveRows } from './state.ts';
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
  /** What the user chose on how to decode and cut the open file. */
  #reading: TextReading = {};
  /** What the user chose for the columns, now or for an earlier list with these headings. */
  #columns: ColumnChoices = NO_CHOICES;
  #catalogueFiles: readonly HandedFile[] = [];
  #history: History = NO_HISTORY;

  constructor(store: Store, around: Surroundings) {
    this.#store = store;
    this.#around = around;
  }

  async openDemo(): Promise<void> {
    await this.#guard(async () => this.#open(await this.#around.fetchDemo('list'), {}));
  }

  async openFile(file: HandedFile): Promise<void> {
    await this.#guard(() => this.#open(file, {}));
  }

  /**
   * Reads the open file again in another way: other sheet, heading row, column meanings or units, for a text file other
   * encoding or delimiter. Edits are lost, so ask first.
   */
  async reopen(options: ListOptions, reading: TextReading = this.#reading): Promise<void> {
    const file = this.#listFile;
    if (file) await this.#guard(() => this.#open(file, options, reading));
  }

  /** Ends the work under way; whatever was open stays as it was. */
  cancel(): void {
    this.#opening?.stop();
    this.#opening = null;
    this.#store.set({ work: null });
  }

  /** Adds catalogues behind those already loaded. */
  async addCatalogues(files: readonly HandedFile[]): Promise<void> {
    await this.#useCatalogues([...this.#catalogueFiles, ...files]);
  }

  /** Takes a catalogue out by its position; with none left the demo catalogue stands in. */
  async removeCatalogue(position: number): Promise<void> {
    await this.#useCatalogues(this.#catalogueFiles.filter((_, index) => index !== position));
  }

  async setShop(shop: ShopSettings): Promise<void> {
    this.#store.set({ shop });
    if (!this.#worker) return;
    const worker = this.#worker;
    await this.#guard(async () =>
      this.#show((await worker.ask('shop', { shop }, this.#progress('Judging again'))).list),
    );
  }

  /** Sets one cell and has its row judged. */
  async editCell(row: number, column: number, text: string): Promise<void> {
    const edited = this.#store.state.list?.columns.find(({ index }) => index === column);
    const name = `edit ${columnName(edited ?? { heading: '', index: column })} in row ${row}`;
    await this.editCells([{ row, column, text }], name);
  }

  /** Sets several cells as one step (a paste, a fill, a swap). Cells that already hold the text, and rows that are not there, are left out. */
  async editCells(cells: readonly CellEdit[], name: string): Promise<void> {
    const texts = new Map(this.#store.state.rows.map(({ row, cells: own }) => [row, own]));
    const after = cells.filter(({ row, column, text }) => texts.has(row) && (texts.get(row)?.[column] ?? '') !== text);
    if (after.length === 0) return;
    const before = after.map(({ row, column }) => ({ row, column, text: texts.get(row)?.[column] ?? '' }));
    await this.#do({ name, after: { cells: after }, before: { cells: before } });
  }

  /** Says what a column means and, for lengths, the unit of its bare numbers. Kept for the next list with the same headings. */
  async setColumn(index: number, role: Role, unit?: LengthUnit): Promise<void> {
    const column = this.#store.state.list?.columns.find((one) => one.index === index);
    if (!column) return;
    const after = withChoice(this.#columns, { index, role, ...(unit && { unit }) });
    const what = unit && role === column.role ? UNIT_NAMES[unit] : ROLE_NAMES[role];
    const name = `set column ${columnName(column)} to ${what}`;
    await this.#do({ name, after: { columns: after }, before: { columns: this.#columns } });
  }

  /** Reads the columns as their headings and cells say, and forgets what was set for such headings. */
  async forgetColumns(): Promise<void> {
    const before = { columns: this.#columns };
    await this.#do({ name: 'forget the set columns', after: { columns: NO_CHOICES }, before });
  }

  async undo(): Promise<void> {
    const back = stepBack(this.#history);
    if (back) await this.#replay(back.step.before, back.history);
  }

  async redo(): Promise<void> {
    const forward = stepForward(this.#history);
    if (forward) await this.#replay(forward.step.after, forward.history);
  }

  async exportWorkbook(): Promise<void> {
    const { list } = this.#store.state;
    const worker = this.#worker;
    if (!list || !worker) return;
    await this.#guard(async () => {
      const { bytes } = await worker.ask(
        'export',
        { date: this.#around.today() },
        this.#progress('Writing the workbook'),
      );
      const name = `${list.file.replace(/\.[^.]+$/, '')}-judged.xlsx`;
      this.#around.save(name, bytes);
      this.#store.set({ message: { kind: 'done', text: `Saved as ${name}.` } });
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
    if (view === 'catalogue' && this.#store.state.catalogues.length === 0)
      void this.#useCatalogues(this.#catalogueFiles);
  }

  dismiss(): void {
    this.#store.set({ message: null });
  }

  async #open(file: HandedFile, options: ListOptions, reading: TextReading = {}): Promise<void> {
    const catalogues = await this.#cataloguesOrDemo();
    this.#opening?.stop();
    const worker = this.#around.startWorker();
    this.#opening = worker;
    try {
      const { shop } = this.#store.state;
      const answer = await worker.ask(
        'open',
        { list: file, options, reading, catalogues, shop, remembered: recallColumns(this.#around.memory) },
        this.#progress(`Opening ${file.name}`),
      );
      this.#worker?.stop();
      this.#worker = worker;
      this.#listFile = file;
      this.#reading = reading;
      this.#columns = answer.columns;
      this.#setHistory(NO_HISTORY);
      this.#show(answer.list, answer.catalogues);
      const columnsBy = hasChoices(answer.columns) ? 'memory' : null;
      this.#store.set({ view: 'list', columnsBy, filter: new Set(), search: '', selectedRow: null });
    } finally {
      if (this.#worker !== worker) worker.stop();
      if (this.#opening === worker) this.#opening = null;
    }
  }

  async #useCatalogues(files: readonly HandedFile[]): Promise<void> {
    await this.#guard(async () => {
      const worker = this.#worker ?? this.#around.startWorker();
      const catalogues = files.length > 0 ? files : [await this.#around.fetchDemo('catalogue')];
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

  async #cataloguesOrDemo(): Promise<readonly HandedFile[]> {
    return this.#catalogueFiles.length > 0 ? this.#catalogueFiles : [await this.#around.fetchDemo('catalogue')];
  }

  async #do(step: Step): Promise<void> {
    await this.#replay(step.after, addStep(this.#history, step));
  }

  async #replay(change: Change, history: History): Promise<void> {
    await this.#guard(async () => {
      if ('cells' in change) await this.#edit(change.cells);
      else await this.#readColumns(change.columns);
      this.#setHistory(history);
    });
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
    this.#store.set({ undoName: history.done.at(-1)?.name ?? null, redoName: history.undone.at(-1)?.name ?? null });
  }

  #show(list: AuditedList, catalogues: readonly Catalogue[] = this.#store.state.catalogues): void {
    this.#store.set({ list, rows: weaveRows(list), catalogues, message: null });
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
