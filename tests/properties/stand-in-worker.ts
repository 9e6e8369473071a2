import { readFileSync } from 'node:fs';
import { Commands } from '../../src/app/commands.ts';
import { Store } from '../../src/app/store.ts';
import { WorkerClient } from '../../src/worker/client.ts';
import { type Desk, handle } from '../../src/worker/handle.ts';
import type { HandedFile, Message, Reply } from '../../src/worker/protocol.ts';

const DEMO = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
/** Some of the demo parts: a sequence of commands opens the list anew each time. */
const CATALOGUE = readFileSync(DEMO, 'utf8')
  .split('\n')
  .filter((line) => /^(?:partNumber|NUT-M[34]-|STUD-M4-10-)/.test(line))
  .join('\n');

/** A list, its commands, and a worker that answers in the same thread. */
export interface Bench {
  readonly store: Store;
  readonly commands: Commands;
  /** What the worker holds. */
  readonly desk: Desk;
}

/** Opens a text as a list, judged by the demo catalogue. */
export async function openBench(text: string): Promise<Bench> {
  const store = new Store();
  const desk: Desk = { session: null, upload: new Uint8Array() };
  const memory = new Map<string, string>();
  const commands = new Commands(store, {
    startWorker: () => new WorkerClient(() => standIn(desk)),
    fetchDemo: async () => handed('demo-catalogue.csv', Buffer.from(CATALOGUE)),
    save: () => {},
    today: () => '2025-03-14',
    memory: () => ({
      getItem: (key) => memory.get(key) ?? null,
      setItem: (key, value) => {
        memory.set(key, value);
      },
    }),
  });
  await commands.openFile(handed('list.csv', Buffer.from(text)));
  return { store, commands, desk };
}

function handed(name: string, bytes: Uint8Array): HandedFile {
  return { name, data: new Blob([new Uint8Array(bytes)]) };
}

/** As much of a worker as its client uses: messages are answered one after the other by `handle`. */
function standIn(desk: Desk): Worker {
  let before: Promise<void> = Promise.resolve();
  const worker = {
    onmessage: null as ((event: { data: Reply }) => void) | null,
    onerror: null,
    postMessage(message: Message) {
      const answer = (data: Reply) => worker.onmessage?.({ data });
      before = before.then(() => handle(desk, message, answer));
    },
    terminate() {},
  };
  return worker as unknown as Worker;
}
