import { aliasTables } from '../reference/aliases/index.ts';
import { metalWords } from '../reference/aliases/metal-words.ts';
import { temperWords } from '../reference/aliases/tempers.ts';
import { type MaterialWord, materialLexicon } from './material-lexicon.ts';
import { materialKey } from './material-text.ts';

const SHORTEST = 6;

const vocabulary: ReadonlySet<string> = new Set(
  [
    ...metalWords.flatMap(({ words }) => words),
    ...aliasTables.flatMap(({ rows }) => rows.flatMap(({ words }) => words)),
    ...temperWords.flatMap(([, words]) => words),
  ]
    .filter((word) => /^[A-Z]+$/.test(word))
    .map(materialKey)
    .filter((key) => key.length >= SHORTEST),
);

/**
 * The metal or temper that a misspelt upper-case word means: one letter wrong, two from eight letters on, the first letter right.
 * Nothing where words of two meanings are as near, or where the word is known already.
 */
export function findMisspelt(word: string): { readonly word: string; readonly meaning: MaterialWord } | undefined {
  if (word.length < SHORTEST || !/^[A-Z]+$/.test(word) || materialLexicon.has(word)) return undefined;
  const allowed = word.length < 8 ? 1 : 2;
  const near = [...vocabulary]
    .filter((known) => known[0] === word[0] && Math.abs(known.length - word.length) <= allowed)
    .map((known) => ({ word: known, distance: editDistance(word, known) }))
    .filter(({ distance }) => distance <= allowed);
  const best = Math.min(...near.map(({ distance }) => distance));
  const nearest = near.filter(({ distance }) => distance === best);
  const meanings = new Set(nearest.map((found) => subjectOf(materialLexicon.get(found.word))));
  const [first] = nearest;
  const meaning = first && meanings.size === 1 ? materialLexicon.get(first.word) : undefined;
  return first && meaning ? { word: first.word, meaning } : undefined;
}

function subjectOf(meaning: MaterialWord | undefined): unknown {
  if (meaning?.kind === 'alloy') return meaning.alloy.alloy ?? meaning.alloy.entries?.join(' ');
  if (meaning?.kind === 'metal') return meaning.metal;
  return meaning?.kind === 'temper' ? meaning.code : undefined;
}

/** Letters to change, add, leave out or swap with their neighbour. */
function editDistance(one: string, other: string): number {
  const rows: number[][] = [Array.from({ length: other.length + 1 }, (_, column) => column)];
  const at = (row: number, column: number): number => rows[row]?.[column] ?? Number.POSITIVE_INFINITY;
  for (let row = 1; row <= one.length; row++) {
    rows.push([row]);
    for (let column = 1; column <= other.length; column++) {
      const same = one[row - 1] === other[column - 1] ? 0 : 1;
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      const steps = [at(row - 1, column) + 1, at(row, column - 1) + 1, at(row - 1, column - 1) + same];
      rows[row]?.push(Math.min(...steps, swapped ? at(row - 2, column - 2) + 1 : Number.POSITIVE_INFINITY));
    }
  }
  return at(one.length, other.length);
}
