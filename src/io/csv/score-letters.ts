import { LANGUAGES } from './languages.ts';

export type Alphabetic = keyof typeof LANGUAGES;

const EXPECTED = 1;
const FOREIGN = -0.6;
const MISPLACED = -1;
/** A sign that may stand anywhere, one that is where it belongs, one without reason. */
const PLAIN_SIGN = 0.4;
const FITTING_SIGN = 1.2;
const IDLE_SIGN = 0;
const ODD_SIGN = -0.5;
/** A word of one letter, if the language has it; a word without vowel. */
const SHORT_WORD = 0.4;
const ABBREVIATION = 0.2;
const ODD_WORD = -0.3;
/** Cyrillic capitals share their bytes with East Asian text. */
const CAPITALS = 0.7;
/** More letters beyond ASCII than this in one word is no Latin script. */
const DENSEST_WORD = 0.67;

const PLAIN_SIGNS = /[°±×÷½¼¾µ€§®©™·•…–—‘’“”«»№\u00a0\u00ad]/;
const IDLE_SIGNS = /[£‚„‹›†‡‰]/;
/** Signs that letters may touch on both sides: l’écrou, soft hyphens. */
const JOINING = /[’·–\u00a0\u00ad]/;
const LETTER = /(?![µªº])\p{L}/u;
const WORD = new RegExp(`(?:${LETTER.source})+`, 'gu');
const ASCII = /[\x00-\x7f]/g;
const BEYOND_ASCII = /[^\x00-\x7f]/g;

/**
 * Sum of what the characters beyond ASCII are worth when the text was read in an encoding with one byte a letter: letters
 * of one language within words speak for it; pairs of letters that it does not have, capitals after small letters, signs
 * within words, letters at digits and words of accents alone speak against it.
 */
export function scoreLetters(text: string, encoding: Alphabetic): number {
  let settled = 0;
  const words: string[] = [];
  for (const match of text.matchAll(WORD)) {
    const [word] = match;
    if (word.replace(ASCII, '') === '') continue;
    const worth = worthByPlace(word, text[match.index - 1] ?? '', text[match.index + word.length] ?? '', encoding);
    if (worth === undefined) words.push(word.toLowerCase());
    else settled += worth;
  }
  return settled + worthOfWords(words, encoding) + sumSigns(text);
}

/** What the words are worth in the language that suits them best. */
function worthOfWords(words: readonly string[], encoding: Alphabetic): number {
  const { letters: languages, unlikely } = LANGUAGES[encoding];
  const text = words.join(' ');
  const letters = [...text.replace(ASCII, '')];
  const sums = languages.map((known) =>
    letters.reduce((sum, letter) => sum + (known.includes(letter) ? EXPECTED : FOREIGN), 0),
  );
  const pairs = text.match(unlikely)?.length ?? 0;
  return Math.max(...sums) + pairs * (MISPLACED - EXPECTED);
}

/** Worth of a word's letters beyond ASCII as far as their place settles it; nothing when the language has to. */
function worthByPlace(word: string, before: string, after: string, encoding: Alphabetic): number | undefined {
  const beyond = word.replace(ASCII, '').length;
  const { isLatin, short, spoken } = LANGUAGES[encoding];
  if (word.length === 1) return worthOfLetter(word, before, after, short);
  const isMixed = /\p{Ll}\p{Lu}|\p{Lu}{2}\p{Ll}/u.test(word);
  const isDense = isLatin ? beyond / word.length > DENSEST_WORD : beyond < word.length;
  if (isMixed || isDense) return beyond * MISPLACED;
  if (!spoken.test(word)) return beyond * ABBREVIATION;
  return isLatin || word !== word.toUpperCase() ? undefined : beyond * CAPITALS;
}

/** Ø before a number is a sign like any other; М4 is often typed with a Cyrillic letter. */
function worthOfLetter(letter: string, before: string, after: string, short: RegExp): number {
  if (/[Øø]/.test(letter)) return PLAIN_SIGN;
  if (isDigit(before) || (isDigit(after) && letter !== 'М')) return MISPLACED;
  return short.test(letter) ? SHORT_WORD : ODD_WORD;
}

function sumSigns(text: string): number {
  let sum = 0;
  for (const { 0: sign, index } of text.matchAll(BEYOND_ASCII)) {
    if (!LETTER.test(sign)) sum += worthOfSign(sign, text[index - 1] ?? '', text[index + 1] ?? '');
  }
  return sum;
}

function worthOfSign(sign: string, before: string, after: string): number {
  const isAfterLetter = LETTER.test(before);
  const isBeforeLetter = LETTER.test(after);
  if (/[²³]/.test(sign)) return before === 'm' && !isBeforeLetter ? FITTING_SIGN : ODD_SIGN;
  if (/[ªº]/.test(sign)) return /[\dn.]/i.test(before) && !isBeforeLetter ? FITTING_SIGN : ODD_SIGN;
  if (/[¿¡]/.test(sign)) return isAfterLetter ? MISPLACED : PLAIN_SIGN;
  if (PLAIN_SIGNS.test(sign)) {
    return isAfterLetter && isBeforeLetter && !JOINING.test(sign) ? MISPLACED : PLAIN_SIGN;
  }
  if (isAfterLetter || isBeforeLetter) return MISPLACED;
  return IDLE_SIGNS.test(sign) ? IDLE_SIGN : ODD_SIGN;
}

function isDigit(character: string): boolean {
  return character >= '0' && character <= '9';
}
