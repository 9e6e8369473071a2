import type { AuditedList } from '../core/model/audited.ts';
import type { OnProgress, WorkerClient } from '../worker/client.ts';
import type { EarlierList, HandedFile, Requests } from '../worker/protocol.ts';
import { recallColumns } from './column-memory.ts';
import { deedOfCarried, type EarlierChoice, earlierOf, openAsRead } from './compare-deeds.ts';
import { holdFile } from './hold-file.ts';
import type { OpenDocument } from './open-document.ts';
import { outputName } from './output-name.ts';
import { isProject, parseProject } from './parse-project.ts';
import type { Project } from './project.ts';
import type { AppState } from './state.ts';
import type { Store } from './store.ts';
import type { Surroundings } from './surroundings.ts';

/**
 * The open list against an earlier one. Each earlier list is read and judged in a worker of its own, which takes over only when all
 * went well. While the comparison is shown it is made again whenever the list has changed.
 */
export class Comparing {
  readonly #store: Store;
  readonly #around: Surroundings;
  readonly #document: OpenDocument;
  /** Holds the earlier list. */
  #worker: WorkerClient | null = null;
  #opening: WorkerClient | null = null;
  #earlier: EarlierList | null = null;
  /** What the earlier list was judged by. */
  #basis: Basis | null = null;
  /** The bytes of the list that is compared. */
  #bytes: Blob | null = null;
  #isRunning = false;

  constructor(store: Store, around: Surroundings, document: OpenDocument) {
    this.#store = store;
    this.#around = around;
    this.#document = document;
    store.addEventListener('change', () => this.#notice());
  }

  /** An earlier list is being read and judged. */
  get isUnderWay(): boolean {
    return this.#opening !== null;
  }

  /** Compares with a list or a project. */
  async withFile(file: HandedFile): Promise<void> {
    await this.#document.guard(async () => {
      const held = await holdFile(file);
      if (await isProject(held)) return this.#begin(earlierOf(parseProject(await held.data.text(), held.name)));
      const sheet = this.#document.work?.options.sheet;
      const options = sheet === undefined ? {} : { sheet };
      await this.#begin({ name: held.name, how: null, list: { file: held, options, cells: [], concessions: null } });
    });
  }

  /** Compares with a list that is kept on this computer. */
  async withKept(take: () => Promise<Project>): Promise<void> {
    await this.#document.guard(async () => this.#begin(earlierOf(await take())));
  }

  /** Compares with the open list as it was before anything was changed in it. */
  async withAsOpened(): Promise<void> {
    await this.#document.guard(async () => {
      const { work } = this.#document;
      if (work) await this.#begin(openAsRead(work));
    });
  }

  /** Ends a comparison under way; one that was there stays. */
  cancel(): void {
    this.#opening?.stop();
    this.#opening = null;
  }

  /** Goes back to the choice of an earlier list. */
  forget(): void {
    this.cancel();
    this.#worker?.stop();
    this.#worker = null;
    this.#earlier = null;
    if (this.#store.state.compared) this.#store.set({ compared: null });
  }

  /** Shows one kind of change alone; null: all kinds. */
  showKind(kind: string | null): void {
    const { compared } = this.#store.state;
    if (compared) this.#store.set({ compared: { ...compared, kind } });
  }

  /** Takes the concessions of the earlier list that still stand into the open one, as one step. */
  async takeOver(): Promise<void> {
    await this.#document.inTurn(async () => {
      const { compared, list, concessions } = this.#store.state;
      if (!compared || !list || compared.list !== list) return;
      const deed = deedOfCarried(compared, list, concessions);
      if (deed) await this.#document.do(deed);
    });
  }

  /** Saves the comparison as a file. */
  async save(format: Requests['comparedFile']['ask']['format']): Promise<void> {
    const { compared } = this.#store.state;
    const worker = this.#worker;
    if (!compared || !worker) return;
    await this.#document.guard(async () => {
      const ask = { format, date: this.#around.today() };
      const { bytes } = await worker.ask('comparedFile', ask, this.#document.progress('Writing the file'));
      const name = outputName(compared.shown.after.file, `compare.${format}`);
      this.#around.save(name, bytes);
      this.#store.set({ message: { kind: 'done', text: `Saved as ${name}.` } });
    });
  }

  /** Reads and compares in a worker of its own. */
  async #begin({ name, how, list: earlier }: EarlierChoice): Promise<void> {
    const { list, catalogues } = this.#store.state;
    const bytes = this.#document.work?.list.data;
    if (!list || !bytes) return;
    this.cancel();
    const worker = this.#around.startWorker();
    this.#opening = worker;
    try {
      const ask = { earlier, later: list, catalogues, remembered: recallColumns(this.#around.memory) };
      const shown = await worker.ask('compare', ask, this.#progress(`Comparing with ${name}`));
      if (this.#document.work?.list.data !== bytes) return;
      this.#worker?.stop();
      this.#worker = worker;
      this.#earlier = earlier;
      this.#basis = basisOf(catalogues, list);
      this.#bytes = bytes;
      this.#store.set({ compared: { name, how, shown, list, kind: null } });
    } finally {
      if (this.#worker !== worker) worker.stop();
      if (this.#opening === worker) this.#opening = null;
    }
  }

  #progress(what: string): OnProgress {
    const tell: OnProgress = (phase, share) => this.#store.set({ work: { what, phase, share, canCancel: true } });
    tell('reading', 0);
    return tell;
  }

  #notice(): void {
    const { compared } = this.#store.state;
    if (!compared) return;
    if (this.#document.work?.list.data !== this.#bytes) this.forget();
    else void this.#catchUp();
  }

  /** Compares again as long as the list shown is not the one that was compared; one run at a time. */
  async #catchUp(): Promise<void> {
    if (this.#isRunning) return;
    this.#isRunning = true;
    try {
      while (this.#isBehind()) await this.#again();
    } finally {
      this.#isRunning = false;
    }
  }

  #isBehind(): boolean {
    const { compared, list, view } = this.#store.state;
    return view === 'compare' && compared !== null && list !== null && compared.list !== list;
  }

  async #again(): Promise<void> {
    const { list, catalogues } = this.#store.state;
    const [worker, earlier] = [this.#worker, this.#earlier];
    if (!list || !worker || !earlier) return;
    const basis = basisOf(catalogues, list);
    const isSame = this.#basis?.catalogues === basis.catalogues && this.#basis.shop === basis.shop;
    const ask = { earlier: isSame ? null : earlier, later: list, catalogues: isSame ? [] : catalogues };
    try {
      const shown = await worker.ask('compare', { ...ask, remembered: recallColumns(this.#around.memory) });
      const { compared } = this.#store.state;
      if (worker !== this.#worker || !compared) return;
      this.#basis = basis;
      this.#store.set({ compared: { ...compared, shown, list } });
    } catch (error) {
      const text = error instanceof Error ? error.message : String(error);
      if (worker !== this.#worker) return;
      this.forget();
      this.#store.set({ message: { kind: 'error', text } });
    }
  }
}

/** What rows are judged by, to be compared: the settings as text. */
interface Basis {
  readonly catalogues: AppState['catalogues'];
  readonly shop: string;
}

function basisOf(catalogues: Basis['catalogues'], { shop }: AuditedList): Basis {
  return { catalogues, shop: JSON.stringify(shop) };
}
