import { HEADING_LEXICON } from './heading-lexicon.ts';
import { foldText, writtenOut } from './heading-text.ts';

/**
 * A heading in another language as plain English words, in every order worth trying: "espesor de la chapa" gives "thickness of
 * sheet" and "sheet thickness". Takes the spelt words of `headingText`. Nothing unless each word, or each part of a compound, is known.
 */
export function translateHeading(spelt: readonly string[]): readonly string[] {
  const parts = translateWords(spelt);
  if (!parts || parts.every(({ isForeign }) => !isForeign)) return [];
  const english = parts.map(({ english }) => english).filter((word, at, all) => word !== '' && word !== all[at - 1]);
  return [...new Set([english, ...otherOrders(english)].map((order) => order.join(' ')))];
}

interface Part {
  readonly english: string;
  readonly isForeign: boolean;
}

/** Meanings by word; an expression of several words is found by its words with single spaces between. */
const MEANINGS: ReadonlyMap<string, string> = new Map(
  Object.entries(HEADING_LEXICON).flatMap(([english, words]) =>
    words.split(',').map((word) => [foldText(word), english] as const),
  ),
);
const ENGLISH: ReadonlySet<string> = new Set([...Object.keys(HEADING_LEXICON).flatMap((key) => key.split(' ')), '/']);
const LONGEST_EXPRESSION = 3;

function translateWords(words: readonly string[]): readonly Part[] | null {
  const parts: Part[] = [];
  let at = 0;
  while (at < words.length) {
    const found = expressionAt(words, at) ?? wordAt(words[at] ?? '');
    if (!found) return null;
    parts.push(...found.parts);
    at += found.length;
  }
  return parts;
}

interface Found {
  readonly parts: readonly Part[];
  /** Words of the heading that it stands for. */
  readonly length: number;
}

function expressionAt(words: readonly string[], at: number): Found | null {
  for (let length = LONGEST_EXPRESSION; length >= 1; length--) {
    const english = at + length <= words.length ? MEANINGS.get(words.slice(at, at + length).join(' ')) : undefined;
    if (english !== undefined) return { parts: [{ english, isForeign: true }], length };
  }
  return null;
}

function wordAt(word: string): Found | null {
  const english = writtenOut(word);
  if (ENGLISH.has(english)) return { parts: [{ english, isForeign: false }], length: 1 };
  const pieces = splitCompound(word, isUnspaced(word) ? 1 : SHORTEST_PIECE);
  return pieces && { parts: pieces.map((english) => ({ english, isForeign: true })), length: 1 };
}

/** Shorter pieces of European compounds would find words where there are none; "nr" ends so many that it is let in. */
const SHORTEST_PIECE = 3;
const isUnspaced = (word: string) => /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u.test(word);

/** "Blechdicke" is "sheet thickness", 母材厚度 "base metal thickness". Longest pieces first; a linking s or n may stand between. */
function splitCompound(word: string, shortest: number): readonly string[] | null {
  if (word === '') return [];
  for (let length = word.length; length >= Math.min(shortest, 2); length--) {
    const piece = word.slice(0, length);
    const english = length >= shortest || piece === 'nr' ? (MEANINGS.get(piece) ?? englishPiece(piece)) : undefined;
    if (english === undefined) continue;
    const rest = word.slice(length);
    const after =
      splitCompound(rest, shortest) ?? (shortest > 1 ? splitCompound(rest.replace(/^[sn]/, ''), shortest) : null);
    if (after) return [english, ...after];
  }
  return null;
}

function englishPiece(piece: string): string | undefined {
  return piece === 'nr' ? 'no' : ENGLISH.has(piece) && piece.length > 3 ? piece : undefined;
}

/** What is of something comes first in English, and so does what describes it. */
function otherOrders(words: readonly string[]): readonly (readonly string[])[] {
  const of = words.indexOf('of');
  const plain = words.filter((word) => word !== 'of');
  const swapped = of > 0 ? [[...words.slice(of + 1), ...words.slice(0, of)].filter((word) => word !== 'of')] : [];
  return [...swapped, plain, plain.toReversed(), [...plain.slice(-1), ...plain.slice(0, -1)]];
}
