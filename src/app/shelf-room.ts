import type { ShelfEntry } from './shelf.ts';

/** How much the shelf keeps: enough for a few weeks of lists, far below what browsers allow. Our judgement. */
const MOST_ENTRIES = 20;
const MOST_BYTES = 200_000_000;

/**
 * What has to go when `newest` has been put among `entries` (the latest first): the oldest beyond the bounds, and an earlier
 * opening of the same file on which nothing was done. Never `newest` itself.
 */
export function makeRoom(entries: readonly ShelfEntry[], newest: ShelfEntry): readonly ShelfEntry[] {
  const others = entries.filter(({ id }) => id !== newest.id);
  const repeats = others.filter((entry) => isRepeat(entry, newest));
  let bytes = newest.bytes;
  const tooMany = others
    .filter((entry) => !repeats.includes(entry))
    .filter((entry, index) => {
      bytes += entry.bytes;
      return index + 1 >= MOST_ENTRIES || bytes > MOST_BYTES;
    });
  return [...repeats, ...tooMany];
}

function isRepeat(entry: ShelfEntry, newest: ShelfEntry): boolean {
  return entry.steps === 0 && entry.name === newest.name && entry.fileBytes === newest.fileBytes;
}
