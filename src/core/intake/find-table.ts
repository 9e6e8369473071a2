import { type RawFile, type RawRow, type RawTable, Unreadable } from '../model/raw.ts';
import { findHeader, findList } from './find-header.ts';

/** The table that holds the list and its row of headings; `others` are further sheets that read like lists. */
export interface FoundTable {
  readonly table: RawTable;
  readonly header: RawRow;
  readonly others: readonly RawTable[];
}

/** Finds the list in a file, or takes the sheet and row that the user chose. Throws `Unreadable` with what to do about it. */
export function findTable(
  file: RawFile,
  options: { readonly sheet?: string; readonly headerRow?: number } = {},
): FoundTable {
  if (file.tables.every(({ rows }) => rows.length === 0))
    throw new Unreadable(`${file.file} has no rows: check that it is the list you meant.`);
  if (options.sheet !== undefined) return inTable(file, findSheet(file, options.sheet), options.headerRow);
  const found = findList(file);
  if (options.headerRow !== undefined) return inTable(file, found?.table ?? fullest(file), options.headerRow);
  if (!found) throw new Unreadable(noHeadings(file, fullest(file)));
  return { table: found.table, header: found.header.row, others: found.others };
}

function findSheet(file: RawFile, name: string): RawTable {
  const same = (table: RawTable) => table.name.trim().toLowerCase() === name.trim().toLowerCase();
  const table = file.tables.find((one) => one.name === name) ?? file.tables.find(same);
  if (table) return table;
  const names = file.tables.map((one) => `“${one.name}”`).join(', ');
  throw new Unreadable(`${file.file} has no sheet “${name}”: choose one of ${names}.`);
}

function inTable(file: RawFile, table: RawTable, headerRow: number | undefined): FoundTable {
  if (headerRow === undefined) {
    const header = findHeader(table);
    if (!header) throw new Unreadable(noHeadings(file, table));
    return { table, header: header.row, others: [] };
  }
  const header = table.rows.find(({ number }) => number === headerRow);
  if (!header)
    throw new Unreadable(
      `Row ${headerRow} of ${place(file, table)} is blank: choose the row that holds the column headings.`,
    );
  return { table, header, others: [] };
}

function fullest(file: RawFile): RawTable {
  return file.tables.reduce((best, table) => (table.rows.length > best.rows.length ? table : best));
}

function noHeadings(file: RawFile, table: RawTable): string {
  return `No row of column headings was found in ${place(file, table)}: add one such as “Part number, Quantity, Material, Thickness”, or choose the row that holds them.`;
}

function place(file: RawFile, table: RawTable): string {
  return table.name === '' ? file.file : `${file.file}, sheet “${table.name}”`;
}
