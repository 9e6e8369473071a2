import Papa from 'papaparse';
import { safeCsvText } from './safe-csv-text.ts';

/** How a CSV file is written. */
export interface CsvOptions {
  /** Cells that begin like a formula get an apostrophe in front; false only for programs that never calculate. */
  readonly escapes: boolean;
}

/** For whoever opens it: also a spreadsheet. */
export const FOR_SPREADSHEETS: CsvOptions = { escapes: true };

/** Rows as CSV: comma, quotes where needed, CRLF. */
export function writeCsvRows(
  rows: readonly (readonly (string | number | null)[])[],
  { escapes }: CsvOptions = FOR_SPREADSHEETS,
): string {
  const safe = (text: string) => (escapes ? safeCsvText(text) : text);
  const cells = rows.map((row) => row.map((cell) => (typeof cell === 'number' ? cell : safe(cell ?? ''))));
  return `${Papa.unparse(cells, { newline: '\r\n', quotes: needsQuotes })}\r\n`;
}

/**
 * Besides what must have quotes: where a program takes the semicolon for the delimiter, a number at the start of such a cell would go on
 * into the next cell as one formula; the quote behind it stops that.
 */
function needsQuotes(cell: unknown, column: number): boolean {
  return typeof cell === 'string' && (/[;\t]/.test(cell) || (column === 0 && /^\s*[+-]/.test(cell)));
}
