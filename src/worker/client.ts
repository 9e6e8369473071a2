import type { Phase, Reply, RequestName, Requests } from './protocol.ts';

/** What the worker said when it could not do as asked: one sentence for the user. */
export class Refused extends Error {
  override readonly name = 'Refused';
}

export type OnProgress = (phase: Phase, share: number) => void;

interface Waiting {
  readonly resolve: (answer: never) => void;
  readonly reject: (error: Error) => void;
  readonly onProgress: OnProgress | undefined;
}

/** The page's side of one worker. Answers come back by run number; after `stop` none do. */
export class WorkerClient {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, Waiting>();
  #run = 0;

  constructor(worker: Worker) {
    this.#worker = worker;
    worker.onmessage = ({ data }: MessageEvent<Reply>) => this.#receive(data);
    worker.onerror = () => this.#rejectAll('The background work stopped unexpectedly. Open the list again.');
  }

  /** Asks for something; rejects with `Refused` and a sentence when it cannot be done. */
  ask<Name extends RequestName>(
    name: Name,
    ask: Requests[Name]['ask'],
    onProgress?: OnProgress,
  ): Promise<Requests[Name]['answer']> {
    const run = ++this.#run;
    return new Promise((resolve, reject) => {
      this.#waiting.set(run, { resolve, reject, onProgress });
      this.#worker.postMessage({ run, name, ask });
    });
  }

  /** Ends the worker at once, whatever it is doing. */
  stop(): void {
    this.#worker.terminate();
    this.#rejectAll('Cancelled.');
  }

  #receive(reply: Reply): void {
    const waiting = this.#waiting.get(reply.run);
    if (!waiting) return;
    if ('progress' in reply) {
      waiting.onProgress?.(reply.progress.phase, reply.progress.share);
      return;
    }
    this.#waiting.delete(reply.run);
    if ('sentence' in reply) waiting.reject(new Refused(reply.sentence));
    else waiting.resolve(reply.answer as never);
  }

  #rejectAll(sentence: string): void {
    for (const { reject } of this.#waiting.values()) reject(new Refused(sentence));
    this.#waiting.clear();
  }
}

/** Starts a worker of its own for one list. */
export function startWorker(): WorkerClient {
  return new WorkerClient(new Worker(new URL('./entry.ts', import.meta.url), { type: 'module' }));
}
