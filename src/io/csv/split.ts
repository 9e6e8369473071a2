import Papa from 'papaparse';

/**
 * Cuts tidied text (see `tidyQuotes`) into rows of cells, at most `limit` of them. Cells stay text as written, blank rows
 * stay in place: nothing is typed, trimmed, renamed or taken for a comment.
 */
export function splitRows(text: string, delimiter: string, limit = 0): string[][] {
  return Papa.parse<string[]>(text, {
    delimiter,
    newline: '\n',
    quoteChar: '"',
    header: false,
    dynamicTyping: false,
    comments: false,
    skipEmptyLines: false,
    preview: limit,
  }).data;
}

/** Whether a row holds nothing but white space. */
export function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}
