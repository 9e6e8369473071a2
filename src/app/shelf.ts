import type { Totals } from '../core/model/audited.ts';
import type { HandedFile } from '../worker/protocol.ts';
import { makeRoom } from './shelf-room.ts';

/** What is shown of a list on the shelf. */
export interface ShelfEntry {
  readonly id: string;
  readonly name: string;
  /** ISO 8601, in UTC. */
  readonly savedAt: string;
  readonly totals: Totals;
  /** Steps that can be taken back or made again. */
  readonly steps: number;
  /** Of the list's file alone. */
  readonly fileBytes: number;
  /** Of everything that is kept. */
  readonly bytes: number;
  /** Another one at each save, by which a save of another tab is noticed. */
  readonly stamp: string;
}

/** A document as it is put on the shelf: its text, and the files that it builds on. */
export interface ShelfDocument extends Pick<ShelfEntry, 'name' | 'savedAt' | 'totals' | 'steps'> {
  readonly text: string;
  readonly list: HandedFile;
  readonly catalogues: readonly HandedFile[];
}

/** Where a document was put or taken from, and the catalogues that lie there with it. */
export interface Place extends Pick<ShelfEntry, 'id' | 'stamp'> {
  readonly catalogues: readonly HandedFile[];
}

/** Catalogues as they are kept between visits, and the save that they came by. */
export interface KeptCatalogues {
  readonly files: readonly HandedFile[];
  readonly stamp: string;
}

const NAME = 'clinchsheet';
/** One small record a document in `entries`, its text in `texts`, list and catalogues under keys of their own in `files`. */
const STORES = ['entries', 'texts', 'files'];

/** Lists kept in the browser's own database. Every method rejects where the browser forbids it or has no room. */
export class Shelf {
  readonly #factory: () => IDBFactory;

  /** Reaching for the factory may throw where storage is forbidden. */
  constructor(factory: () => IDBFactory) {
    this.#factory = factory;
  }

  /** What is kept, the latest first. */
  async entries(): Promise<readonly ShelfEntry[]> {
    return this.#within('readonly', async (shelf) => latestFirst(await allEntries(shelf)));
  }

  /** A document and its place; null when it is no longer kept. */
  async take(id: string): Promise<{ readonly document: ShelfDocument; readonly place: Place } | null> {
    return this.#within('readonly', async (shelf) => {
      const entry: ShelfEntry | undefined = await settle(shelf.objectStore('entries').get(id));
      const text: string | undefined = await settle(shelf.objectStore('texts').get(id));
      const list: HandedFile | undefined = await settle(shelf.objectStore('files').get(listKey(id)));
      const catalogues: readonly HandedFile[] = await settle(shelf.objectStore('files').get(cataloguesKey(id)));
      if (!entry || text === undefined || !list) return null;
      return { document: { ...entry, text, list, catalogues }, place: { id, stamp: entry.stamp, catalogues } };
    });
  }

  /**
   * Keeps a document in its place. Where that holds what another tab has saved since, the document gets a place of its own,
   * so that neither is lost. The files are written only when they are not there yet.
   */
  async put(document: ShelfDocument, place: Place | null): Promise<Place> {
    return this.#within('readwrite', async (shelf) => {
      const there: ShelfEntry | undefined = await settle(shelf.objectStore('entries').get(place?.id ?? ''));
      const isOurs = !there || there.stamp === place?.stamp;
      const id = place && isOurs ? place.id : freshName();
      const isNew = !there || !isOurs;
      const entry = entryOf(document, id);
      shelf.objectStore('entries').put(entry, id);
      shelf.objectStore('texts').put(document.text, id);
      const files = shelf.objectStore('files');
      if (isNew) files.put(document.list, listKey(id));
      if (isNew || place?.catalogues !== document.catalogues) files.put(document.catalogues, cataloguesKey(id));
      for (const old of makeRoom(latestFirst(await allEntries(shelf)), entry)) dropFrom(shelf, old.id);
      return { id, stamp: entry.stamp, catalogues: document.catalogues };
    });
  }

  async drop(id: string): Promise<void> {
    await this.#within('readwrite', async (shelf) => dropFrom(shelf, id));
  }

  /** The catalogues that were in use last, and by which save they came here; null where none were kept. */
  async takeCatalogues(): Promise<KeptCatalogues | null> {
    return this.#within('readonly', async (shelf) => (await settle(shelf.objectStore('files').get(IN_USE))) ?? null);
  }

  /** Keeps the catalogues in use, over those of the save with that stamp; null where another tab has saved others since. */
  async putCatalogues(files: readonly HandedFile[], stamp: string | null): Promise<string | null> {
    return this.#within('readwrite', async (shelf) => {
      const there: KeptCatalogues | undefined = await settle(shelf.objectStore('files').get(IN_USE));
      if (there && there.stamp !== stamp) return null;
      const kept: KeptCatalogues = { files, stamp: freshName() };
      shelf.objectStore('files').put(kept, IN_USE);
      return kept.stamp;
    });
  }

  /** Runs one transaction; what it returns counts only once all of it is on disk. */
  async #within<T>(mode: IDBTransactionMode, work: (shelf: IDBTransaction) => Promise<T>): Promise<T> {
    const database = await openDatabase(this.#factory());
    try {
      const shelf = database.transaction(STORES, mode, { durability: 'strict' });
      const finished = settleTransaction(shelf);
      const [result] = await Promise.all([work(shelf), finished]);
      return result;
    } finally {
      database.close();
    }
  }
}

function openDatabase(factory: IDBFactory): Promise<IDBDatabase> {
  const request = factory.open(NAME, 1);
  request.onupgradeneeded = () => {
    for (const store of STORES) request.result.createObjectStore(store);
  };
  return settle(request);
}

function settle<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function settleTransaction(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
  });
}

function allEntries(shelf: IDBTransaction): Promise<readonly ShelfEntry[]> {
  return settle(shelf.objectStore('entries').getAll());
}

function latestFirst(entries: readonly ShelfEntry[]): readonly ShelfEntry[] {
  return entries.toSorted((a, b) => b.savedAt.localeCompare(a.savedAt));
}

function entryOf({ name, savedAt, totals, steps, text, list, catalogues }: ShelfDocument, id: string): ShelfEntry {
  const bytes = [list, ...catalogues].reduce((sum, { data }) => sum + data.size, text.length);
  return { id, name, savedAt, totals, steps, fileBytes: list.data.size, bytes, stamp: freshName() };
}

function dropFrom(shelf: IDBTransaction, id: string): void {
  shelf.objectStore('entries').delete(id);
  shelf.objectStore('texts').delete(id);
  for (const key of [listKey(id), cataloguesKey(id)]) shelf.objectStore('files').delete(key);
}

function freshName(): string {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
}

const IN_USE = 'catalogues in use';
const listKey = (id: string) => `${id} list`;
const cataloguesKey = (id: string) => `${id} catalogues`;
