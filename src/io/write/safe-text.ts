import { beginningOf, shorten } from '../../core/say/shorten.ts';

/** Longest text that a spreadsheet cell holds. */
const MOST_CHARACTERS = 32_767;

/**
 * Text that an XLSX file can carry: control characters and lone surrogates taken out, one kind of line break, cut at what a cell
 * holds, an escape such as `_x0041_` written so that it reads back as itself.
 */
export function safeText(text: string): string {
  const clean = text.replace(/\r\n?/g, '\n').replace(/[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]/g, '');
  return shorten(clean, MOST_CHARACTERS)
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd')
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_');
}

/** A sheet name that spreadsheets accept and that is not taken yet (names differ by more than case). An escape in it they read differently: it is taken apart. */
export function safeSheetName(wanted: string, taken: readonly string[]): string {
  const clean = beginningOf(safeText(wanted).replace(/_x005F_|[*?:\\/[\]\t\r\n]/g, ' '), 31).replace(
    /^[\s']+|[\s']+$/g,
    '',
  );
  const name = clean === '' || clean.toLowerCase() === 'history' ? 'List' : clean;
  const isTaken = (candidate: string) => taken.some((other) => other.toLowerCase() === candidate.toLowerCase());
  for (let count = 1; ; count++) {
    const candidate = count === 1 ? name : `${beginningOf(name, 31 - ` ${count}`.length)} ${count}`;
    if (!isTaken(candidate)) return candidate;
  }
}
