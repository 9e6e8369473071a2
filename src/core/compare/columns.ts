import { foldText } from '../intake/heading-text.ts';
import type { Column, Role } from '../model/list.ts';
import { bestPairs } from './best-pairs.ts';
import { contentOf, overlap } from './column-overlap.ts';
import type { ColumnChange, ColumnName } from './comparison.ts';

/** One column in both lists. */
export interface ColumnPair {
  readonly before: Column;
  readonly after: Column;
  /** What it means in both; `other` where they disagree. */
  readonly role: Role;
}

/** What is needed of a list to match its columns. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly { readonly cells: readonly string[] }[];
}

export interface MatchedColumns {
  /** In an order that does not depend on which list came first. */
  readonly pairs: readonly ColumnPair[];
  readonly changes: readonly ColumnChange[];
  readonly moved: boolean;
}

/** Of a column with another heading and meaning, so much of the texts has to be the same. */
const SAME_CONTENT = 0.8;

/** Matches columns by meaning and heading, then by meaning, then by heading, then by what stands in them. */
export function matchColumns(before: Table, after: Table): MatchedColumns {
  const [left, right] = [columnsIn(before), columnsIn(after)];
  const pairs: ColumnPair[] = [];
  const take = (found: readonly (readonly [Column, Column])[]) => {
    for (const [one, other] of found) {
      pairs.push({ before: one, after: other, role: one.role === other.role ? one.role : 'other' });
      left.delete(one);
      right.delete(other);
    }
  };
  const byKey = (keyOf: KeyOf) => take(sameKey([...left], [...right], keyOf, likeness(before, after)));
  byKey(({ role, heading }) => (role === 'other' ? null : `${role} ${foldText(heading)}`));
  take(sameRole([...left], [...right]));
  byKey(({ heading }) => foldText(heading));
  take(bestPairs([...left], [...right], telling(before, after), SAME_CONTENT));
  pairs.sort((a, b) => compareTexts(sortKey(a), sortKey(b)));
  return { pairs, changes: changesOf(pairs, [...left], [...right]), moved: isMoved(pairs) };
}

type KeyOf = (column: Column) => string | null;

/** Those without a heading too, but none that holds nothing or over which another one is spread. */
function columnsIn({ columns: headed, rows }: Table): Set<Column> {
  const columns = [...headed, ...unheaded(headed.length, rows)];
  const spread = columns.flatMap(({ index, through = index }) => (through > index ? [[index, through] as const] : []));
  const isSpread = (at: number) => spread.some(([from, to]) => at > from && at <= to);
  const isBlank = (at: number) => rows.every(({ cells }) => (cells[at] ?? '').trim() === '');
  return new Set(
    columns.filter(({ index, heading }) => !isSpread(index) && (heading.trim() !== '' || !isBlank(index))),
  );
}

/** Columns to the right of the last heading. */
function unheaded(from: number, rows: Table['rows']): readonly Column[] {
  const width = rows.reduce((widest, { cells }) => Math.max(widest, cells.length), from);
  return Array.from({ length: width - from }, (_, at) => ({
    index: from + at,
    heading: '',
    role: 'other',
    unit: null,
    unitFrom: null,
  }));
}

type Likeness = (one: Column, other: Column) => number;

function likeness(before: Table, after: Table): Likeness {
  const [left, right] = [contentOf(before.rows), contentOf(after.rows)];
  return (one, other) => overlap(left(one), right(other));
}

/** The same, where a column with one text throughout tells nothing. */
function telling(before: Table, after: Table): Likeness {
  const [left, right] = [contentOf(before.rows), contentOf(after.rows)];
  return (one, other) => (Math.min(left(one).size, right(other).size) < 2 ? 0 : overlap(left(one), right(other)));
}

/** Columns that share a key; of several, those whose texts are most alike. */
function sameKey(left: readonly Column[], right: readonly Column[], keyOf: KeyOf, alike: Likeness) {
  const keys = new Set(left.flatMap((column) => keyOf(column) ?? []));
  return [...keys].flatMap((key) => {
    const [ones, others] = [left, right].map((columns) => columns.filter((column) => keyOf(column) === key));
    const [one, other] = [ones?.[0], others?.[0]];
    if (!one || !other || !ones || !others) return [];
    if (ones.length === 1 && others.length === 1) return [[one, other] as const];
    return bestPairs(ones, others, alike, 0);
  });
}

/** Two columns that have merely changed places in what they are taken for stay apart, to be matched by their headings. */
function sameRole(left: readonly Column[], right: readonly Column[]): readonly (readonly [Column, Column])[] {
  const has = (columns: readonly Column[], { heading }: Column) =>
    columns.some((column) => foldText(column.heading) === foldText(heading));
  return left.flatMap((one) => {
    const other = one.role === 'other' ? undefined : right.find(({ role }) => role === one.role);
    return other && !(has(right, one) && has(left, other)) ? [[one, other] as const] : [];
  });
}

function changesOf(
  pairs: readonly ColumnPair[],
  left: readonly Column[],
  right: readonly Column[],
): readonly ColumnChange[] {
  const changed = pairs.flatMap(({ before, after }): readonly ColumnChange[] => {
    const names = { before: nameOf(before), after: nameOf(after) };
    if (foldText(before.heading) !== foldText(after.heading)) return [{ change: 'renamed', ...names }];
    return before.role === after.role ? [] : [{ change: 'reread', ...names }];
  });
  return [
    ...changed,
    ...right.map((column) => ({ change: 'added', before: null, after: nameOf(column) }) as const),
    ...left.map((column) => ({ change: 'removed', before: nameOf(column), after: null }) as const),
  ];
}

function nameOf({ heading, role }: Column): ColumnName {
  return { heading: heading.replace(/\s+/g, ' ').trim(), role };
}

function isMoved(pairs: readonly ColumnPair[]): boolean {
  const inOrder = [...pairs].sort((a, b) => a.before.index - b.before.index);
  return inOrder.some(({ after }, at) => at > 0 && after.index < (inOrder[at - 1]?.after.index ?? 0));
}

function sortKey({ role, before, after }: ColumnPair): string {
  return [role, ...[foldText(before.heading), foldText(after.heading)].sort(compareTexts)].join('\n');
}

function compareTexts(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
