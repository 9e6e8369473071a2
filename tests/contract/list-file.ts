import type { RawFile, RawTable } from '../../src/core/model/raw.ts';

/** A text file from lines of cells parted by `;`, as the reader hands it over: blank lines are left out, row numbers count them. */
export function textFile(lines: readonly string[]): RawFile {
  return { file: 'list.csv', format: 'csv', tables: [table('', lines)], notices: [] };
}

/** A workbook from its sheets, each given as lines of cells parted by `;`. */
export function workbookFile(sheets: Readonly<Record<string, readonly string[]>>): RawFile {
  const tables = Object.entries(sheets).map(([name, lines]) => table(name, lines));
  return { file: 'list.xlsx', format: 'xlsx', tables, notices: [] };
}

function table(name: string, lines: readonly string[]): RawTable {
  const rows = lines.map((line, index) => ({ number: index + 1, cells: line.split(';') }));
  return { name, rows: rows.filter(({ cells }) => cells.some((cell) => cell.trim() !== '')) };
}
