import { LONGEST_WORD, type MaterialWord, materialLexicon } from './material-lexicon.ts';
import { type MaterialSpan, materialSpans } from './material-spans.ts';

/** What zinc or other coating a designation stands for. */
export type CoatingKind = 'zinc' | 'zinc-iron' | 'electro' | 'other';

/** One piece of a material cell. `start` and `end` are places in the plain text. */
export type MaterialToken = { readonly start: number; readonly end: number } & (
  | MaterialWord
  | { readonly kind: 'coating'; readonly coating: CoatingKind; readonly weightAlone: boolean }
  | { readonly kind: MaterialSpan['kind'] }
  | { readonly kind: 'unknown' }
);

/** Cuts an upper-case material cell into known words, sizes and unknown rest: the longest known word at each place wins. */
export function materialTokens(upper: string): readonly MaterialToken[] {
  const spans = materialSpans(upper);
  const tokens: MaterialToken[] = [];
  let place = 0;
  while (place < upper.length) {
    const span = spans.find(({ start, end }) => start <= place && place < end);
    const token = span ?? nextToken(upper, place, spans.find(({ start }) => start > place)?.start ?? upper.length);
    if (token) tokens.push(token);
    place = token ? token.end : place + 1;
  }
  return withoutBrokenWords(tokens, upper);
}

function nextToken(upper: string, start: number, limit: number): MaterialToken | null {
  if (!/[\p{L}\d+#]/u.test(upper[start] ?? '')) return null;
  const word = longestWord(upper, start, limit);
  const coating = findCoating(upper, start, limit);
  if (coating && (!word || coating.end >= word.end)) return coating;
  if (word) return word;
  if (/[+#]/.test(upper[start] ?? '')) return null;
  return { kind: 'unknown', start, end: endOfRun(upper, start, limit) };
}

function longestWord(upper: string, start: number, limit: number): MaterialToken | null {
  let key = '';
  let found: MaterialToken | null = null;
  for (let place = start; place < limit && key.length < LONGEST_WORD; place++) {
    const letter = upper[place] ?? '';
    if (/[,;:()[\]|"\n]/.test(letter)) break;
    if (isJoiner(upper, place)) continue;
    key += letter;
    const meaning = isBoundary(upper, place + 1) ? materialLexicon.get(key) : undefined;
    if (meaning) found = { ...meaning, start, end: place + 1 };
  }
  return found;
}

function isJoiner(text: string, place: number): boolean {
  if (text[place] !== '.') return /[ _'-]/.test(text[place] ?? '');
  return !(/\d/.test(text[place - 1] ?? '') && /\d/.test(text[place + 1] ?? ''));
}

/** A word may end where the kind of character changes, but not inside a decimal number. */
function isBoundary(text: string, place: number): boolean {
  const before = classOf(text[place - 1]);
  const behind = classOf(text[place]);
  if (before === 'digit' && text[place] === '.' && classOf(text[place + 1]) === 'digit') return false;
  return before !== behind || before === 'sign' || before === 'other';
}

function classOf(letter: string | undefined): 'letter' | 'digit' | 'sign' | 'other' {
  if (letter === undefined || /[^\p{L}\d]/u.test(letter)) return 'sign';
  if (/\d/.test(letter)) return 'digit';
  return /\p{Script=Latin}/u.test(letter) ? 'letter' : 'other';
}

function endOfRun(text: string, start: number, limit: number): number {
  let end = start + 1;
  while (end < limit && !isBoundary(text, end)) end++;
  return end;
}

const COATINGS: readonly (readonly [CoatingKind, RegExp])[] = [
  ['zinc-iron', /\+?ZF\d{0,3}(?:\/\d+)?(?:-?[ABC]-?[COPULS]{1,3})?(?![\p{L}\d])/uy],
  ['electro', /\+?ZE(?:\d{2}(?:\/\d{2})?)?(?:-?[ABC]-?[COPULS]{1,3})?(?![\p{L}\d])/uy],
  ['zinc', /(?:\+Z|Z\d{2,3})\d{0,3}(?:-?[MN]?-?[ABC]-?[COPULS]{0,3})?(?![\p{L}\d])/uy],
  ['zinc', /G-?(?:30|40|60|90|115|140|165|185|210|235)U?(?![\p{L}\d])/uy],
  ['zinc-iron', /A(?:25|40|60)(?![\p{L}\d])/uy],
  ['other', /\+?(?:AZ|ZM|AS|ZA)\d{2,3}(?![\p{L}\d])/uy],
];

function findCoating(upper: string, start: number, limit: number): MaterialToken | null {
  for (const [coating, pattern] of COATINGS) {
    pattern.lastIndex = start;
    const match = pattern.exec(upper);
    if (!match || start + match[0].length > limit) continue;
    return { kind: 'coating', coating, weightAlone: match[0].startsWith('A'), start, end: start + match[0].length };
  }
  return null;
}

/** A word of which only a part is known is not known: "SUS304X9" must not become 304. */
function withoutBrokenWords(tokens: readonly MaterialToken[], upper: string): readonly MaterialToken[] {
  const words: MaterialToken[][] = [];
  for (const token of tokens) {
    const word = words.at(-1);
    const joined = word?.at(-1)?.end === token.start && isBoundToNext(upper, token.start);
    if (word && joined && isPart(token) && word.every(isPart)) word.push(token);
    else words.push([token]);
  }
  return words.flatMap((word) => (word.some(({ kind }) => kind === 'unknown') ? [asUnknown(word)] : word));
}

// Scripts without blanks between words join nothing.
function isBoundToNext(text: string, place: number): boolean {
  return classOf(text[place - 1]) !== 'other' && classOf(text[place]) !== 'other';
}

const isPart = ({ kind }: MaterialToken): boolean => kind !== 'thickness' && kind !== 'quarter' && kind !== 'date';

function asUnknown(word: readonly MaterialToken[]): MaterialToken {
  return { kind: 'unknown', start: word[0]?.start ?? 0, end: word.at(-1)?.end ?? 0 };
}
