import type { Catalogue } from '../core/model/fastener.ts';
import type { OnProgress } from '../worker/client.ts';
import type { HandedFile, Requests } from '../worker/protocol.ts';
import { usersFiles, withPartEdits } from './catalogue-files.ts';
import type { CurrentWorker } from './current-worker.ts';
import type { PartsChange } from './history.ts';
import type { Surroundings } from './surroundings.ts';

/** What the catalogues need of the document that is judged by them. */
export interface JudgedDocument {
  readonly progress: (what: string) => OnProgress;
  readonly guard: (work: () => Promise<void>) => Promise<void>;
  readonly show: (answer: Requests['catalogues']['answer']) => void;
}

/**
 * The catalogues that lists are judged by, as their files; the demo catalogue stands in where the user has loaded none. Fires `change`
 * where the user has changed them; those of a list that is opened again are no such change.
 */
export class OpenCatalogues extends EventTarget {
  readonly #around: Surroundings;
  readonly #worker: CurrentWorker;
  readonly #document: JudgedDocument;
  /** The user's, in their order of rank. */
  files: readonly HandedFile[] = [];
  #turn: Promise<void> = Promise.resolve();

  constructor(around: Surroundings, worker: CurrentWorker, document: JudgedDocument) {
    super();
    this.#around = around;
    this.#worker = worker;
    this.#document = document;
  }

  /** One change of the catalogues after the other: each is made to those that the one before has left. */
  use(change: (loaded: readonly HandedFile[]) => readonly HandedFile[]): Promise<void> {
    return this.#inTurn(() => this.#document.guard(() => this.#judgeBy(change(this.files))));
  }

  /** Edits of a catalogue that is not loaded any more have gone with it: the step is passed over. */
  editParts(change: PartsChange): Promise<void> {
    return this.#inTurn(async () => {
      const loaded = await this.orDemo(this.files);
      if (loaded.some(({ name }) => name === change.catalogue)) await this.#judgeBy(withPartEdits(loaded, change));
    });
  }

  /** The files in their order of rank, after the changes under way; that of the demo catalogue where it stands in. */
  async settled(): Promise<readonly HandedFile[]> {
    await this.#turn;
    return this.orDemo(this.files);
  }

  /** Whether the user has loaded no catalogue. */
  get isDemoStandingIn(): boolean {
    return this.files.every(({ standsIn }) => standsIn === true);
  }

  /** Names of the user's files, in the order in which the catalogues are shown now; they are told apart by these. */
  get names(): readonly string[] {
    return this.files.map(({ name }) => name);
  }

  /** A catalogue as the bytes of a table. */
  async write(catalogue: Catalogue): Promise<Uint8Array> {
    return this.#worker.forErrand(async (worker) => (await worker.ask('catalogueFile', { catalogue })).bytes);
  }

  async orDemo(files: readonly HandedFile[]): Promise<readonly HandedFile[]> {
    return files.length > 0 ? files : [{ ...(await this.#around.fetchDemo('catalogue')), standsIn: true }];
  }

  #inTurn(work: () => Promise<void>): Promise<void> {
    const done = this.#turn.then(work);
    this.#turn = done.catch(() => {});
    return done;
  }

  async #judgeBy(files: readonly HandedFile[]): Promise<void> {
    const catalogues = await this.orDemo(files);
    await this.#worker.forErrand(async (worker) => {
      this.#document.show(
        await worker.ask('catalogues', { catalogues }, this.#document.progress('Judging by the catalogue')),
      );
      this.files = usersFiles(files);
      this.dispatchEvent(new Event('change'));
    });
  }
}
