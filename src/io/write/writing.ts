import { Unreadable } from '../../core/model/raw.ts';
import type { SheetPlan } from './sheet-plan.ts';

/** How a caller follows a long export. */
export interface WriteOptions {
  /** Hears the share written so far, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Asked now and then; true stops the writing. */
  readonly isCancelled?: () => boolean;
}

/** The caller has stopped the writing. */
export class Stopped extends Unreadable {}

const ROWS_BETWEEN = 2000;

/**
 * Hears of each row that is written, and now and then tells how far the writing is; `more` are rows beside those of the sheets.
 * The function that it returns throws Stopped when the caller has stopped the writing.
 */
export function followRows(plans: readonly SheetPlan[], more: number, options: WriteOptions): () => void {
  const total = plans.reduce((sum, { size }) => sum + size, more);
  let written = 0;
  return () => {
    if (++written % ROWS_BETWEEN > 0) return;
    options.onProgress?.(Math.min(1, written / total));
    if (options.isCancelled?.()) throw new Stopped('The export was stopped; nothing was saved.');
  };
}
