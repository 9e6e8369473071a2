/** Longest text that a spreadsheet cell holds. */
const MOST_CHARACTERS = 32_767;

/**
 * Text that an XLSX file can carry: control characters and lone surrogates taken out, an escape such as `_x0041_` written so that it
 * reads back as itself, cut at what a cell holds.
 */
export function safeText(text: string): string {
  const clean = text
    .replace(/[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]/g, '')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd')
    .replace(/_x([0-9A-Fa-f]{4})_/g, '_x005F_x$1_');
  return clean.length > MOST_CHARACTERS ? `${clean.slice(0, MOST_CHARACTERS - 1)}…` : clean;
}

/** A sheet name that spreadsheets accept and that is not taken yet (names differ by more than case). */
export function safeSheetName(wanted: string, taken: readonly string[]): string {
  const clean = safeText(wanted)
    .replace(/[*?:\\/[\]]/g, ' ')
    .replace(/^'+|'+$/g, '')
    .trim()
    .slice(0, 31);
  const name = clean === '' || clean.toLowerCase() === 'history' ? 'List' : clean;
  const isTaken = (candidate: string) => taken.some((other) => other.toLowerCase() === candidate.toLowerCase());
  for (let count = 1; ; count++) {
    const candidate = count === 1 ? name : `${name.slice(0, 31 - ` ${count}`.length)} ${count}`;
    if (!isTaken(candidate)) return candidate;
  }
}

/** A text cell that a spreadsheet would take for a formula when it is saved as CSV gets an apostrophe; plain numbers do not. */
export function safeCsvText(text: string): string {
  const isNumber = /^[+-]?[\d.,]+$/.test(text);
  return !isNumber && /^[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text;
}
