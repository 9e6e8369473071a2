import type { HandedFile } from '../worker/protocol.ts';
import type { Commands } from './commands.ts';
import type { History } from './history.ts';
import { parseProject } from './parse-project.ts';
import { type OpenWork, type Project, showProjectAlone, toProject } from './project.ts';
import type { Place, Shelf, ShelfDocument } from './shelf.ts';
import type { AppState } from './state.ts';
import type { Store } from './store.ts';

/** From the first change that is not kept yet to its being kept: well under a second with the writing. */
const WAIT_MS = 600;

/** The work at one moment. */
interface Snapshot {
  readonly work: OpenWork;
  readonly state: AppState;
}

/**
 * Keeps the open list on the shelf without being asked, and brings kept lists back. One write at a time; where the shelf cannot be
 * used, one sentence says so and the work stays in memory.
 */
export class Autosave {
  readonly #store: Store;
  readonly #commands: Commands;
  readonly #shelf: Shelf;
  /** Where each document of this tab lies. */
  readonly #places = new WeakMap<HandedFile, Place>();
  #kept: Snapshot | null = null;
  #waiting: Snapshot | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> = Promise.resolve();
  #hasComplained = false;

  constructor(store: Store, commands: Commands, shelf: Shelf) {
    this.#store = store;
    this.#commands = commands;
    this.#shelf = shelf;
    store.addEventListener('change', () => this.#notice());
  }

  /** Shows what is kept besides the open list; where nothing can be kept, there is nothing to show. */
  async showKept(): Promise<void> {
    await this.flush();
    const entries = await this.#shelf.entries().catch(() => []);
    const { work } = this.#commands;
    const own = work && this.#places.get(work.list)?.id;
    this.#store.set({ shelf: entries.filter(({ id }) => id !== own) });
  }

  /** The work on a kept list, to look at; it stays where it is. Throws with a sentence for the user. */
  async lookAt(id: string): Promise<Project> {
    return (await this.#take(id)).project;
  }

  /** Opens a kept list where it was left. */
  async continueWith(id: string): Promise<void> {
    try {
      const { project, place } = await this.#take(id);
      this.#places.set(project.list, place);
      await this.#commands.restore(project);
      if (this.#commands.work?.list === project.list) this.#settle();
    } catch (error) {
      this.#store.set({ message: { kind: 'error', text: error instanceof Error ? error.message : String(error) } });
      await this.showKept();
    }
  }

  async #take(id: string): Promise<{ readonly project: Project; readonly place: Place }> {
    const kept = await this.#shelf.take(id);
    if (!kept) throw new Error('This list is no longer kept in this browser.');
    return { project: parseProject(kept.document.text, kept.document.name, kept.document), place: kept.place };
  }

  /** Takes a kept list off the shelf for good. */
  async drop(id: string): Promise<void> {
    await this.#shelf.drop(id).catch(() => {});
    await this.showKept();
  }

  /** Keeps at once what is waiting to be kept. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const waiting = this.#waiting;
    this.#waiting = null;
    if (waiting) this.#writing = this.#writing.then(() => this.#write(waiting));
    return this.#writing;
  }

  /** Whether steps of the user's would be lost if the page went now. */
  get hasUnsavedWork(): boolean {
    const { work } = this.#commands;
    if (!work || work.isFiled || countSteps(work.history) === 0) return false;
    return !this.#kept || this.#kept.work.list !== work.list || this.#kept.work.history !== work.history;
  }

  #notice(): void {
    const now = this.#look();
    if (!now) return;
    if (this.#waiting && this.#waiting.work.list !== now.work.list) this.flush();
    this.#waiting = this.#kept && isSame(this.#kept, now) ? null : now;
    if (this.#waiting) this.#timer ??= setTimeout(() => this.flush(), WAIT_MS);
  }

  #look(): Snapshot | null {
    const { work } = this.#commands;
    return work && { work, state: this.#store.state };
  }

  /** What is open now lies on the shelf already. */
  #settle(): void {
    this.#kept = this.#look();
    this.#waiting = null;
  }

  async #write(snapshot: Snapshot): Promise<void> {
    const { list } = snapshot.work;
    try {
      this.#places.set(list, await this.#shelf.put(documentOf(snapshot), this.#places.get(list) ?? null));
      this.#kept = snapshot;
      this.#hasComplained = false;
    } catch (error) {
      this.#complain(error, snapshot.work);
    }
  }

  #complain(error: unknown, { history }: OpenWork): void {
    if (this.#hasComplained || countSteps(history) === 0) return;
    this.#hasComplained = true;
    const isFull = error instanceof DOMException && error.name === 'QuotaExceededError';
    const why = isFull ? 'its storage is full' : 'it allows no storage here';
    const text = `This browser keeps no copy of your work (${why}): save the project to a file before you leave.`;
    this.#store.set({ message: { kind: 'error', text } });
  }
}

function documentOf({ work, state }: Snapshot): ShelfDocument {
  const savedAt = new Date().toISOString();
  const { list, catalogues, history } = work;
  const totals = state.list?.totals ?? { holds: 0, marginal: 0, fails: 0, unknown: 0 };
  const text = showProjectAlone(toProject(work, state, savedAt));
  return { name: list.name, savedAt, totals, steps: countSteps(history), text, list, catalogues };
}

function countSteps({ done, undone }: History): number {
  return done.length + undone.length;
}

function isSame(a: Snapshot, b: Snapshot): boolean {
  const works = ['list', 'history', 'catalogues'] as const;
  const parts = ['list', 'shop', 'filter', 'selectedRow'] as const;
  return works.every((part) => a.work[part] === b.work[part]) && parts.every((part) => a.state[part] === b.state[part]);
}
