/** What is known of the languages that an encoding with one byte a letter serves. */
interface Languages {
  /** Small letters beyond ASCII, one entry a language or group of languages. */
  readonly letters: readonly string[];
  /** Places that those languages hardly have, in small letters: mostly what another encoding's letters turn into. */
  readonly unlikely: RegExp;
  /** Letters that make a word of their own. */
  readonly short: RegExp;
  /** A word that matches nothing of this, a vowel or a known abbreviation, is an abbreviation at best. */
  readonly spoken: RegExp;
  /** Latin words mix letters of ASCII with others; Cyrillic words do not. */
  readonly isLatin: boolean;
}

/** Letters and spelling habits of the languages by encoding, from memory. */
export const LANGUAGES = {
  'windows-1252': {
    letters: ['äöüß', 'éèêëàâçùûüîïôœæ', 'áéíóúüñ', 'àèéìíòóù', 'ãõáàâéêíóôúçü', 'éèëïöüáóí', 'åäöéüæø'],
    unlikely:
      /[ae]è|è[aeiouáéíóý]|ñ(?![aeiouáéíóú])|õ(?!e)|ã(?![oes]|(?!\p{L}))|[ùìò](?=\p{L})|ø[aeiouáéíý]|û(?!\p{L})|ê[kdbpgzwœæ]|zê|œ(?![uids])|æ(?!\p{L})/gu,
    short: /[àèéóåöôíÀÈÉÓÅÖ]/,
    spoken: /./,
    isLatin: true,
  },
  'windows-1250': {
    letters: ['ąćęłńóśźż', 'áčďéěíňóřšťúůýžľôä', 'áéíóöőúüű', 'ăâîşţ', 'čćđšž'],
    unlikely:
      /č[crsmgdqz]|ń[aeiouy]|őes(?!\p{L})|ă[oe]|ę[nmlrvj]|(?<!\p{L})[ęąń]|(?<=[b-df-hj-np-tv-z])ř(?![aeiouyáéíóúůěý])|(?<=[b-df-hj-np-tv-z])ć(?=[b-df-hj-np-tv-z])|[aeio]ů|[b-df-hj-np-tv-z]ň|[^bpvmdtnf]ě|ď[b-df-hj-np-tv-z]|[ou]ű/gu,
    short: /[őó]/,
    spoken: /./,
    isLatin: true,
  },
  'windows-1251': {
    letters: [
      'абвгдеёжзийклмнопрстуфхцчшщъыьэюя',
      'абвгдежзийклмнопрстуфхцчшщьюяіїєґ',
      'абвгдеёжзійклмнопрстуфхцчшыьэюяў',
    ],
    unlikely: /(?<!\p{L})[ьъы]/gu,
    short: /[авикосуя]/i,
    spoken: /[аеёиоуыэюяіїє]|^(?:шт|ст|мм|см|кг|мкм)$/i,
    isLatin: false,
  },
} as const satisfies Record<string, Languages>;
