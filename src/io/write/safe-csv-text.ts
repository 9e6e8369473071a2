/** What stands before a formula unseen: blanks, control characters, marks without a width. */
const UNSEEN = '\\p{White_Space}\\p{Cc}\\p{Cf}\\p{Default_Ignorable_Code_Point}';
/** What a formula begins with, and the wide and small forms that some programs take for the same. */
const SIGNS = '[=+\\-@＝＋－＠﹦﹢﹣﹫]';
const FORMULA = new RegExp(`^[${UNSEEN}]*${SIGNS}`, 'u');
/** Further on in a cell a quote may stand before it too. */
const FORMULA_INSIDE = new RegExp(`^[${UNSEEN}"]*${SIGNS}`, 'u');
/** A number with its sign, or a lone dash for "none": a spreadsheet calculates neither. */
const HARMLESS = /^\s*(?:[+-] ?(?:\d[\d.,]*|[.,]\d+)(?:e[+-]?\d+)?%?|-)\s*$/i;

/**
 * A text that no spreadsheet calculates when it stands in a CSV file: one that begins like a formula gets an apostrophe, and so does
 * what follows a line break, semicolon or tab within it, because a program that cuts the file at those lets a cell begin there.
 * Signed numbers are left as they are. Control characters are taken out: some programs drop them and read on.
 */
export function safeCsvText(text: string): string {
  const clean = text.replace(/[\x00-\x08\x0b\x0c\x0e-\x1f]/g, '');
  const pieces = clean.split(/([\r\n;\t])/);
  const safe = pieces.map((piece, at) => (at % 2 === 0 && isFormula(piece, at === 0) ? `'${piece}` : piece)).join('');
  return /^[\t\r\n]/.test(safe) ? `'${safe}` : safe;
}

function isFormula(piece: string, isFirst: boolean): boolean {
  return (isFirst ? FORMULA : FORMULA_INSIDE).test(piece) && !HARMLESS.test(piece);
}
