import type { ColumnPair } from './columns.ts';
import { isSameFact } from './facts.ts';
import type { Row } from './rows.ts';

/** Columns of a list by what they are good for when a row is looked for in another list: places among the matched columns. */
export interface References {
  /** Columns that name one row each: item numbers, hole positions. */
  readonly naming: readonly number[];
  /** Those, and what a row is described by. */
  readonly all: readonly number[];
  /** The column of item numbers; -1 where there is none. */
  readonly index: number;
  /** How item numbers of rows that are otherwise the same have changed. */
  readonly numbers: 'kept' | 'some given anew' | 'given anew';
  /** Columns by which rows of one part are weighed: neither part nor panel, nor item numbers that were given anew. */
  readonly weighed: readonly number[];
  /** Columns that are the same all over a panel. */
  readonly sheet: readonly number[];
}

/** A column names its rows when so many of them have it filled, and so many of those texts are different. */
const MOSTLY = 0.8;
/** So many item numbers changed may still be so many changes. */
const FEW = 3;
const SHARE = 0.1;

/** Weighs the columns by what stands in them in both lists. */
export function findReferences(
  columns: readonly ColumnPair[],
  before: readonly Row[],
  after: readonly Row[],
): References {
  const places = (...roles: readonly string[]) => columns.flatMap(({ role }, at) => (roles.includes(role) ? [at] : []));
  const index = places('index')[0] ?? -1;
  const numbers = index < 0 ? 'kept' : howNumbered(index, columns, before, after);
  const usable = (at: number) => at !== index || numbers !== 'given anew';
  const distinct = places('other').filter((at) => isDistinct(at, before) && isDistinct(at, after));
  const naming = [...places('index').filter(usable), ...distinct];
  const fixed = places('partNumber', 'panel');
  return {
    naming,
    all: [...naming, ...places('description', 'parent')],
    index,
    numbers,
    weighed: columns.map((_, at) => at).filter((at) => usable(at) && !fixed.includes(at)),
    sheet: places('material', 'thickness'),
  };
}

/** All that a row says in the columns given; null where it says nothing there. */
export function keyOfColumns({ facts }: Row, places: readonly number[]): string | null {
  const keys = places.map((at) => facts[at]?.key ?? '');
  return keys.some(Boolean) ? keys.join('\t') : null;
}

/** Whether a column that names rows calls the two by different names. */
export function areNamedApart(one: Row, other: Row, { naming }: References): boolean {
  return naming.some((at) => {
    const [was, is] = [one.facts[at], other.facts[at]];
    return was && is && was.words !== '' && is.words !== '' && !isSameFact(was, is);
  });
}

function isDistinct(at: number, rows: readonly Row[]): boolean {
  const fasteners = rows.filter(({ audited }) => audited !== null);
  const filled = fasteners.flatMap(({ facts }) => facts[at]?.words || []);
  return filled.length >= fasteners.length * MOSTLY && new Set(filled).size >= filled.length * MOSTLY;
}

/** Compares the item numbers of rows that are in each list once and the same but for that number. */
function howNumbered(
  index: number,
  columns: readonly ColumnPair[],
  before: readonly Row[],
  after: readonly Row[],
): References['numbers'] {
  const others = columns.map((_, at) => at).filter((at) => at !== index);
  const [left, right] = [onlyOnes(before, others), onlyOnes(after, others)];
  let [kept, changed] = [0, 0];
  for (const [key, row] of left) {
    const [was, is] = [row?.facts[index], right.get(key)?.facts[index]];
    if (!was || !is) continue;
    if (isSameFact(was, is)) kept++;
    else changed++;
  }
  if (changed <= FEW) return 'kept';
  return changed > (kept + changed) * SHARE ? 'given anew' : 'some given anew';
}

/** Rows by what they say; null for what several say. */
function onlyOnes(rows: readonly Row[], places: readonly number[]): ReadonlyMap<string, Row | null> {
  const found = new Map<string, Row | null>();
  for (const row of rows) {
    const key = `${row.panel}\n${keyOfColumns(row, places)}`;
    found.set(key, found.has(key) ? null : row);
  }
  return found;
}
