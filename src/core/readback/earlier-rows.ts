import { findOwnColumns } from '../intake/own-columns.ts';
import type { AuditedList } from '../model/audited.ts';
import type { RawFile } from '../model/raw.ts';

const ROW_HEADING = 'row in file';

/** Where the rows of the file before an export stand in the exported file now. */
export interface EarlierRows {
  /** Whether the list has our column "Row in file" at all. */
  readonly isKnown: boolean;
  /** Every row now that says it was this one; several where somebody copied a row with our columns. */
  readonly now: (former: number) => readonly number[];
}

/** Reads the column "Row in file" of the last export, beside the list. */
export function readEarlierRows({ tables }: RawFile, { sheet, headerRow }: AuditedList): EarlierRows {
  const rows = tables.find(({ name }) => name === sheet)?.rows ?? [];
  const column = findRowColumn(rows.find(({ number }) => number === headerRow)?.cells ?? []);
  const places = new Map<number, number[]>();
  for (const { number, cells } of column === null ? [] : rows) {
    const former = cells[column ?? 0]?.trim() ?? '';
    if (number <= headerRow || !/^\d+$/.test(former)) continue;
    places.set(Number(former), [...(places.get(Number(former)) ?? []), number]);
  }
  return { isKnown: column !== null, now: (former) => places.get(former) ?? [] };
}

/** Where a row stands now; null where it is gone, or where several say that they were it. */
export function rowNow(former: number, { now }: EarlierRows): number | null {
  const [row, ...copies] = now(former);
  return row === undefined || copies.length > 0 ? null : row;
}

/** Where several exports stand side by side, the last stands furthest to the right. */
function findRowColumn(headings: readonly string[]): number | null {
  const columns = findOwnColumns(headings).flatMap(({ start, end }) =>
    Array.from({ length: end - start }, (_, index) => start + index),
  );
  return columns.findLast((column) => headings[column]?.trim().toLowerCase() === ROW_HEADING) ?? null;
}
