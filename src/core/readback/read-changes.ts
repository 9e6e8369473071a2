import type { ChangeDetail, ChangeRecord } from '../model/change-record.ts';
import type { RawTable } from '../model/raw.ts';
import { type EarlierRows, rowNow } from './earlier-rows.ts';
import { cellsByHeading } from './latest-sheet.ts';

/** Headings of the sheet of changes that an exported workbook carries. */
export const CHANGE_HEADINGS = [
  'When (UTC)',
  'By',
  'What',
  'Row in file',
  'Column or setting',
  'Before',
  'After',
  'Undone',
  'Earlier',
] as const;

type Cell = (heading: (typeof CHANGE_HEADINGS)[number]) => string;

/** Reads a sheet of changes: lines of one step make one record. Rows are those of this file; where they are gone, words say so. */
export function readChanges(sheet: RawTable, earlier: EarlierRows): readonly ChangeRecord[] {
  const records: (ChangeRecord & { readonly details: ChangeDetail[] })[] = [];
  for (const cell of cellsByHeading(sheet)) {
    const head = readHead(cell, earlier);
    const detail = readDetail(cell, earlier);
    const last = records.at(-1);
    if (last && isSameStep(last, head)) last.details.push(detail);
    else if (head.what !== '') records.push({ ...head, details: [detail] });
  }
  return records;
}

function readHead(cell: Cell, earlier: EarlierRows): Omit<ChangeRecord, 'details'> {
  return {
    when: parseWhen(cell('When (UTC)')),
    by: cell('By'),
    what: moveEnd(cell('What'), earlier),
    undone: cell('Undone') === 'undone',
    earlier: true,
  };
}

function readDetail(cell: Cell, earlier: EarlierRows): ChangeDetail {
  const [former, where, before, after] = [
    cell('Row in file'),
    cell('Column or setting'),
    cell('Before'),
    cell('After'),
  ];
  if (!/^\d+$/.test(former))
    return { row: null, where, before: moveRows(before, earlier), after: moveRows(after, earlier) };
  const row = rowNow(Number(former), earlier);
  return { row, where: row === null ? `${where}, row ${former} of the file before` : where, before, after };
}

/** "2025-03-14 10:00:00" as ISO time; anything else stays as it is written. */
function parseWhen(text: string): string {
  return text.replace(/^(\d{4}-\d\d-\d\d) (\d\d:\d\d:\d\d)$/, '$1T$2Z');
}

/** A step that is called by its row, such as "edit Material in row 4". */
function moveEnd(what: string, earlier: EarlierRows): string {
  return what.replace(/ in row (\d+)$/, (_, former: string) => {
    const row = rowNow(Number(former), earlier);
    return row === null ? ` in row ${former} of the file before` : ` in row ${row}`;
  });
}

/** An order of rows, "rows 3, 7, 5", where all of them are still there. */
function moveRows(text: string, earlier: EarlierRows): string {
  const former = /^rows (\d+(?:, \d+)*)$/.exec(text)?.[1]?.split(', ') ?? [];
  const rows = former.map((row) => rowNow(Number(row), earlier));
  if (rows.length === 0) return text;
  return rows.includes(null) ? `${text} of the file before` : `rows ${rows.join(', ')}`;
}

function isSameStep(one: Omit<ChangeRecord, 'details'>, other: Omit<ChangeRecord, 'details'>): boolean {
  return one.when === other.when && one.by === other.by && one.what === other.what && one.undone === other.undone;
}
