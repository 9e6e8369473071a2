/** Something that stands in a certain row of a file. */
export interface InRow {
  readonly row: number;
}

type RowOf<Item> = (item: Item) => number;

const rowOfItem = ({ row }: InRow) => row;

/** The item of a row among items in the order of their rows; undefined where there is none. */
export function itemOfRow<Item extends InRow>(items: readonly Item[], row: number): Item | undefined {
  return items[placeOfRow(items, row, rowOfItem)];
}

/** The same for things that stand in a row in another way. */
export function itemBy<Item>(items: readonly Item[], row: number, rowOf: RowOf<Item>): Item | undefined {
  return items[placeOfRow(items, row, rowOf)];
}

/**
 * Items with some put in place of those of their rows, added, or left out where null stands for a row. All are in the order of their
 * rows, and so is what comes out; items that stay are hardly looked at.
 */
export function exchangeRows<Item extends InRow>(
  items: readonly Item[],
  changes: ReadonlyMap<number, Item | null>,
): readonly Item[] {
  return exchangeBy(items, changes, rowOfItem);
}

/** The same for things that stand in a row in another way. */
export function exchangeBy<Item extends object>(
  items: readonly Item[],
  changes: ReadonlyMap<number, Item | null>,
  rowOf: RowOf<Item>,
): readonly Item[] {
  const next = items.slice();
  const come: Item[] = [];
  let leaves = false;
  for (const [row, item] of changes) {
    const place = placeOfRow(items, row, rowOf);
    if (place < 0 && item) come.push(item);
    if (place >= 0 && item) next[place] = item;
    leaves ||= place >= 0 && !item;
  }
  const kept = leaves ? next.filter((item) => changes.get(rowOf(item)) !== null) : next;
  return come.length > 0 ? [...kept, ...come].sort((a, b) => rowOf(a) - rowOf(b)) : kept;
}

function placeOfRow<Item>(items: readonly Item[], row: number, rowOf: RowOf<Item>): number {
  let [low, high] = [0, items.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = rowOf(items[middle] as Item);
    if (found === row) return middle;
    if (found < row) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}
