import { addPart, type EditOutcome, editPart, removePart, revertPart } from '../core/catalogue/edit-part.ts';
import { partKey } from '../core/catalogue/part-key.ts';
import type { CellFault } from '../core/catalogue/read-cells.ts';
import type { Totals } from '../core/model/audited.ts';
import type { Catalogue, Fastener } from '../core/model/fastener.ts';
import { VERDICTS } from '../core/model/outcome.ts';
import type { PartCells, PartEdit } from '../core/model/part-edit.ts';
import type { HandedFile } from '../worker/protocol.ts';
import { namedApart } from './catalogue-files.ts';
import { holdFile } from './hold-file.ts';
import type { OpenDocument } from './open-document.ts';
import { outputName } from './output-name.ts';
import type { Store } from './store.ts';
import type { Surroundings } from './surroundings.ts';

const DEMO_BY_OWN =
  'The demo list was judged by your own catalogues. Its parts stand in the demo catalogue, which stands in again once yours are removed under Catalogue.';

/**
 * Everything that the user can do with catalogues. A catalogue is named by its position in the order of rank as it is shown at that
 * moment: work under way may change the order before its turn comes.
 */
export class Catalogues {
  readonly #store: Store;
  readonly #around: Surroundings;
  readonly #document: OpenDocument;

  constructor(store: Store, around: Surroundings, document: OpenDocument) {
    this.#store = store;
    this.#around = around;
    this.#document = document;
  }

  /** Whether the user has loaded no catalogue, so that the demo catalogue stands in. */
  get isDemoStandingIn(): boolean {
    return this.#document.catalogues.isDemoStandingIn;
  }

  /** Calls back with the user's catalogues whenever these have changed. */
  onChange(listen: (files: readonly HandedFile[]) => void): void {
    const { catalogues } = this.#document;
    catalogues.addEventListener('change', () => listen(catalogues.files));
  }

  /** Goes on with catalogues of an earlier visit, where none are loaded yet; they are read when a list is opened. */
  recall(files: readonly HandedFile[]): void {
    if (this.#document.catalogues.files.length > 0) return;
    this.#document.catalogues.files = files;
    this.#store.set({ recalled: files.map(({ name }) => name) });
  }

  /** Says so when the demo list is judged by catalogues that do not hold its parts. */
  noticeDemo(): void {
    if (!this.isDemoStandingIn) this.#store.set({ message: { kind: 'done', text: DEMO_BY_OWN } });
  }

  /** Adds catalogues behind those already loaded; the demo catalogue gives way to them, edited or not. */
  async add(files: readonly HandedFile[]): Promise<void> {
    await this.#document.guard(async () => {
      const held = await Promise.all(files.map(holdFile));
      await this.#document.catalogues.use((loaded) => {
        const users = loaded.filter(({ standsIn }) => !standsIn);
        return [...users, ...namedApart(users, held)];
      });
    });
  }

  /** Takes a catalogue out; with none left the demo catalogue stands in. */
  async remove(position: number): Promise<void> {
    const name = this.#document.catalogues.names[position];
    await this.#document.catalogues.use((loaded) => loaded.filter((file) => file.name !== name));
  }

  /** Ranks a catalogue one place higher or lower. */
  async move(position: number, by: -1 | 1): Promise<void> {
    const name = this.#document.catalogues.names[position];
    await this.#document.catalogues.use((loaded) => {
      const ranked = [...loaded];
      const at = ranked.findIndex((file) => file.name === name);
      const [moved] = at < 0 ? [] : ranked.splice(at, 1);
      if (moved) ranked.splice(Math.max(0, at + by), 0, moved);
      return ranked;
    });
  }

  /** Sets cells of a part as typed, as one step; gives back why not, cell by cell. */
  editPart(position: number, part: Fastener, typed: PartCells): Promise<readonly CellFault[]> {
    const { units } = this.#store.state.shop;
    return this.#step(position, `edit ${part.partNumber} in the catalogue`, (catalogue) =>
      editPart(catalogue, partNow(catalogue, part), typed, units),
    );
  }

  /** Adds a part as typed, as one step; gives back why not, cell by cell. */
  addPart(position: number, typed: PartCells): Promise<readonly CellFault[]> {
    const { units } = this.#store.state.shop;
    return this.#step(position, `add ${typed.partNumber} to the catalogue`, (catalogue) =>
      addPart(catalogue, typed, units),
    );
  }

  async removePart(position: number, part: Fastener): Promise<void> {
    const name = `take ${part.partNumber} out of the catalogue`;
    await this.#step(position, name, (catalogue) => ({ edits: removePart(catalogue, part) }));
  }

  /** Gives a part back as the file has it, also one that was taken out. */
  async revertPart(position: number, partNumber: string): Promise<void> {
    const name = `take ${partNumber} as its file has it`;
    await this.#step(position, name, (catalogue) => ({ edits: revertPart(catalogue, partNumber) }));
  }

  /** Saves a catalogue as it stands, as a table that can be loaded again. */
  async save(position: number): Promise<void> {
    const catalogue = this.#store.state.catalogues[position];
    if (!catalogue) return;
    await this.#document.guard(async () => {
      const bytes = await this.#document.catalogues.write(catalogue);
      const file = (await this.#document.catalogues.settled())[position];
      const name = outputName(file?.name ?? catalogue.name, catalogue.edits ? 'edited.csv' : 'catalogue.csv');
      this.#around.save(name, bytes);
      this.#store.set({ message: { kind: 'done', text: `Saved as ${name}.` } });
    });
  }

  /** Makes an edit one step, each from what the one before has left, and says what it did to the list. */
  async #step(
    position: number,
    name: string,
    edit: (catalogue: Catalogue) => EditOutcome,
  ): Promise<readonly CellFault[]> {
    let faults: readonly CellFault[] = [];
    const wanted = this.#document.catalogues.names[position];
    await this.#document.inTurn(async () => {
      const files = await this.#document.catalogues.settled();
      const at = wanted === undefined ? position : files.findIndex((one) => one.name === wanted);
      const [catalogue, file] = [this.#store.state.catalogues[at], files[at]];
      if (!catalogue || !file) return;
      const outcome = edit(catalogue);
      if ('faults' in outcome) faults = outcome.faults;
      else await this.#make(name, file.name, catalogue.edits ?? [], outcome.edits);
    });
    return faults;
  }

  async #make(name: string, catalogue: string, before: readonly PartEdit[], after: readonly PartEdit[]): Promise<void> {
    if (JSON.stringify(before) === JSON.stringify(after)) return;
    const former = this.#store.state.list?.totals;
    const change = (edits: readonly PartEdit[]) => ({ parts: { catalogue, edits } });
    await this.#document.do({ name, after: change(after), before: change(before) });
    const { list, message } = this.#store.state;
    if (message?.kind === 'error') return;
    const text = former && list ? sayTotals(former, list.totals) : 'Catalogue edited.';
    this.#store.set({ message: { kind: 'done', text } });
  }
}

/** The part as earlier steps have left it: what is on screen may be older. */
function partNow({ fasteners }: Catalogue, part: Fastener): Fastener {
  const key = partKey(part.partNumber);
  return fasteners.find(({ partNumber }) => partKey(partNumber) === key) ?? part;
}

function sayTotals(before: Totals, after: Totals): string {
  const changed = VERDICTS.filter((verdict) => before[verdict] !== after[verdict]);
  if (changed.length === 0)
    return 'Catalogue edited; the list was judged again, and as many rows as before have each verdict.';
  return `Catalogue edited; the list was judged again: ${changed.map((verdict) => `${verdict} ${before[verdict]} → ${after[verdict]}`).join(', ')}.`;
}
