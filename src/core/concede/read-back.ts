import { partKey } from '../catalogue/part-key.ts';
import { findOwnColumns } from '../intake/own-columns.ts';
import type { AuditedList } from '../model/audited.ts';
import type { Concession } from '../model/concession.ts';
import type { RawFile, RawRow } from '../model/raw.ts';

/** Headings of the sheet of concessions that an exported workbook carries. The last column, hidden, is for reading it back. */
export const CONCESSION_HEADINGS = [
  'Row in file',
  'Part number',
  'Outcome',
  'Check',
  'Finding',
  'Reason',
  'Accepted by',
  'Date',
  'Stands or lapsed',
  'For reading back',
] as const;
const SHEET = /^concessions(?: \d+)?$/i;
const ROW_HEADING = 'row in file';

/** What the hidden column holds: the check, what it said in a word, and the facts that the concession rests on. */
export function showForReadingBack({ rule, outcome, facts }: Concession): string {
  return JSON.stringify({ rule, outcome, facts });
}

/**
 * The concessions that an earlier export of ours has left in a workbook, each with the row that its part stands in now. Rows are found
 * by the column "Row in file" beside the list and must still hold the part; a part that has moved and occurs once is followed. What
 * cannot be placed, or whose facts were damaged, is left out and counted in `lost`. Whether one still stands is for `standing` to say.
 */
export function readConcessions(
  file: RawFile,
  list: AuditedList,
): { readonly concessions: readonly Concession[]; readonly lost: number } {
  const table = file.tables.find(({ name, rows }) => SHEET.test(name) && isOurs(rows[0]));
  if (!table) return { concessions: [], lost: 0 };
  const rows = table.rows.slice(1);
  const places = rowPlaces(file, list);
  const read = rows.flatMap((row) => readConcession(row, list, places) ?? []);
  const last = new Map(read.map((concession) => [`${concession.row} ${concession.rule}`, concession]));
  return { concessions: [...last.values()].sort((a, b) => a.row - b.row), lost: rows.length - read.length };
}

function isOurs(row: RawRow | undefined): boolean {
  return CONCESSION_HEADINGS.every((heading, index) => row?.cells[index] === heading);
}

function readConcession({ cells }: RawRow, list: AuditedList, places: ReadonlyMap<number, number>): Concession | null {
  const [former = '', part = '', , , says = '', reason = '', by = '', date = '', , hidden = ''] = cells;
  const kept = parseKept(hidden);
  const row = placeOf(Number(former), part, list, places);
  return kept && row !== null ? { ...kept, row, says, reason, by, date } : null;
}

function parseKept(text: string): Pick<Concession, 'rule' | 'outcome' | 'facts'> | null {
  try {
    const read: unknown = JSON.parse(text);
    const { rule, outcome, facts } = (read ?? {}) as Record<string, unknown>;
    const isOutcome = outcome === 'fails' || outcome === 'marginal' || outcome === 'unknown';
    return typeof rule === 'string' && typeof facts === 'string' && isOutcome ? { rule, outcome, facts } : null;
  } catch {
    return null;
  }
}

/** Row now by row then; empty where the list has no such column any more: then rows are where they were. */
function rowPlaces({ tables }: RawFile, { sheet, headerRow }: AuditedList): ReadonlyMap<number, number> {
  const rows = tables.find(({ name }) => name === sheet)?.rows ?? [];
  const headings = rows.find(({ number }) => number === headerRow)?.cells ?? [];
  const column = findOwnColumns(headings)
    .map(({ start }) => start)
    .find((start) => headings[start]?.trim().toLowerCase() === ROW_HEADING);
  if (column === undefined) return new Map();
  const pairs = rows.map(({ number, cells }) => [Number(cells[column] || Number.NaN), number] as const);
  return new Map(pairs.filter(([former, now]) => Number.isInteger(former) && now > headerRow));
}

function placeOf(former: number, part: string, { lines }: AuditedList, places: ReadonlyMap<number, number>) {
  const same = lines.filter(({ line }) => partKey(line.partNumber) === partKey(part));
  const row = places.size > 0 ? places.get(former) : former;
  if (same.some((line) => line.row === row)) return row ?? null;
  return same.length === 1 ? (same[0]?.row ?? null) : null;
}
