import type { Notice, RawRow } from '../../core/model/raw.ts';
import { showRows } from '../../core/say/show-rows.ts';
import { cutPlain } from './cut-plain.ts';
import type { Gate } from './gate.ts';
import { type Quote, type Tidied, tidyQuotes } from './quotes.ts';
import { cutTidied } from './split.ts';
import { findHeading, type Heading } from './widths.ts';

/** Rows cut from text, and where quotes were in doubt. */
export interface Rows {
  readonly rows: readonly RawRow[];
  /** Rows whose opening quote was taken for plain text. */
  readonly repaired: readonly number[];
  /** Rows with a quoted cell over several lines that could as well be several rows. */
  readonly doubtful: readonly number[];
}

/**
 * Cuts text into rows. A quoted cell over several lines that leaves its row with the wrong number of cells is read again
 * as plain text, and that reading is kept if it gives fewer odd rows: one forgotten quote must not hide the rows below.
 * `newGate` makes the gate that the filled rows of one cutting go through.
 */
export function readRows(text: string, delimiter: string, newGate: () => Gate): Rows {
  const plain = cutPlain(text, delimiter, newGate());
  if (plain) return { rows: plain, repaired: [], doubtful: [] };
  const tidied = tidyQuotes(text, delimiter);
  const rows = cutTidied(tidied.text, delimiter, newGate());
  const heading = findHeading(rows);
  if (heading === undefined || tidied.multiline.length === 0) return { rows, repaired: rowsOf(tidied), doubtful: [] };

  const odd = new Set(oddRows(rows, heading));
  const suspects = tidied.multiline.filter((quote) => odd.has(quote.row));
  if (suspects.length > 0) {
    const again = tidyQuotes(text, delimiter, new Set(suspects.map((quote) => quote.at)));
    const others = cutTidied(again.text, delimiter, newGate());
    if (oddRows(others, heading).length < odd.size) return { rows: others, repaired: rowsOf(again), doubtful: [] };
  }
  return { rows, repaired: rowsOf(tidied), doubtful: findDoubtful(rows, tidied.multiline, delimiter, heading) };
}

/** One sentence for the rows whose quotes do not close, and one for those whose quotes may not. */
export function noticeUnclosed({ repaired, doubtful }: Rows): Notice[] {
  const notices: Notice[] = [];
  if (repaired.length > 0) {
    const text =
      repaired.length === 1
        ? 'has a quote that never closes; it was read as an inch mark or plain text, so check that row'
        : 'have quotes that never close; they were read as inch marks or plain text, so check those rows';
    notices.push(noticeAt(repaired, text));
  }
  if (doubtful.length > 0) {
    const text =
      doubtful.length === 1
        ? 'has a quoted cell over several lines that looks like rows of its own; check whether a closing quote is missing'
        : 'have quoted cells over several lines that look like rows of their own; check whether closing quotes are missing';
    notices.push(noticeAt(doubtful, text));
  }
  return notices;
}

function noticeAt(rows: readonly number[], what: string): Notice {
  const [first, ...more] = rows;
  return { text: `${showRows(rows)} ${what}.`, ...(first !== undefined && more.length === 0 && { row: first }) };
}

function rowsOf(tidied: Tidied): number[] {
  return [...new Set(tidied.repaired.map((quote) => quote.row))];
}

function oddRows(rows: readonly RawRow[], heading: Heading): number[] {
  return rows.filter((row) => row.number > heading.row && row.cells.length !== heading.width).map((row) => row.number);
}

/** Rows of the right width in which each line of a quoted cell would make a full row of its own too. */
function findDoubtful(
  rows: readonly RawRow[],
  quotes: readonly Quote[],
  delimiter: string,
  heading: Heading,
): number[] {
  const multiline = new Set(quotes.map((quote) => quote.row));
  return rows
    .filter((row) => multiline.has(row.number) && row.cells.some((_, at) => hidesRows(row, at, delimiter, heading)))
    .map((row) => row.number);
}

function hidesRows(row: RawRow, at: number, delimiter: string, heading: Heading): boolean {
  const lines = (row.cells[at] ?? '').split(/\r\n|\r|\n/);
  if (lines.length < 2 || heading.width < 3) return false;
  const widths = lines.map((line) => line.split(delimiter).length);
  const last = widths.length - 1;
  widths[0] = widths[0]! + at;
  widths[last] = widths[last]! + row.cells.length - 1 - at;
  return widths.every((width) => width === heading.width);
}
