import type { Designation } from '../reference/aliases/designation.ts';
import { aliasTables } from '../reference/aliases/index.ts';
import { type MetalWord, metalWords } from '../reference/aliases/metal-words.ts';
import {
  colourWords,
  finishWords,
  openWords,
  otherMaterialWords,
  silentWords,
  unlistedMetals,
} from '../reference/aliases/side-words.ts';
import { temperWords } from '../reference/aliases/tempers.ts';
import { materialKey } from './material-text.ts';

/** What a word in a material cell means. */
export type MaterialWord =
  | { readonly kind: 'alloy'; readonly alloy: Designation }
  | { readonly kind: 'metal'; readonly metal: MetalWord }
  | { readonly kind: 'temper'; readonly code: string }
  | { readonly kind: 'clad' | 'finish' | 'silent' | 'colour' | 'other' | 'open' | 'unlisted' };

/** Every known word by its key. */
export const materialLexicon: ReadonlyMap<string, MaterialWord> = new Map(
  lexiconEntries()
    .reverse()
    .map(([words, meaning]) => [materialKey(words), meaning]),
);

/** Length of the longest key: no need to look further. */
export const LONGEST_WORD = Math.max(...[...materialLexicon.keys()].map((key) => key.length));

/** Every word with its meaning, the stronger first: a key written twice keeps its first meaning. */
export function lexiconEntries(): (readonly [words: string, meaning: MaterialWord])[] {
  const alloys = aliasTables.flatMap(({ rows }) => rows);
  return [
    ...alloys.flatMap((alloy) => alloy.words.map((word) => [word, { kind: 'alloy', alloy }] as const)),
    ...metalWords.flatMap((metal) => metal.words.map((word) => [word, { kind: 'metal', metal }] as const)),
    ...unlistedMetals.map((word) => [word, { kind: 'unlisted' }] as const),
    ...temperWords.flatMap(([code, words]) => words.map((word) => [word, { kind: 'temper', code }] as const)),
    ...['ALCLAD', 'CLAD'].map((word) => [word, { kind: 'clad' }] as const),
    ...otherMaterialWords.map((word) => [word, { kind: 'other' }] as const),
    ...openWords.map((word) => [word, { kind: 'open' }] as const),
    ...colourWords.map((word) => [word, { kind: 'colour' }] as const),
    ...finishWords.map((word) => [word, { kind: 'finish' }] as const),
    ...silentWords.map((word) => [word, { kind: 'silent' }] as const),
  ];
}
