import { Refused } from '../worker/client.ts';
import type { Store } from './store.ts';

/** Runs one piece of work; a refusal becomes a sentence on screen and changes nothing else. `ifNot` is said behind it. */
export async function guardWork(store: Store, work: () => Promise<void>, ifNot: string): Promise<void> {
  try {
    await work();
  } catch (error) {
    const cancelled = error instanceof Refused && error.message === 'Cancelled.';
    const text = error instanceof Error ? error.message : String(error);
    if (!cancelled) store.set({ message: { kind: 'error', text: `${text} ${ifNot}`.trim() } });
  } finally {
    if (store.state.work) store.set({ work: null });
  }
}
