import { createNumbers, numberTuples } from '../../caching/numbers.ts';
import { partKey } from '../../catalogue/part-key.ts';
import { firstAlike } from '../../intake/read-line.ts';
import { addTo } from '../../intake/tree-row.ts';
import type { Subject } from '../rule.ts';
import { plainWords } from './descriptions.ts';
import { groupBy, groupByLength, inFileOrder, panelKey } from './group.ts';

/** Rows whose part, panel, metal, thickness, hole and description were read from the same texts; in file order. */
export type Alike = readonly [first: Subject, ...more: readonly Subject[]];

/** The rows of each part, those put together that are alike. Rows without a part number are left out. */
export function alikeByPart(subjects: readonly Subject[]): Iterable<readonly Alike[]> {
  const parts = new Map<string, Alike[]>();
  for (const group of putAlikeTogether(inFileOrder(subjects))) {
    const part = partOf(group[0]);
    if (part) addTo(parts, part, group);
  }
  return parts.values();
}

/** What a row asks for, by the catalogue's number where it is on file; '' where the row names no part. */
export function partOf({ line, fastener }: Subject): string {
  return partKey(fastener?.partNumber ?? line.partNumber);
}

function putAlikeTogether(subjects: readonly Subject[]): readonly Alike[] {
  const groups: [Subject, ...Subject[]][] = [];
  const groupOf = createGroupNumbers();
  // Rows that say the same are alike at a glance, unless one is tried with another part.
  const seen = new Map<object, [Subject, ...Subject[]]>();
  for (const subject of subjects) {
    const first = firstAlike(subject.line);
    const same = seen.get(first);
    if (same && same[0].fastener === subject.fastener) {
      same.push(subject);
      continue;
    }
    const number = groupOf(subject);
    if (number === groups.length) groups.push([subject]);
    else groups[number]?.push(subject);
    seen.set(first, groups[number] as [Subject, ...Subject[]]);
  }
  return groups;
}

function createGroupNumbers(): (subject: Subject) => number {
  const numberOf = createNumbers<string | object>();
  const together = numberTuples(6);
  return ({ line, fastener }) => {
    const { partNumber, panel, material, thickness, hole, description } = line;
    return together([fastener ?? partNumber, panel, material, thickness, hole, description].map(numberOf));
  };
}

/** Rows of one part that agree in panel, metal, thickness and hole, as understood; each group in file order. */
export function twinsAmong(groups: readonly Alike[]): readonly (readonly Subject[])[] {
  const rowsOf = new Map<Subject, Alike>(groups.map((group) => [group[0], group]));
  return groupBy([...rowsOf.keys()], unmeasuredFacts)
    .flatMap((firsts) => groupByLength(firsts, (subject) => thicknessMm(subject) ?? 0))
    .flatMap(({ rows }) => groupByLength(rows, ({ line }) => line.hole.mm ?? 0))
    .map(({ rows }) => joinGroups(rows.flatMap((first) => [rowsOf.get(first) ?? []])))
    .filter((rows) => rows.length > 1);
}

function joinGroups(groups: readonly (readonly Subject[])[]): readonly Subject[] {
  const [first = [], ...more] = groups;
  return more.length === 0 ? first : inFileOrder(groups.flat());
}

/** A size that was not understood counts as it is written. */
function unmeasuredFacts(subject: Subject): string {
  const { material, thickness, hole } = subject.line;
  const metal = material.candidates.join(' ') || plainWords(material.text);
  const sizes = [thicknessMm(subject) ?? plainWords(thickness.text), hole.mm ?? plainWords(hole.text)];
  return [panelKey(subject), metal, ...sizes.map((size) => (typeof size === 'number' ? 'known' : size))].join('|');
}

function thicknessMm({ sheets }: Subject): number | null {
  return sheets[0]?.thicknessMm ?? null;
}
