import type { WorkerClient } from '../worker/client.ts';
import type { Surroundings } from './surroundings.ts';

/** The worker of the open list, and the one in which another list is being opened. */
export class CurrentWorker {
  readonly #start: Surroundings['startWorker'];
  #current: WorkerClient | null = null;
  #opening: WorkerClient | null = null;

  constructor(start: Surroundings['startWorker']) {
    this.#start = start;
  }

  /** Null before the first list. */
  get current(): WorkerClient | null {
    return this.#current;
  }

  get isOpening(): boolean {
    return this.#opening !== null;
  }

  /** Ends the opening under way; whatever was open stays. */
  cancel(): void {
    this.#opening?.stop();
    this.#opening = null;
  }

  /** Opens something in a worker of its own; `open` asks for what it needs and gives back how to take it over, or null to leave what is open. */
  async openInFresh(open: (worker: WorkerClient) => Promise<(() => void) | null>): Promise<void> {
    this.#opening?.stop();
    const worker = this.#start();
    this.#opening = worker;
    try {
      const takeOver = await open(worker);
      if (!takeOver) return;
      this.#current?.stop();
      this.#current = worker;
      takeOver();
    } finally {
      if (this.#current !== worker) worker.stop();
      if (this.#opening === worker) this.#opening = null;
    }
  }

  /** Asks the worker of the open list, or one for this errand alone. */
  async forErrand<T>(work: (worker: WorkerClient) => Promise<T>): Promise<T> {
    const worker = this.#current ?? this.#start();
    try {
      return await work(worker);
    } finally {
      if (worker !== this.#current) worker.stop();
    }
  }
}
