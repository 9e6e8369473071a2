import { type TextEncoding, Unreadable } from '../core/model/raw.ts';

/** What a caller may settle beforehand, and how it follows a long read. */
export interface ReadOptions {
  /** Text files: overrides the guess. */
  readonly encoding?: TextEncoding;
  /** Text files: the separator, one character; overrides the guess and a `sep=` line. */
  readonly delimiter?: string;
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
