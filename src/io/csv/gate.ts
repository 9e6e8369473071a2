import { Unreadable } from '../../core/model/raw.ts';
import { describeTooMuch, LAST_COLUMN, LAST_ROW, LONGEST_LINE, MOST_CELLS, showCount } from '../limits.ts';
import type { Report } from '../options.ts';

/** Rows between two reports. */
const STEP = 10_000;
const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;

/**
 * Counts filled rows as they are cut from a text.
 * @throws Unreadable at the first one too many, and whatever the report throws.
 */
export type Gate = (row: number, width: number) => void;

/** A gate for one file; `report` is told now and then that the reading goes on. */
export function createGate(file: string, report: Report): Gate {
  let rows = 0;
  let cells = 0;
  return (row, width) => {
    rows += 1;
    cells += width;
    if (width > LAST_COLUMN) refuseLine(file, row, `more than ${showCount(LAST_COLUMN)} cells`);
    if (rows > LAST_ROW) refuse(file, `more than ${showCount(LAST_ROW)} filled rows`);
    if (cells > MOST_CELLS) refuse(file, `more than ${showCount(MOST_CELLS)} cells`);
    if (rows % STEP === 0) report();
  };
}

/** @throws Unreadable when a line is so long that it can hold no row of a list. */
export function refuseLongLines(text: string, file: string): void {
  for (let start = 0; text.length - start > LONGEST_LINE; ) {
    const end = findLastLineEnd(text, start, start + LONGEST_LINE);
    if (end < 0) refuseLine(file, countLines(text, start), `more than ${showCount(LONGEST_LINE)} characters`);
    start = end + 1;
  }
}

/** Where the last line between two places ends; -1 if none does. */
function findLastLineEnd(text: string, from: number, to: number): number {
  for (let at = to; at >= from; at--) {
    const code = text.charCodeAt(at);
    if (code === LINE_FEED || code === CARRIAGE_RETURN) return at;
  }
  return -1;
}

/** 1-based number of the line that begins at a place. */
function countLines(text: string, start: number): number {
  let line = 1;
  for (let at = 0; at < start; at++) {
    const code = text.charCodeAt(at);
    if (code === LINE_FEED || (code === CARRIAGE_RETURN && text.charCodeAt(at + 1) !== LINE_FEED)) line += 1;
  }
  return line;
}

function refuseLine(file: string, line: number, what: string): never {
  const cure = 'choose the file with your list, or the sign that parts its cells';
  throw new Unreadable(describeTooMuch(file, `, line ${showCount(line)},`, what, cure));
}

function refuse(file: string, what: string): never {
  throw new Unreadable(describeTooMuch(file, '', what, 'save the rows that are to be judged in a file of their own'));
}
