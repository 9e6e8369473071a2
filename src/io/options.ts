import { type TextReading, Unreadable } from '../core/model/raw.ts';

/** What a caller may settle beforehand about text files (over any guess and a `sep=` line), and how it follows a long read. */
export interface ReadOptions extends TextReading {
  /** Hears the share read so far, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Asked now and then; true stops the reading. */
  readonly isCancelled?: () => boolean;
}

/**
 * Tells how far the reading is.
 * @throws Unreadable when the caller has stopped it.
 */
export function reportProgress(options: ReadOptions, file: string, share: number): void {
  options.onProgress?.(share);
  if (options.isCancelled?.() === true) {
    throw new Unreadable(`Reading ‘${file}’ was stopped; load it again to read it whole.`);
  }
}
