import type { WorkerClient } from '../worker/client.ts';
import type { HandedFile } from '../worker/protocol.ts';
import type { OpenMemory } from './shop-memory.ts';

/** Where the demo files come from and how a worker is started; a test can hand in its own. */
export interface Surroundings {
  readonly startWorker: () => WorkerClient;
  readonly fetchDemo: (which: 'list' | 'catalogue') => Promise<HandedFile>;
  readonly save: (name: string, bytes: Uint8Array) => void;
  readonly today: () => string;
  readonly memory: OpenMemory;
}
