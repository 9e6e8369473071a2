import { bestPairs } from './best-pairs.ts';
import type { Way } from './comparison.ts';
import type { Row } from './rows.ts';

/** One way to find rows again. */
export interface Pass {
  readonly way: Way;
  /** Rows with equal keys may be the same; null for a row that cannot be found in this way. */
  readonly keyOf: (row: Row, matching: Matching) => string | null;
  /** Whether two rows with equal keys may be the same all the same. */
  readonly accepts?: (before: Row, after: Row) => boolean;
  /** Equal keys mean equal rows: where there are equally many they are paired as they come, and the others are left for later. */
  readonly isWhole?: boolean;
}

/** The same neighbours never weigh up a difference in a cell. */
const NEIGHBOURS = 10;
const NEVER = Number.NEGATIVE_INFINITY;

/** Rows of two lists as far as they have found each other; all are free at first. */
export class Matching {
  readonly #before: readonly Row[];
  readonly #after: readonly Row[];
  readonly #worthOf: (one: Row, other: Row) => number;
  readonly #mates = new Map<Row, Row>();
  /** The same number for both rows of a pair. */
  readonly #numbers = new Map<Row, number>();
  /** How each pair was found. */
  readonly #ways: Way[] = [];
  #free: readonly [before: readonly Row[], after: readonly Row[]];
  #around: ReadonlyMap<Row, Around> | null = null;

  /** `worthOf` tells how alike two rows are; of equally alike ones, those between the same neighbours win. */
  constructor(before: readonly Row[], after: readonly Row[], worthOf: (one: Row, other: Row) => number) {
    this.#before = before;
    this.#after = after;
    this.#worthOf = worthOf;
    this.#free = [before, after];
  }

  mateOf(row: Row): Row | null {
    return this.#mates.get(row) ?? null;
  }

  /** How the pairs were found, one entry for each. */
  ways(): readonly Way[] {
    return this.#ways;
  }

  /** A key that two free rows share when they stand between the same pairs. */
  gapOf(row: Row): string {
    const rows = [this.#neighbours(row)?.above, this.#neighbours(row)?.below];
    return rows.map((one) => (one ? this.#numbers.get(one) : '')).join(' ');
  }

  /** Pairs rows that are still free. Which pairs a row stands between does not change while a pass runs. */
  run(pass: Pass): void {
    const groups = groupFree(...this.#free, (row) => pass.keyOf(row, this));
    const pairs = groups.flatMap(([left, right]) => this.#pairUp(left, right, pass));
    if (pairs.length === 0) return;
    for (const [one, other] of pairs) {
      this.#mates.set(one, other).set(other, one);
      this.#numbers.set(one, this.#mates.size).set(other, this.#mates.size);
      this.#ways.push(pass.way);
    }
    const [before, after] = this.#free;
    this.#free = [before.filter((row) => !this.#mates.has(row)), after.filter((row) => !this.#mates.has(row))];
    this.#around = null;
  }

  #pairUp(left: readonly Row[], right: readonly Row[], { accepts = () => true, isWhole = false }: Pass) {
    if (isWhole) return left.length === right.length ? left.map((row, at) => [row, right[at] as Row] as const) : [];
    const worth = (one: Row, other: Row) =>
      accepts(one, other) ? this.#worthOf(one, other) + this.#nearness(one, other) / NEIGHBOURS : NEVER;
    return bestPairs(left, right, worth, -Number.MAX_VALUE);
  }

  /** How many of two rows' neighbours are a pair. */
  #nearness(one: Row, other: Row): number {
    const [here, there] = [this.#neighbours(one), this.#neighbours(other)];
    const isPair = (row: Row | null | undefined, mate: Row | null | undefined) =>
      (row ? this.#mates.get(row) : null) === mate;
    return Number(isPair(here?.above, there?.above)) + Number(isPair(here?.below, there?.below));
  }

  #neighbours(row: Row): Around | undefined {
    this.#around ??= neighboursOf(this.#before, this.#after, (one) => !this.#mates.has(one));
    return this.#around.get(row);
  }
}

/** The nearest rows above and below that are paired; null at the ends. */
interface Around {
  readonly above: Row | null;
  readonly below: Row | null;
}

function neighboursOf(before: readonly Row[], after: readonly Row[], isFree: (row: Row) => boolean): Map<Row, Around> {
  const around = new Map<Row, Around>();
  for (const rows of [before, after]) {
    const above = nearestPaired(rows, isFree);
    const below = nearestPaired([...rows].reverse(), isFree);
    for (const row of rows) {
      if (isFree(row)) around.set(row, { above: above.get(row) ?? null, below: below.get(row) ?? null });
    }
  }
  return around;
}

function nearestPaired(rows: readonly Row[], isFree: (row: Row) => boolean): ReadonlyMap<Row, Row | null> {
  let nearest: Row | null = null;
  const found = new Map<Row, Row | null>();
  for (const row of rows) {
    if (isFree(row)) found.set(row, nearest);
    else nearest = row;
  }
  return found;
}

type Group = readonly [left: readonly Row[], right: readonly Row[]];

function groupFree(
  before: readonly Row[],
  after: readonly Row[],
  keyOf: (row: Row) => string | null,
): readonly Group[] {
  const groups = new Map<string, [Row[], Row[]]>();
  [before, after].forEach((rows, side) => {
    for (const row of rows) {
      const key = keyOf(row);
      if (key === null) continue;
      const group: [Row[], Row[]] = groups.get(key) ?? [[], []];
      group[side]?.push(row);
      groups.set(key, group);
    }
  });
  return [...groups.values()].filter(([left, right]) => left.length > 0 && right.length > 0);
}
