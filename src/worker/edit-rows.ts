import { buildLine } from '../core/intake/build-line.ts';
import { distrust, isShifted } from '../core/intake/build-list.ts';
import { PANEL_TABLE_ROW, relateRows } from '../core/intake/relate.ts';
import { findOther } from '../core/intake/rows.ts';
import { withoutSide } from '../core/intake/side-table.ts';
import type { Line } from '../core/model/line.ts';
import type { CellFlags, HardwareList, OtherRow } from '../core/model/list.ts';
import type { RawFile } from '../core/model/raw.ts';
import type { CellEdit } from './protocol.ts';

/** A row as it was read, and what the reader noticed about its cells. */
interface Origin {
  readonly row: Line | OtherRow;
  readonly flags: CellFlags;
}

/** Every row of a list as it was read, by its number in the file. */
export type Origins = ReadonlyMap<number, Origin>;

/** The rows of a list that was read just now. */
export function originsOf(file: RawFile, { sheet, others, relations }: HardwareList): Origins {
  const raw = new Map((file.tables.find(({ name }) => name === sheet)?.rows ?? []).map((row) => [row.number, row]));
  return new Map<number, Origin>([
    ...relations.ownLines.map((row): [number, Origin] => [row.row, { row, flags: row.flags }]),
    ...others.map((row): [number, Origin] => [row.row, { row, flags: raw.get(row.row)?.flags ?? {} }]),
  ]);
}

/**
 * The list with texts put into its cells: every edited row is read as if the file had held it so, and may become a fastener or stop
 * being one. A row whose cells are all as they were read is what it was.
 */
export function withCells(list: HardwareList, origins: Origins, cells: readonly CellEdit[]): HardwareList {
  const { relations } = list;
  const rows = new Map<number, Line | OtherRow>([...relations.ownLines, ...list.others].map((row) => [row.row, row]));
  for (const [row, edits] of byRow(cells)) {
    const before = rows.get(row);
    const origin = origins.get(row);
    if (before && origin) rows.set(row, readAgain(origin, edits.reduce(withCell, before.cells), list));
  }
  const all = [...rows.values()].sort((a, b) => a.row - b.row);
  return relateRows({
    ...list,
    others: all.filter(isOther),
    relations: { ...relations, ownLines: all.filter(isLine) },
  });
}

function readAgain({ row, flags }: Origin, cells: readonly string[], list: HardwareList): Line | OtherRow {
  if (isSame(cells, row.cells)) return row;
  if (isOther(row) && (row.what === 'units' || row.what === PANEL_TABLE_ROW)) return { ...row, cells };
  const { columns, reading, relations } = list;
  const unchanged = Object.entries(flags).filter(([column]) => cells[Number(column)] === row.cells[Number(column)]);
  const raw = { number: row.row, cells, flags: Object.fromEntries(unchanged) };
  const what = findOther(withoutSide(raw, relations.sideColumns), columns);
  if (what) return { row: row.row, cells, what };
  const line = buildLine(raw, columns);
  return reading && isShifted(raw, columns.length) ? distrust(line) : line;
}

function byRow(cells: readonly CellEdit[]): ReadonlyMap<number, readonly CellEdit[]> {
  const rows = new Map<number, CellEdit[]>();
  for (const cell of cells) {
    const edits = rows.get(cell.row);
    if (edits) edits.push(cell);
    else rows.set(cell.row, [cell]);
  }
  return rows;
}

function withCell(cells: readonly string[], { column, text }: CellEdit): readonly string[] {
  const length = Math.max(cells.length, column + 1);
  return Array.from({ length }, (_, index) => (index === column ? text : (cells[index] ?? '')));
}

/** Empty cells behind the last text make no difference. */
function isSame(a: readonly string[], b: readonly string[]): boolean {
  const length = Math.max(a.length, b.length);
  return Array.from({ length }).every((_, index) => (a[index] ?? '') === (b[index] ?? ''));
}

function isLine(row: Line | OtherRow): row is Line {
  return !isOther(row);
}

function isOther(row: Line | OtherRow): row is OtherRow {
  return 'what' in row;
}
