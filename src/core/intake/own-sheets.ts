import type { RawFile, RawTable } from '../model/raw.ts';

/** Our sheets of an exported workbook by name, with the words that their first row begins with. */
const FIRST_ROWS = {
  findings: ['Row in file', 'Part number', 'Panel', 'Row verdict'],
  purchase: ['Part number', 'Kind', 'Thread', 'Rows', 'Panels'],
  'press sheet': ['Panel', 'Order', 'Verdict', 'Part number'],
  questions: ['No.', 'Panel', 'Rows', 'Part numbers', 'Question'],
  concessions: ['Row in file', 'Part number', 'Outcome', 'Check'],
  changes: ['When (UTC)', 'By', 'What'],
  compare: ['Compared', 'Before', 'After', 'Difference'],
  basis: ['List'],
} as const;
export type OwnSheetKind = keyof typeof FIRST_ROWS;

/** The file without the sheets that an earlier export of ours has added: they read like lists, and are none. */
export function withoutOwnSheets(file: RawFile): RawFile {
  const tables = file.tables.filter((table) => ownSheetKind(table) === null);
  return tables.length === file.tables.length ? file : { ...file, tables };
}

/** Which of our sheets a sheet is: by its name, perhaps numbered because the name was taken, and its first row. Null: none. */
export function ownSheetKind({ name, rows }: RawTable): OwnSheetKind | null {
  const plain = name.toLowerCase().replace(/ \d+$/, '');
  const kind = (Object.keys(FIRST_ROWS) as OwnSheetKind[]).find((one) => one === plain);
  return kind && FIRST_ROWS[kind].every((word, index) => rows[0]?.cells[index] === word) ? kind : null;
}
