import { RowAssembly } from './packed-rows.ts';
import type { Message, Phase, Reply, RequestName, Requests } from './protocol.ts';
import { ReplayLog } from './replay-log.ts';
import { putRowsIn } from './rows-of-answer.ts';
import { watchLife } from './worker-life.ts';

/** What the worker said when it could not do as asked: one sentence for the user. */
export class Refused extends Error {
  override readonly name = 'Refused';
}

export type OnProgress = (phase: Phase, share: number) => void;

interface Waiting {
  readonly message: Message;
  readonly resolve: (answer: never) => void;
  readonly reject: (error: Error) => void;
  readonly onProgress: OnProgress | undefined;
  /** Rows that have come so far; none yet. */
  rows: RowAssembly | null;
  isRepeated: boolean;
}

type Answered = Extract<Reply, { readonly answer: unknown } | { readonly sentence: string }>;

const DIED_TWICE =
  'The work in the background stopped twice, perhaps for want of memory. Your list and all you did are as they were: save the project, close other tabs, and try again.';

/**
 * The page's side of one worker. Answers come back by run number; after `stop` none do. A worker that dies is started again with what
 * was open, and what it was asked is asked once more; what it dies of a second time is refused.
 */
export class WorkerClient {
  readonly #start: () => Worker;
  readonly #waiting = new Map<number, Waiting>();
  readonly #log = new ReplayLog();
  #worker: Worker | null;
  #isStopped = false;
  #run = 0;

  constructor(start: () => Worker) {
    this.#start = start;
    this.#worker = this.#begin();
  }

  /** Asks for something; rejects with `Refused` and a sentence when it cannot be done. */
  ask<Name extends RequestName>(
    name: Name,
    ask: Requests[Name]['ask'],
    onProgress?: OnProgress,
  ): Promise<Requests[Name]['answer']> {
    const message = { run: ++this.#run, name, ask } as Message;
    return new Promise((resolve, reject) => {
      this.#waiting.set(message.run, { message, resolve, reject, onProgress, rows: null, isRepeated: false });
      if (this.#worker) this.#worker.postMessage(message);
      else this.#revive();
    });
  }

  /** Ends the worker at once, whatever it is doing. */
  stop(): void {
    this.#isStopped = true;
    this.#worker?.terminate();
    this.#worker = null;
    this.#rejectAll('Cancelled.');
  }

  #begin(): Worker {
    const worker = this.#start();
    worker.onmessage = ({ data }: MessageEvent<Reply>) => {
      if (worker === this.#worker) this.#receive(data);
    };
    watchLife(worker, () => this.#mourn(worker));
    return worker;
  }

  #receive(reply: Reply): void {
    const waiting = this.#waiting.get(reply.run);
    if (!waiting) return;
    if ('progress' in reply) waiting.onProgress?.(reply.progress.phase, reply.progress.share);
    else if ('rows' in reply) {
      waiting.rows ??= new RowAssembly();
      waiting.rows.add(reply.rows);
    } else this.#settle(waiting, reply);
  }

  #settle({ message, rows, resolve, reject }: Waiting, reply: Answered): void {
    this.#waiting.delete(reply.run);
    if ('sentence' in reply) {
      reject(new Refused(reply.sentence));
      return;
    }
    this.#log.note(message);
    resolve((rows ? putRowsIn(reply.answer, rows) : reply.answer) as never);
  }

  /** The worker has died: what it had been asked is asked of another, unless that was so before. */
  #mourn(worker: Worker): void {
    if (this.#isStopped || worker !== this.#worker) return;
    worker.terminate();
    this.#worker = null;
    for (const [run, waiting] of this.#waiting) {
      if (waiting.isRepeated) {
        this.#waiting.delete(run);
        waiting.reject(new Refused(DIED_TWICE));
      }
      waiting.isRepeated = true;
      waiting.rows = null;
    }
    if (this.#waiting.size > 0) this.#revive();
  }

  /** A new worker, brought to where the last one was; then it gets what is waiting. */
  #revive(): void {
    const worker = this.#begin();
    this.#worker = worker;
    for (const message of this.#log.messages(() => ++this.#run)) worker.postMessage(message);
    for (const { message } of this.#waiting.values()) worker.postMessage(message);
  }

  #rejectAll(sentence: string): void {
    for (const { reject } of this.#waiting.values()) reject(new Refused(sentence));
    this.#waiting.clear();
  }
}

/** Starts a worker of its own for one list. */
export function startWorker(): WorkerClient {
  return new WorkerClient(() => new Worker(new URL('./entry.ts', import.meta.url), { type: 'module' }));
}
