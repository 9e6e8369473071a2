import type { RawRow, RawTable } from '../model/raw.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../say/safety.ts';

/** Headings of the columns that we put beside a list when it is exported; units in brackets may follow. */
const OWN_HEADING =
  /^(?:row in file|verdict|conceded|what decides it|sheet understood|sheet|thinnest from the mill|minimum sheet|hole required|edge required|hardness margin|would hold instead)(?: \((?:mm|in|hrb points)\))?$/i;
/** The one that no list has of its own accord. */
const MARK = 'what decides it';
const FEWEST = 3;

/** 0-based columns from `start` to before `end`. */
export interface ColumnRun {
  readonly start: number;
  readonly end: number;
}

/** Columns of an earlier export of ours among the headings of a list. */
export function findOwnColumns(headings: readonly string[]): readonly ColumnRun[] {
  const runs: ColumnRun[] = [];
  const isOwn = headings.map((heading) => OWN_HEADING.test(tidy(heading)));
  for (let start = 0; start < headings.length; start++) {
    if (!isOwn[start]) continue;
    let end = start;
    while (isOwn[end]) end++;
    const isMarked = headings.slice(start, end).some((heading) => tidy(heading).toLowerCase() === MARK);
    if (isMarked && end - start >= FEWEST) runs.push({ start, end });
    start = end;
  }
  return runs;
}

/** The table without what an earlier export of ours has put beside and under the list, from the row of headings down. */
export function withoutOwnColumns(table: RawTable, headerRow: number): RawTable {
  const header = table.rows.find(({ number }) => number === headerRow);
  const runs = findOwnColumns(header?.cells ?? []);
  if (runs.length === 0) return table;
  const rows = table.rows.map((row) => (row.number < headerRow ? row : blank(row, runs)));
  return { ...table, rows: rows.filter(({ cells }) => !isLeftOver(cells)) };
}

/** Nothing, or one of the sentences that an export puts under the list. */
function isLeftOver(cells: readonly string[]): boolean {
  const [first = '', ...others] = cells.filter((cell) => cell.trim() !== '');
  return others.length === 0 && (first === '' || first === DEMO_WORDS || first === SAFETY_SHORT);
}

function blank(row: RawRow, runs: readonly ColumnRun[]): RawRow {
  const isIn = (column: number) => runs.some(({ start, end }) => column >= start && column < end);
  const cells = row.cells.map((cell, column) => (isIn(column) ? '' : cell));
  const last = cells.findLastIndex((cell) => cell !== '');
  const flags = Object.entries(row.flags ?? {}).filter(([column]) => !isIn(Number(column)));
  const { flags: _, ...rest } = row;
  return {
    ...rest,
    cells: cells.slice(0, last + 1),
    ...(flags.length > 0 && { flags: Object.fromEntries(flags) }),
  };
}

function tidy(heading: string): string {
  return heading.replace(/\s+/g, ' ').trim();
}
