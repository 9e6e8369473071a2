import { groupBy } from '../rollup/group-by.ts';
import type { ColumnPair } from './columns.ts';
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
  };
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

function passesFor(columns: readonly ColumnPair[], references: References): readonly Pass[] {
  const { naming, all, index, numbers, weighed, sheet } = references;
  const description = columns.findIndex(({ role }) => role === 'description');
  const everything = columns.flatMap(({ role }, at) => (role === 'partNumber' || role === 'panel' ? [] : [at]));
  const place = ({ part, panel }: Row) => `${part}\n${panel}`;
  const by = (prefix: (row: Row) => string | null, places: readonly number[]): Pass['keyOf'] => {
    return (row) => joined(prefix(row), keyOfColumns(row, places));
  };
  const partOf = ({ part }: Row) => part || null;
  const isAlike = (one: Row, other: Row) => areAlike(one, other, references);
  const isAlikeUnnamed = (one: Row, other: Row) => !areNamedApart(one, other, references) && isAlike(one, other);
  const whole: readonly Pass['keyOf'][] = [
    (row) => `${place(row)}\n${row.says}`,
    ...(numbers === 'kept' ? [] : [by(place, without(everything, [index]))]),
  ];
  return [
    ...whole.map((keyOf) => ({ keyOf, isWhole: true })),
    ...whole.map((keyOf) => ({ keyOf })),
    ...[all, ...naming.map((at) => [at])].map((places) => ({ keyOf: by(place, places) })),
    { keyOf: place, accepts: (one, other) => one.part !== '' || isAlike(one, other) },
    ...[naming, ...naming.map((at) => [at])].map((places) => ({ keyOf: by(({ panel }) => panel, places) })),
    ...[all, ...naming.map((at) => [at])].map((places) => ({ keyOf: by(partOf, places) })),
    { keyOf: by(partOf, without(weighed, sheet)) },
    { keyOf: by(({ panel }) => panel, description < 0 ? [] : [description]), accepts: isAlikeUnnamed },
    { keyOf: partOf },
    { keyOf: (row, matching) => `${row.panel}\n${matching.gapOf(row)}`, accepts: isAlikeUnnamed },
  ];
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
