/** The message by which a worker names its lock. */
export const ALIVE = 'alive';

/**
 * Calls `onDeath` when a worker has come to its end by itself: by an error that it did not catch, for want of memory, or without a
 * word. The last is seen by a lock that a worker holds as long as it lives; where the browser has no locks, errors alone are seen.
 */
export function watchLife(worker: Worker, onDeath: () => void): void {
  worker.onerror = (event) => {
    event.preventDefault?.();
    onDeath();
  };
  worker.onmessageerror = onDeath;
  worker.addEventListener?.('message', ({ data }: MessageEvent) => {
    if (data?.[ALIVE]) void navigator.locks.request(data[ALIVE], onDeath);
  });
}

/** Runs in the worker: takes its lock for good and says so, before anything else is done. */
export function showLife(send: (message: object) => void): Promise<void> {
  if (!('locks' in navigator)) return Promise.resolve();
  const name = `worker ${Date.now().toString(36)} ${Math.random().toString(36).slice(2)}`;
  return new Promise((resolve) => {
    const hold = () => {
      send({ [ALIVE]: name });
      resolve();
      return new Promise(() => {});
    };
    navigator.locks.request(name, hold).catch(() => resolve());
  });
}
