import { tidyQuotes } from './quotes.ts';
import { isBlank, splitRows } from './split.ts';

/**
 * What may separate cells. On a near tie the earlier one wins: commas also stand in prose and in decimal numbers, the
 * others hardly do.
 */
const CANDIDATES = ['\t', ';', '|', '，', '、', ','] as const;
const CLEARLY_BETTER = 1.05;
const SAMPLE_CHARACTERS = 100_000;
const SAMPLE_ROWS = 200;
const HEADING_REACH = 60;
const ROWS_BELOW = 50;

/**
 * The separator that best turns a row of words into headings with rows of the same width below it, quotes honoured.
 * Notes above the headings do not count against it. A comma when nothing separates.
 */
export function guessDelimiter(text: string): string {
  const sample = text.slice(0, SAMPLE_CHARACTERS);
  let best = { delimiter: ',', score: 0 };
  for (const delimiter of CANDIDATES) {
    if (!sample.includes(delimiter)) continue;
    const rows = splitRows(tidyQuotes(sample, delimiter).text, delimiter, SAMPLE_ROWS);
    const score = scoreRows(rows.filter((row) => !isBlank(row)));
    if (score > best.score * CLEARLY_BETTER) best = { delimiter, score };
  }
  return best.delimiter;
}

/** The first row of a text file may name the separator: `sep=;`. It is an instruction to the reader, not a row. */
export function takeSeparatorLine(text: string): { readonly text: string; readonly delimiter?: string } {
  const line = /^sep=([^\r\n"])[ \t]*(?:\r\n|\r|\n|$)/i.exec(text);
  return line?.[1] === undefined ? { text } : { text: text.slice(line[0].length), delimiter: line[1] };
}

function scoreRows(rows: readonly (readonly string[])[]): number {
  let best = 0;
  for (const [index, row] of rows.slice(0, HEADING_REACH).entries()) {
    if (row.length < 2) continue;
    const below = rows.slice(index + 1, index + 1 + ROWS_BELOW);
    best = Math.max(best, (0.3 + 0.7 * shareOfWords(row)) * steadiness(row.length, below));
  }
  return best;
}

/** 1 when all rows below have the same width; two rows below are enough to be sure. */
function steadiness(width: number, below: readonly (readonly string[])[]): number {
  const same = below.filter((row) => row.length === width).length;
  const cut = below.filter((row) => row.length > 1).length;
  const share = below.length === 0 ? 1 : (same + cut) / (2 * below.length);
  return share * Math.min(1, (same + 1) / 3);
}

function shareOfWords(row: readonly string[]): number {
  return row.filter(isWord).length / row.length;
}

/** A heading is short and begins like a word; a separator left at its rim shows that the row was cut at the wrong sign. */
function isWord(cell: string): boolean {
  const word = cell.trim();
  if (word === '#') return true;
  const hasRim = CANDIDATES.some((sign) => word.startsWith(sign) || word.endsWith(sign));
  return !hasRim && word.length <= 40 && /\p{L}/u.test(word) && !/^\d/.test(word);
}
