import { type TextReading, Unreadable } from '../core/model/raw.ts';

/** What a caller may settle beforehand about text files (over any guess and a `sep=` line), and how it follows a long read. */
export interface ReadOptions extends TextReading {
  /** Hears the share read so far, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Asked now and then; true stops the reading. */
  readonly isCancelled?: () => boolean;
  /** Longest that the reading may take; two minutes where nothing is said, which the largest list stays far below. */
  readonly mostMs?: number;
}

const MOST_MS = 120_000;

/**
 * Called now and then while a file is read, with the share read so far where that is known.
 * @throws Unreadable when the caller has stopped it, or when it takes too long.
 */
export type Report = (share?: number) => void;

/** Watches over the reading of one file, from now on. */
export function watchReading({ onProgress, isCancelled, mostMs = MOST_MS }: ReadOptions, file: string): Report {
  const until = performance.now() + mostMs;
  return (share) => {
    if (share !== undefined) onProgress?.(share);
    if (isCancelled?.() === true) {
      throw new Unreadable(`Reading ‘${file}’ was stopped; load it again to read it whole.`);
    }
    if (performance.now() > until) {
      throw new Unreadable(
        `Reading ‘${file}’ took more than ${Math.round(mostMs / 1000)} s and was given up; save the list alone in a file of its own.`,
      );
    }
  };
}
