import { LAST_ROW } from '../limits.ts';

/** One quoted cell in the text. */
export interface Quote {
  /** Where its opening quote stands in the text given. */
  readonly at: number;
  /** 1-based row, as a spreadsheet counts. */
  readonly row: number;
}

/** Text whose quotes all close and whose rows all end in a line feed. */
export interface Tidied {
  readonly text: string;
  /** Quotes that never close properly (`"1/4" thick`); they were kept as plain text. */
  readonly repaired: readonly Quote[];
  /** Quoted cells that hold line breaks. */
  readonly multiline: readonly Quote[];
}

/** Pieces joined at once: fewer, longer texts take less room. */
const MOST_PIECES = 8192;
/** A spreadsheet cell holds 32,767 characters; a quote that stays open for longer was not meant to open. */
const LONGEST_CELL = 70_000;

/**
 * Makes delimited text safe to cut: line ends outside quotes become LF, spaces around a quoted cell go, and an opening
 * quote without a proper closing one becomes plain text of its own cell, so that it cannot swallow the rows below.
 * Quotes at the positions in `asText` are taken for plain text whatever follows.
 */
export function tidyQuotes(text: string, delimiter: string, asText: ReadonlySet<number> = new Set()): Tidied {
  const repaired: Quote[] = [];
  const multiline: Quote[] = [];
  const joined: string[] = [];
  const out: string[] = [];
  let done = 0;
  let row = 1;
  let quote = text.indexOf('"');
  while (quote >= 0) {
    const start = findCellStart(text, quote, delimiter);
    if (start < 0) {
      quote = text.indexOf('"', quote + 1);
      continue;
    }
    const before = unifyLineEnds(text.slice(done, start));
    row += countLineEnds(before);
    const close = asText.has(quote) ? -1 : findClosingQuote(text, quote, delimiter);
    done = close < 0 ? findCellEnd(text, quote, delimiter) : skipPadding(text, close + 1, delimiter);
    const cell = close < 0 ? enquote(text.slice(start, done)) : text.slice(quote, close + 1);
    if (close < 0) note(repaired, { at: quote, row });
    else if (/[\r\n]/.test(cell)) note(multiline, { at: quote, row });
    out.push(before, cell);
    if (out.length > MOST_PIECES) joined.push(out.splice(0).join(''));
    quote = text.indexOf('"', done);
  }
  out.push(unifyLineEnds(text.slice(done)));
  return { text: joined.concat(out).join(''), repaired, multiline };
}

/** More of them than a list has rows only cost room. */
function note(quotes: Quote[], quote: Quote): void {
  if (quotes.length < LAST_ROW) quotes.push(quote);
}

/** Where the cell that this quote opens begins, or -1 if the quote stands inside text, as in `1/4" thick`. */
function findCellStart(text: string, quote: number, delimiter: string): number {
  let start = quote;
  while (start > 0 && isPadding(text[start - 1], delimiter)) start--;
  return start === 0 || isCellEnd(text[start - 1], delimiter) ? start : -1;
}

function findClosingQuote(text: string, open: number, delimiter: string): number {
  let at = text.indexOf('"', open + 1);
  while (at >= 0 && text[at + 1] === '"') at = at - open > LONGEST_CELL ? -1 : text.indexOf('"', at + 2);
  if (at < 0 || at - open > LONGEST_CELL) return -1;
  return isCellEnd(text[skipPadding(text, at + 1, delimiter)], delimiter) ? at : -1;
}

function findCellEnd(text: string, from: number, delimiter: string): number {
  let at = from;
  while (!isCellEnd(text[at], delimiter)) at++;
  return at;
}

function skipPadding(text: string, from: number, delimiter: string): number {
  let at = from;
  while (isPadding(text[at], delimiter)) at++;
  return at;
}

function isPadding(character: string | undefined, delimiter: string): boolean {
  return (character === ' ' || character === '\t') && character !== delimiter;
}

function isCellEnd(character: string | undefined, delimiter: string): boolean {
  return character === undefined || character === delimiter || character === '\n' || character === '\r';
}

function enquote(cell: string): string {
  return `"${cell.replaceAll('"', '""')}"`;
}

function unifyLineEnds(text: string): string {
  return text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text;
}

function countLineEnds(text: string): number {
  let count = 0;
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) count++;
  return count;
}
