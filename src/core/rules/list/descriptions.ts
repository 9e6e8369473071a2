import { rememberSome } from '../../caching/remember.ts';
import type { Subject } from '../rule.ts';
import { groupBy, nameRows } from './group.ts';

const NAMED_DESCRIPTIONS = 3;

/** For each row whose description has another beside it: the others. */
export function describedOtherwise(
  rows: readonly Subject[],
): ReadonlyMap<Subject, { readonly otherRows: string; readonly others: string }> {
  const same = groupBy(rows, ({ line }) => plainWords(line.description) || null);
  if (same.length < 2) return new Map();
  const words = same.flatMap((group) => {
    const others = same
      .slice(0, NAMED_DESCRIPTIONS + 1)
      .filter((other) => other !== group)
      .slice(0, NAMED_DESCRIPTIONS);
    if (others.length === 0) return [];
    const quoted = others.map((other) => `“${other[0]?.line.description.trim()}” in ${nameRows(other)}`).join('; ');
    const said = { otherRows: nameRows(others.flatMap((other) => other.slice(0, 1))), others: quoted };
    return group.map((subject) => [subject, said] as const);
  });
  return new Map(words);
}

/** The words of a cell for comparing: their order, case and commas make no difference. */
export const plainWords: (text: string) => string = rememberSome(readPlainWords);

/** Signs count within a word and before it, not behind it. Written so that a run of signs is walked but once. */
const WORDS = /(?:(?<![.,/])[.,/]+)?[\p{L}\p{N}]+(?:[.,/]+[\p{L}\p{N}]+)*/gu;

function readPlainWords(text: string): string {
  return (text.normalize('NFKC').toUpperCase().match(WORDS) ?? []).sort().join(' ');
}
