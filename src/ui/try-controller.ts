import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { CellEdit, Trial } from '../worker/protocol.ts';

/** Keeps the trial of an edit up to date with the rows that are ticked. A late answer to an earlier question is dropped. */
export class TryController implements ReactiveController {
  /** The trial with every row; null until it is there. */
  all: Trial | null = null;
  now: Trial | null = null;
  ticked: ReadonlySet<number> = new Set();
  readonly #host: ReactiveControllerHost;
  readonly #ask: (cells: readonly CellEdit[]) => Promise<Trial | null>;
  #cells: readonly CellEdit[] = [];
  #question = 0;

  constructor(host: ReactiveControllerHost, ask: (cells: readonly CellEdit[]) => Promise<Trial | null>) {
    this.#host = host;
    this.#ask = ask;
    host.addController(this);
  }

  hostConnected(): void {}

  /** What was tried is no longer what is wanted: nothing stands until the next trial. */
  forget(): void {
    this.#question++;
    this.all = null;
    this.now = null;
    this.#host.requestUpdate();
  }

  /** Tries other cells, all of their rows ticked. */
  async begin(cells: readonly CellEdit[]): Promise<void> {
    this.#cells = cells;
    this.ticked = new Set(cells.map(({ row }) => row));
    const trial = await this.#try(cells);
    if (!trial) return;
    this.all = trial;
    this.now = trial;
    this.#host.requestUpdate();
  }

  /** Tries the same with only some rows. */
  async tick(rows: ReadonlySet<number>): Promise<void> {
    this.ticked = rows;
    this.#host.requestUpdate();
    this.now = (await this.#try(this.#cells.filter(({ row }) => rows.has(row)))) ?? this.now;
    this.#host.requestUpdate();
  }

  async #try(cells: readonly CellEdit[]): Promise<Trial | null> {
    const question = ++this.#question;
    const trial = await this.#ask(cells).catch(() => null);
    return question === this.#question ? trial : null;
  }
}
