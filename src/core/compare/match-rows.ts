import { groupBy } from '../rollup/group-by.ts';
import type { ColumnPair } from './columns.ts';
import { type FoundRows, WAYS, type Way } from './comparison.ts';
import { isSameFact } from './facts.ts';
import { Matching, type Pass } from './matching.ts';
import { areNamedApart, findReferences, keyOfColumns, type References } from './references.ts';
import type { Row } from './rows.ts';
import { shareOfWords } from './words.ts';

export type RowMatch = readonly [before: Row, after: Row];

/** Rows of two lists put together, each at most once. */
export interface MatchedRows {
  /** In the order of the list after. */
  readonly pairs: readonly RowMatch[];
  readonly added: readonly Row[];
  readonly removed: readonly Row[];
  readonly references: References;
  /** How the pairs were found, the surest way first. */
  readonly found: readonly FoundRows[];
}

/** Rows that share neither part nor name are the same only when so much else is. */
const ALIKE = 0.5;
const WEIGHTS = { part: 3, panel: 3, naming: 3, description: 2, other: 1 } as const;

/** Finds each row of one list in the other: rows that are wholly the same first, then by less and less. */
export function matchRows(columns: readonly ColumnPair[], before: readonly Row[], after: readonly Row[]): MatchedRows {
  const references = findReferences(columns, before, after);
  const matching = new Matching(before, after, worthBy(columns, references));
  for (const pass of passesFor(columns, references)) matching.run(pass);
  const pairs = after.flatMap((row) => {
    const mate = matching.mateOf(row);
    return mate ? [[mate, row] as const] : [];
  });
  return {
    pairs: uncrossed(pairs),
    added: after.filter((row) => !matching.mateOf(row)),
    removed: before.filter((row) => !matching.mateOf(row)),
    references,
    found: countWays(matching.ways()),
  };
}

function countWays(ways: readonly Way[]): readonly FoundRows[] {
  const counted = WAYS.map((way) => ({ way, rows: ways.filter((one) => one === way).length }));
  return counted.filter(({ rows }) => rows > 0);
}

/** Of rows that are wholly the same either may be the one: then the one that stands where the order of both lists puts it. */
function uncrossed(pairs: readonly RowMatch[]): readonly RowMatch[] {
  const key = ({ part, ownPanel, says }: Row) => `${part}\n${ownPanel}\n${says}`;
  const sorted = (rows: readonly Row[]) => [...rows].sort((a, b) => a.name.row - b.name.row);
  const within = (side: 0 | 1, all: readonly RowMatch[]) =>
    groupBy(all, (pair) => key(pair[side])).flatMap((group): readonly RowMatch[] => {
      const [left, right] = [sorted(group.map(([row]) => row)), sorted(group.map(([, row]) => row))];
      return left.map((row, at) => [row, right[at] as Row]);
    });
  return [...within(1, within(0, pairs))].sort(([, a], [, b]) => a.name.row - b.name.row);
}

/** By everything, by part and panel, by panel and name, by part, by where they stand: each way for the rows that those before left. */
function passesFor(columns: readonly ColumnPair[], references: References): readonly Pass[] {
  const { naming, all, weighed, sheet } = references;
  const description = columns.flatMap(({ role }, at) => (role === 'description' ? [at] : []));
  const oneByOne = naming.map((at) => [at]);
  const isAlike = (one: Row, other: Row) => areAlike(one, other, references);
  const accepts = (one: Row, other: Row) => !areNamedApart(one, other, references) && isAlike(one, other);
  const told = [all, ...oneByOne];
  return [
    ...wholePasses(columns, references),
    ...told.map((places) => ({ way: 'part, panel and reference', keyOf: by(placeOf, places) }) as const),
    { way: 'part and panel', keyOf: placeOf, accepts: (one, other) => one.part !== '' || isAlike(one, other) },
    ...[naming, ...oneByOne].map(
      (places) => ({ way: 'panel and reference', keyOf: by(({ panel }) => panel, places) }) as const,
    ),
    ...told.map((places) => ({ way: 'part and reference', keyOf: by(partOf, places) }) as const),
    { way: 'part', keyOf: by(partOf, without(weighed, sheet)) },
    { way: 'panel and description', keyOf: by(({ panel }) => panel, description), accepts },
    { way: 'part', keyOf: partOf },
    { way: 'place', keyOf: (row, matching) => `${row.panel}\n${matching.gapOf(row)}`, accepts },
  ];
}

/** Rows that say the same throughout, or but for their item number; those that are in both lists equally often first. */
function wholePasses(columns: readonly ColumnPair[], { index, numbers }: References): readonly Pass[] {
  const unnumbered = columns.flatMap(({ role }, at) =>
    role === 'partNumber' || role === 'panel' || at === index ? [] : [at],
  );
  const keys: readonly Pass['keyOf'][] = [
    (row) => `${placeOf(row)}\n${row.says}`,
    ...(numbers === 'kept' ? [] : [by(placeOf, unnumbered)]),
  ];
  const way = 'the same throughout';
  return [
    ...keys.map((keyOf) => ({ way, keyOf, isWhole: true }) as const),
    ...keys.map((keyOf) => ({ way, keyOf }) as const),
  ];
}

function placeOf({ part, panel }: Row): string {
  return `${part}\n${panel}`;
}

function partOf({ part }: Row): string | null {
  return part || null;
}

/** A key of what a row is, and of what it says in some columns. */
function by(prefix: (row: Row) => string | null, places: readonly number[]): (row: Row) => string | null {
  return (row) => joined(prefix(row), keyOfColumns(row, places));
}

function joined(prefix: string | null, key: string | null): string | null {
  return prefix === null || key === null ? null : `${prefix}\n${key}`;
}

function without(places: readonly number[], left: readonly number[]): readonly number[] {
  return places.filter((at) => !left.includes(at));
}

/** The less two rows differ, the more they are worth; what names or describes a row counts for more. */
function worthBy(columns: readonly ColumnPair[], { naming, weighed }: References) {
  const weights = columns.map(({ role }, at) => {
    if (naming.includes(at)) return WEIGHTS.naming;
    return role === 'description' ? WEIGHTS.description : WEIGHTS.other;
  });
  return (one: Row, other: Row): number => {
    let difference = 0;
    if (one.part !== other.part) difference += WEIGHTS.part;
    if (one.panel !== other.panel) difference += WEIGHTS.panel;
    for (const at of weighed) if (!isSame(one, other, at)) difference += weights[at] ?? 0;
    return -difference;
  };
}

/** Whether most of what two rows say besides part, panel and sheet is the same; of rows without a part, most of the words. */
function areAlike(one: Row, other: Row, { weighed, sheet }: References): boolean {
  if (one.part === '' && other.part === '') return shareOfWords(one.name.text, other.name.text) >= ALIKE;
  const said = without(weighed, sheet).filter((at) => one.facts[at]?.words !== '' || other.facts[at]?.words !== '');
  const same = said.filter((at) => isSame(one, other, at));
  return said.length > 0 && same.length >= said.length * ALIKE;
}

function isSame(one: Row, other: Row, at: number): boolean {
  const [was, is] = [one.facts[at], other.facts[at]];
  return was !== undefined && is !== undefined && isSameFact(was, is);
}
