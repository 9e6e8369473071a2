/** Gives things numbers: 0, 1, 2 in the order of first sight; objects by identity, texts and numbers by value. */
export function createNumbers<Item>(): (item: Item) => number {
  const known = new Map<Item, number>();
  return (item) => {
    const before = known.get(item);
    if (before !== undefined) return before;
    known.set(item, known.size);
    return known.size - 1;
  };
}

/** Gives each tuple of whole numbers from 0 on a number of its own, in the same way. */
export type TupleNumbers = (tuple: ArrayLike<number>) => number;

const EMPTY = -1;
const FIRST_SLOTS = 64;

/** An open hash table over one flat array: no key is built and nothing is allocated per look-up, as a long list asks very often. */
export function numberTuples(width: number): TupleNumbers {
  let slots = new Int32Array(FIRST_SLOTS).fill(EMPTY);
  let stored = new Int32Array(FIRST_SLOTS * width);
  let count = 0;

  const slotOf = (tuple: ArrayLike<number>, from: number): number => {
    const mask = slots.length - 1;
    let slot = hashOf(tuple, from, width) & mask;
    for (let number = slots[slot]!; number !== EMPTY; number = slots[slot]!) {
      if (isSame(stored, number * width, tuple, from, width)) return slot;
      slot = (slot + 1) & mask;
    }
    return slot;
  };
  const grow = () => {
    slots = new Int32Array(slots.length * 2).fill(EMPTY);
    const larger = new Int32Array(slots.length * width);
    larger.set(stored);
    stored = larger;
    for (let number = 0; number < count; number++) slots[slotOf(stored, number * width)] = number;
  };

  return (tuple) => {
    const slot = slotOf(tuple, 0);
    const known = slots[slot]!;
    if (known !== EMPTY) return known;
    stored.set(tuple, count * width);
    slots[slot] = count;
    count += 1;
    if (count * 2 > slots.length) grow();
    return count - 1;
  };
}

function hashOf(numbers: ArrayLike<number>, from: number, width: number): number {
  let hash = width;
  for (let at = 0; at < width; at++) {
    hash = Math.imul(hash ^ numbers[from + at]!, 0x9e3779b1);
    hash ^= hash >>> 15;
  }
  return hash;
}

function isSame(a: ArrayLike<number>, fromA: number, b: ArrayLike<number>, fromB: number, width: number): boolean {
  for (let at = 0; at < width; at++) if (a[fromA + at] !== b[fromB + at]) return false;
  return true;
}
