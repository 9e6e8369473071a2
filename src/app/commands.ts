import type { AnswerPlan } from '../core/answers/plan-answers.ts';
import { concede } from '../core/concede/standing.ts';
import type { ListOptions } from '../core/intake/build-list.ts';
import { NO_CHOICES } from '../core/intake/columns.ts';
import type { Concession } from '../core/model/concession.ts';
import type { LengthUnit, Role } from '../core/model/list.ts';
import type { Verdict } from '../core/model/outcome.ts';
import type { TextReading } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { CellEdit, HandedFile, SwapAnswer, SwapQuestion, Trial } from '../worker/protocol.ts';
import { deedOfAnswers } from './answers.ts';
import { Catalogues } from './catalogues.ts';
import { columnName, withChoice } from './column-choices.ts';
import { Comparing } from './comparing.ts';
import { deedOfConcession, deedOfShop, deedOfWithdrawal } from './deeds.ts';
import { stepBack, stepForward } from './history.ts';
import { holdFile } from './hold-file.ts';
import { swapCells } from './many-cells.ts';
import { recallName, rememberName } from './name-memory.ts';
import { OpenDocument } from './open-document.ts';
import { outputName } from './output-name.ts';
import { isProject, parseProject } from './parse-project.ts';
import { type OpenWork, type Project, showProject, toProject } from './project.ts';
import { Reports } from './reports.ts';
import { ROLE_NAMES, UNIT_NAMES } from './role-names.ts';
import type { Dialog, RowFocus, View } from './state.ts';
import type { Store } from './store.ts';
import type { Surroundings } from './surroundings.ts';

/** Everything that the user can do. */
export class Commands {
  readonly #store: Store;
  readonly #around: Surroundings;
  readonly #document: OpenDocument;
  /** What the list comes to: reports, their files, their print. */
  readonly reports: Reports;
  /** The list against an earlier one. */
  readonly comparing: Comparing;
  /** What parts need. */
  readonly catalogues: Catalogues;

  constructor(store: Store, around: Surroundings) {
    this.#store = store;
    this.#around = around;
    this.#document = new OpenDocument(store, around);
    this.reports = new Reports(store, around, this.#document);
    this.comparing = new Comparing(store, around, this.#document);
    this.catalogues = new Catalogues(store, around, this.#document);
    store.set({ userName: recallName(around.memory) });
  }

  async openDemo(): Promise<void> {
    await this.#document.guard(async () => {
      await this.#document.open(await this.#around.fetchDemo('list'), {});
      this.catalogues.noticeDemo();
    });
  }

  /** Opens a list or a project. Answers to questions are shown with what they would fill into the open list. */
  async openFile(file: HandedFile): Promise<void> {
    await this.#document.guard(async () => {
      const held = await holdFile(file);
      if (!(await isProject(held))) return this.#document.open(held, {}, {}, true);
      await this.#document.restore(parseProject(await held.data.text(), held.name));
      this.#document.markFiled(this.#document.history);
    });
  }

  /** Opens kept work: its list read as it was, its edits made again, undo and redo as they were. */
  async restore(project: Project): Promise<void> {
    await this.#document.guard(() => this.#document.restore(project));
  }

  /** Saves all of the work on the open list as one file. */
  async saveProject(): Promise<void> {
    await this.#document.guard(async () => {
      const { work } = this.#document;
      if (!work) return;
      const text = await showProject(toProject(work, this.#store.state, new Date().toISOString()));
      const name = outputName(work.list.name, 'work.json');
      this.#around.save(name, new TextEncoder().encode(text));
      this.#document.markFiled(work.history);
      this.#store.set({
        message: { kind: 'done', text: `Saved as ${name}. Open it with Open list to go on from here.` },
      });
    });
  }

  /**
   * Reads the open file again in another way: other sheet, heading row, column meanings or units, for a text file other
   * encoding or delimiter. Edits are lost, so ask first.
   */
  async reopen(options: ListOptions, reading?: TextReading): Promise<void> {
    await this.#document.reopen(options, reading);
  }

  /** Ends the work under way; whatever was open stays as it was. */
  cancel(): void {
    this.comparing.cancel();
    this.#document.cancel();
  }

  /** What is open, besides the state; null before the first list. */
  get work(): OpenWork | null {
    return this.#document.work;
  }

  /** Judges by other settings, as one step where a list is open. In which unit lengths are shown is no step. */
  async setShop(shop: ShopSettings): Promise<void> {
    await this.#document.inTurn(async () => {
      const deed = this.#document.worker && deedOfShop(this.#store.state.shop, shop);
      if (deed) await this.#document.do(deed);
      else await this.#document.guard(() => this.#document.judgeBy(shop));
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
    await this.#document.inTurn(() => this.#document.editCells(cells, name));
  }

  /** Fills answers of the sender in as one step; the rest of them is told with it. */
  async fillAnswers(file: string, plans: readonly AnswerPlan[], chosen: ReadonlySet<AnswerPlan>): Promise<void> {
    const { cells, name, told } = deedOfAnswers(file, plans, chosen);
    await this.#document.inTurn(() => this.#document.editCells(cells, name, told));
  }

  /** Opens a workbook in which questions were answered as the list that it also is. */
  async openAsList(file: HandedFile): Promise<void> {
    await this.#document.guard(() => this.#document.open(file, {}));
  }

  /** Puts another part into rows, as one step; their descriptions stay as they are. */
  async swap(partNumber: string, rows: readonly number[]): Promise<void> {
    const { cells, name } = swapCells(this.#store.state, partNumber, rows);
    await this.editCells(cells, name);
  }

  /** What could be put in place of a part; null where it is not on file or no list is open. */
  async findSwaps(question: SwapQuestion): Promise<SwapAnswer | null> {
    return (await this.#document.worker?.ask('swaps', question))?.swaps ?? null;
  }

  /** What an edit would do, without making it; null where no list is open. */
  async tryEdit(cells: readonly CellEdit[]): Promise<Trial | null> {
    return (await this.#document.worker?.ask('tryEdit', { cells }))?.trial ?? null;
  }

  /** Accepts one check of a row as it is. Its verdict stays; the concession lapses when what it rests on changes. */
  async concede(row: number, rule: string, { reason, by }: Pick<Concession, 'reason' | 'by'>): Promise<void> {
    this.setName(by);
    await this.#document.inTurn(async () => {
      const { list, concessions } = this.#store.state;
      const line = list?.lines.find((one) => one.row === row);
      const finding = line?.findings.find((one) => one.rule === rule);
      const concession = line && finding && concede(line, finding, { reason, by, date: this.#around.today() });
      if (concession) await this.#document.do(deedOfConcession(concessions, concession, line.line.partNumber));
    });
  }

  /** Takes a concession back. */
  async withdraw(row: number, rule: string): Promise<void> {
    await this.#document.inTurn(async () => {
      const deed = deedOfWithdrawal(this.#store.state.concessions, row, rule);
      if (deed) await this.#document.do(deed);
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

  /** Says what a column means and, for lengths, the unit of its bare numbers. Kept for the next list with the same headings. */
  async setColumn(index: number, role: Role, unit?: LengthUnit): Promise<void> {
    await this.#document.inTurn(async () => {
      const column = this.#store.state.list?.columns.find((one) => one.index === index);
      if (!column) return;
      const after = withChoice(this.#document.columns, { index, role, ...(unit && { unit }) });
      const what = unit && role === column.role ? UNIT_NAMES[unit] : ROLE_NAMES[role];
      const name = `set column ${columnName(column)} to ${what}`;
      await this.#document.do({ name, after: { columns: after }, before: { columns: this.#document.columns } });
    });
  }

  /** Reads the columns as their headings and cells say, and forgets what was set for such headings. */
  async forgetColumns(): Promise<void> {
    await this.#document.inTurn(async () => {
      const before = { columns: this.#document.columns };
      await this.#document.do({ name: 'forget the set columns', after: { columns: NO_CHOICES }, before });
    });
  }

  async undo(): Promise<void> {
    await this.#document.inTurn(async () => {
      const back = stepBack(this.#document.history);
      if (back) await this.#document.replay(back.step.before, back.history);
    });
  }

  async redo(): Promise<void> {
    await this.#document.inTurn(async () => {
      const forward = stepForward(this.#document.history);
      if (forward) await this.#document.replay(forward.step.after, forward.history);
    });
  }

  toggleFilter(verdict: Verdict): void {
    const filter = new Set(this.#store.state.filter);
    if (!filter.delete(verdict)) filter.add(verdict);
    this.#store.set({ filter });
  }

  /** Shows some rows alone; null: all rows again. */
  focusRows(focus: RowFocus | null): void {
    this.#store.set({ focus });
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
      void this.#document.catalogues.use((loaded) => loaded);
  }

  dismiss(): void {
    this.#store.set({ message: null });
  }
}
