import type { RawRow } from '../../core/model/raw.ts';
import { LAST_COLUMN } from '../limits.ts';
import type { Gate } from './gate.ts';
import { isBlank } from './split.ts';

const QUOTE = 34;
const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;
const SPACE = 32;
const TAB = 9;
/** Signs that cannot divide cells: whoever asks for one of them gets what is found instead. */
const NO_DELIMITERS = new Set([QUOTE, LINE_FEED, CARRIAGE_RETURN, 0xfeff]);
/** As many recent texts of a column are kept, a power of two. */
const KEPT = 1024;

/**
 * Cuts text whose quotes leave no doubt into rows of cells, blank ones left out, in one pass: every quoted cell begins right behind a delimiter, closes right
 * before the next and stays on its line. Null: there is a cell for which that is not so, and `tidyQuotes` has to look at the text.
 * Filled rows go through the gate. Equal texts of a column come out as the same string, where one of them was not long ago: that spares memory and later comparing.
 */
export function cutPlain(text: string, delimiter: string, gate: Gate): RawRow[] | null {
  const delimiterCode = delimiter.charCodeAt(0);
  if (delimiter.length !== 1 || NO_DELIMITERS.has(delimiterCode)) return null;
  const recent: string[][] = [];
  const rows: RawRow[] = [];
  let cells: string[] = [];
  let number = 1;
  let hasText = false;
  let at = 0;
  while (at <= text.length) {
    const isQuoted = text.charCodeAt(at) === QUOTE;
    const start = isQuoted ? at + 1 : at;
    let hash = 0;
    let isEscaped = false;
    let end = start;
    for (; end < text.length; end++) {
      const code = text.charCodeAt(end);
      if (isQuoted) {
        if (code === LINE_FEED || code === CARRIAGE_RETURN) return null;
        if (code === QUOTE) {
          if (text.charCodeAt(end + 1) !== QUOTE) break;
          isEscaped = true;
          end += 1;
        }
      } else if (code === delimiterCode || code === LINE_FEED || code === CARRIAGE_RETURN) break;
      hash = (Math.imul(hash, 31) + code) | 0;
    }
    if (isQuoted && end === text.length) return null;
    if (!isQuoted && end > start && isPaddedQuote(text, start, end)) return null;
    recent[cells.length] ??= [];
    cells.push(cellOf(text, start, end, isEscaped, recent[cells.length] ?? [], hash & (KEPT - 1)));
    hasText ||= end > start;
    if (cells.length > LAST_COLUMN) gate(number, cells.length);
    at = isQuoted ? end + 1 : end;
    const next = text.charCodeAt(at);
    at += 1;
    if (next === delimiterCode) continue;
    if (next === CARRIAGE_RETURN && text.charCodeAt(at) === LINE_FEED) at += 1;
    else if (at <= text.length && next !== LINE_FEED && next !== CARRIAGE_RETURN) return null;
    if (hasText && !isBlank(cells)) {
      gate(number, cells.length);
      rows.push({ number, cells });
    }
    cells = [];
    number += 1;
    hasText = false;
  }
  return rows;
}

/** Blanks before a quote: whether they belong to the cell is for others to decide. */
function isPaddedQuote(text: string, start: number, end: number): boolean {
  let at = start;
  for (let code = text.charCodeAt(at); code === SPACE || code === TAB; code = text.charCodeAt(at)) at += 1;
  return at > start && at < end && text.charCodeAt(at) === QUOTE;
}

function cellOf(text: string, start: number, end: number, isEscaped: boolean, recent: string[], slot: number): string {
  const before = recent[slot];
  if (!isEscaped && before !== undefined && before.length === end - start && text.startsWith(before, start))
    return before;
  const cell = text.slice(start, end);
  if (isEscaped) return cell.replaceAll('""', '"');
  recent[slot] = cell;
  return cell;
}
