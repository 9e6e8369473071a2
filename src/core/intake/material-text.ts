/**
 * A material cell in one form: full-width forms, ligatures, unicode fractions, accents, dashes and blanks of every kind made plain;
 * letter case is kept.
 * `upper` is the same in capitals and with decimal stops, letter for letter.
 */
export function plainMaterialText(text: string): { readonly plain: string; readonly upper: string } {
  const plain = text
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (fraction) => ` ${fraction.normalize('NFKC')}`)
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .normalize('NFC')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2033\u201c\u201d]/g, '"')
    .replace(/ß/g, 'ss')
    .replace(/ł/g, 'l')
    .replace(/Ł/g, 'L')
    .replace(/[øØ]/g, 'o')
    .replace(/[×✕]/g, 'x')
    .replace(/[\s\u200b\ufeff]+/g, ' ')
    .trim();
  return { plain, upper: plain.replace(DECIMAL_COMMA, '.').replace(/./gu, upperOfSameLength) };
}

// "1,5", "AlMg4,5Mn" but not "304,18 ga" or "H32,2 mm".
const DECIMAL_COMMA = /(?<=(?:^|[^A-Za-z\d.]|[Mm][GgNn])\d{0,2}),(?=\d)(?<=\d,)/g;

/** Words as the dictionary knows them: no blanks, hyphens or stops, but for a stop between digits. */
export function materialKey(text: string): string {
  return plainMaterialText(text)
    .upper.replace(/[ _'-]/g, '')
    .replace(/(?<!\d)\.|\.(?!\d)/g, '');
}

function upperOfSameLength(letter: string): string {
  const upper = letter.toUpperCase();
  return upper.length === letter.length ? upper : letter;
}
