import type { RawFile, RawTable } from '../model/raw.ts';

/** Our sheets of an exported workbook by name, with the words that their first row begins with. */
const FIRST_ROWS: Readonly<Record<string, readonly string[]>> = {
  findings: ['Row in file', 'Part number', 'Panel', 'Row verdict'],
  purchase: ['Part number', 'Kind', 'Thread', 'Rows', 'Panels'],
  'press sheet': ['Panel', 'Order', 'Verdict', 'Part number'],
  questions: ['No.', 'Panel', 'Rows', 'Part numbers', 'Question'],
  concessions: ['Row in file', 'Part number', 'Outcome', 'Check'],
  changes: ['When (UTC)', 'By', 'What'],
  compare: ['Compared', 'Before', 'After', 'Difference'],
  basis: ['List'],
};

/** The file without the sheets that an earlier export of ours has added: they read like lists, and are none. */
export function withoutOwnSheets(file: RawFile): RawFile {
  const tables = file.tables.filter((table) => !isOwnSheet(table));
  return tables.length === file.tables.length ? file : { ...file, tables };
}

/** Whether a sheet is one of ours: by its name, perhaps numbered because the name was taken, and its first row. */
function isOwnSheet({ name, rows }: RawTable): boolean {
  const words = FIRST_ROWS[name.toLowerCase().replace(/ \d+$/, '')];
  return words?.every((word, index) => rows[0]?.cells[index] === word) ?? false;
}
