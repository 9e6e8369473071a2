import { Unreadable } from '../core/model/raw.ts';

/** What the user is told of something that went wrong: what, and what to do. */
export function sentenceFor(error: unknown): string {
  if (error instanceof Unreadable) return error.message;
  if (isWantOfMemory(error)) return NO_MEMORY;
  const detail = error instanceof Error ? error.message : String(error);
  return `Something went wrong that should not have (${detail}). Your list is as it was; please report this.`;
}

const NO_MEMORY =
  'There is not enough memory for this: close other tabs and programs, or take a part of the list. What was open is as it was.';

/** As engines say it: "Array buffer allocation failed", "Invalid array length", "Invalid string length", "out of memory". */
function isWantOfMemory(error: unknown): boolean {
  return (
    error instanceof RangeError && /allocation|memory|invalid (?:array|string|typed array) length/i.test(error.message)
  );
}
