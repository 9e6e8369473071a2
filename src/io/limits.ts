/** Bytes of a text file. */
export const LARGEST_TEXT = 100 * 1024 * 1024;
/** The last row and column that a spreadsheet has. */
export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;
/** Cells up to the last filled one of each row, all rows of all sheets together. */
export const MOST_CELLS = 20_000_000;
/** Characters from one line end of a text file to the next: a hundred columns of the longest cells take less. */
export const LONGEST_LINE = 4_000_000;
/** Entries in the table of texts of a workbook. */
export const MOST_TEXTS = 4_000_000;
/** Characters that all cells come to which hold a text of their own. */
export const MOST_CHARACTERS = 250_000_000;
/** Sheets of a workbook. */
export const MOST_SHEETS = 1000;

/** One sentence for more of something than a list can need. `what` names the limit: “more than 1,000 sheets”. */
export function describeTooMuch(file: string, place: string, what: string, cure: string): string {
  return `‘${file}’${place} has ${what}, which no list needs; ${cure}.`;
}

/** A whole number for a sentence: `1,048,576`. */
export function showCount(count: number): string {
  return count.toLocaleString('en-US');
}
