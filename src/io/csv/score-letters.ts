type Alphabetic = 'windows-1252' | 'windows-1250' | 'windows-1251';

/** Letters beyond ASCII, one entry a language or group of languages. */
const LANGUAGES: Readonly<Record<Alphabetic, readonly string[]>> = {
  'windows-1252': ['äöüß', 'éèêëàâçùûüîïôœæ', 'áéíóúüñ', 'àèéìíòóù', 'ãõáàâéêíóôúçü', 'éèëïöüáóí', 'åäöéüæø'],
  'windows-1250': ['ąćęłńóśźż', 'áčďéěíňóřšťúůýžľĺŕôä', 'áéíóöőúüű', 'ăâîşţ', 'čćđšž'],
  'windows-1251': ['абвгдеёжзийклмнопрстуфхцчшщъыьэюяіїєґў'],
};
const EXPECTED = 1;
const FOREIGN = -0.6;
const PLAIN_SIGN = 0.4;
const LONE_LETTER = 0.2;
const MISPLACED = -1;
const ODD = -0.5;
/** More letters beyond ASCII than this in one word is no Latin script. */
const DENSEST_WORD = 0.67;

const SIGNS = /[°±×÷½¼¾µ€§®©™·•…–—‘’“”‚„«»‹›†‡‰№\u00a0\u00ad]/;
/** Signs that letters may touch on both sides: l’écrou, soft hyphens. */
const JOINING = /[’·–\u00a0\u00ad]/;
const LETTER = /(?![µªº])\p{L}/u;
const BEYOND_ASCII = /[^\x00-\x7f]/;

/**
 * Sum of what the characters beyond ASCII are worth when the text was read in an encoding with one byte a letter: letters
 * of one language within words speak for it; capitals after small letters, signs within words, letters before digits and
 * words of accents alone against it.
 */
export function scoreLetters(text: string, encoding: Alphabetic): number {
  const isCyrillic = encoding === 'windows-1251';
  const placed = { expected: '', sum: 0 };
  for (const { word, before, after } of splitWords(text)) {
    if (!BEYOND_ASCII.test(word)) continue;
    const worth = worthOfWord(word, before, after, isCyrillic);
    if (worth === undefined) placed.expected += word.toLowerCase().replace(/[\x00-\x7f]/g, '');
    else placed.sum += worth;
  }
  const letters = [...placed.expected];
  const byLanguage = LANGUAGES[encoding].map((known) =>
    letters.reduce((sum, letter) => sum + (known.includes(letter) ? EXPECTED : FOREIGN), 0),
  );
  return placed.sum + Math.max(...byLanguage) + sumSigns(text);
}

interface Word {
  readonly word: string;
  readonly before: string;
  readonly after: string;
}

function splitWords(text: string): Word[] {
  return [...text.matchAll(new RegExp(`(?:${LETTER.source})+`, 'gu'))].map((match) => ({
    word: match[0],
    before: text[match.index - 1] ?? '',
    after: text[match.index + match[0].length] ?? '',
  }));
}

/** Worth of a word's letters beyond ASCII as far as their place settles it; nothing when the language has to. */
function worthOfWord(word: string, before: string, after: string, isCyrillic: boolean): number | undefined {
  const beyond = word.replace(/[\x00-\x7f]/g, '').length;
  if (/^[Øø]$/.test(word)) return PLAIN_SIGN;
  if (word.length === 1) return isDigit(before) || (isDigit(after) && word !== 'М') ? MISPLACED : LONE_LETTER;
  const isMixed = /\p{Ll}\p{Lu}/u.test(word);
  const isDense = isCyrillic ? beyond < word.length : beyond / word.length > DENSEST_WORD;
  return isMixed || isDense ? beyond * MISPLACED : undefined;
}

function sumSigns(text: string): number {
  let sum = 0;
  for (const { 0: sign, index } of text.matchAll(/[^\x00-\x7f]/g)) {
    if (LETTER.test(sign)) continue;
    sum += worthOfSign(sign, text[index - 1] ?? '', text[index + 1] ?? '');
  }
  return sum;
}

function worthOfSign(sign: string, before: string, after: string): number {
  const touches = [LETTER.test(before), LETTER.test(after)];
  if (/[²³]/.test(sign)) return before === 'm' && !touches[1] ? PLAIN_SIGN : ODD;
  if (/[ªº]/.test(sign)) return /[\dNn.]/.test(before) && !touches[1] ? PLAIN_SIGN : ODD;
  if (/[¿¡]/.test(sign)) return touches[0] ? MISPLACED : PLAIN_SIGN;
  if (!SIGNS.test(sign)) return touches.includes(true) ? MISPLACED : ODD;
  const isWithinWord = touches[0] && touches[1] && !JOINING.test(sign);
  return isWithinWord ? MISPLACED : PLAIN_SIGN;
}

function isDigit(character: string): boolean {
  return character >= '0' && character <= '9';
}
