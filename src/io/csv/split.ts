import Papa from 'papaparse';
import type { RawRow } from '../../core/model/raw.ts';
import type { Gate } from './gate.ts';

const AS_WRITTEN = {
  newline: '\n',
  quoteChar: '"',
  header: false,
  dynamicTyping: false,
  comments: false,
  skipEmptyLines: false,
} as const;

/**
 * Cuts tidied text (see `tidyQuotes`) into rows of cells, at most `limit` of them: for a look at the top. Cells stay text as written, blank rows
 * stay in place: nothing is typed, trimmed, renamed or taken for a comment.
 */
export function splitRows(text: string, delimiter: string, limit: number): string[][] {
  return Papa.parse<string[]>(text, { ...AS_WRITTEN, delimiter, preview: limit }).data;
}

/** The filled rows of tidied text, with the numbers that a spreadsheet would show; each goes through the gate. */
export function cutTidied(text: string, delimiter: string, gate: Gate): RawRow[] {
  const rows: RawRow[] = [];
  let number = 0;
  let refusal: unknown;
  Papa.parse<string[]>(text, {
    ...AS_WRITTEN,
    delimiter,
    step: ({ data: cells }, parser) => {
      number += 1;
      if (isBlank(cells)) return;
      rows.push({ number, cells });
      try {
        gate(number, cells.length);
      } catch (error) {
        refusal = error;
        parser.abort();
      }
    },
  });
  if (refusal !== undefined) throw refusal;
  return rows;
}

/** Whether a row holds nothing but white space. */
export function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}
