import type { Fastener } from '../model/fastener.ts';
import { partKey } from './part-key.ts';

/** Parts compared letter by letter; the rest have too few letter pairs in common. */
const SHORT_LIST = 40;
/** A longer text is no slip of the pen. */
const LONGEST_KEY = 80;
/** Share of letter pairs, or of the pieces between dashes, below which numbers are not similar. */
const LEAST_SHARE = 0.5;

/**
 * A finder of part numbers that look like a given one: slips of the pen, and the same kind and thread with another ending. Fast on
 * large catalogues, because only parts that share letter pairs with the number are compared.
 */
export function createNearFinder(
  parts: readonly Fastener[],
): (partNumber: string, most: number) => readonly Fastener[] {
  const keys = parts.map((part) => partKey(part.partNumber));
  let index: ReadonlyMap<string, readonly number[]> | null = null;
  return (partNumber, most) => {
    const key = partKey(partNumber);
    if (key === '' || key.length > LONGEST_KEY || most <= 0) return [];
    index ??= indexPairs(keys);
    return shortList(key, keys, index)
      .map((at) => ({ part: parts[at], likeness: likeness(key, keys[at] ?? '') }))
      .filter(({ likeness }) => likeness >= LEAST_SHARE)
      .sort((a, b) => b.likeness - a.likeness)
      .slice(0, most)
      .flatMap(({ part }) => part ?? []);
  };
}

function pairsOf(key: string): ReadonlySet<string> {
  const padded = `^${key}$`;
  return new Set(Array.from({ length: padded.length - 1 }, (_, at) => padded.slice(at, at + 2)));
}

function indexPairs(keys: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const index = new Map<string, number[]>();
  keys.forEach((key, at) => {
    for (const pair of pairsOf(key)) {
      const places = index.get(pair);
      if (places) places.push(at);
      else index.set(pair, [at]);
    }
  });
  return index;
}

function shortList(
  key: string,
  keys: readonly string[],
  index: ReadonlyMap<string, readonly number[]>,
): readonly number[] {
  const shared = new Map<number, number>();
  const pairs = pairsOf(key);
  for (const pair of pairs) for (const at of index.get(pair) ?? []) shared.set(at, (shared.get(at) ?? 0) + 1);
  const share = ([at, count]: readonly [number, number]) => (2 * count) / (pairs.size + (keys[at]?.length ?? 0) + 1);
  return [...shared]
    .map((entry) => [entry[0], share(entry)] as const)
    .sort((a, b) => b[1] - a[1])
    .slice(0, SHORT_LIST)
    .map(([at]) => at);
}

/** 1 for the same number, 0 for nothing in common: letters that stay and pieces that recur, whichever says more. */
function likeness(a: string, b: string): number {
  const longer = Math.max(a.length, b.length);
  const letters = 1 - editDistance(a, b) / longer;
  const pieces = new Set(a.split(PIECES));
  const others = b.split(PIECES);
  const recurring = others.filter((piece) => pieces.has(piece)).length / Math.max(pieces.size, others.length);
  return Math.max(letters, recurring * 0.9);
}

const PIECES = /[-_./]+/;

/** Insertions, deletions and changes that turn one text into the other. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? Math.max(a.length, b.length);
}
