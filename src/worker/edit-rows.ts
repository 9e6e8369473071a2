import { itemOfRow } from '../core/caching/in-order.ts';
import { createLineReader, type LineReader } from '../core/intake/build-line.ts';
import { isShifted } from '../core/intake/build-list.ts';
import { distrust } from '../core/intake/distrust.ts';
import { PANEL_TABLE_ROW } from '../core/intake/relate.ts';
import { type EditedRow, relateEdited } from '../core/intake/relate-edited.ts';
import { createOtherFinder } from '../core/intake/rows.ts';
import { withoutSide } from '../core/intake/side-table.ts';
import type { Line } from '../core/model/line.ts';
import type { CellFlags, Column, HardwareList, OtherRow } from '../core/model/list.ts';
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
  const edited: EditedRow[] = [];
  for (const [row, edits] of byRow(cells)) {
    const before = itemOfRow(list.relations.ownLines, row) ?? itemOfRow(list.others, row);
    const origin = origins.get(row);
    if (!before || !origin) continue;
    edited.push({ before, after: readAgain(origin, edits.reduce(withCell, before.cells), list) });
  }
  return relateEdited(list, edited);
}

function readAgain({ row, flags }: Origin, cells: readonly string[], list: HardwareList): Line | OtherRow {
  if (isSame(cells, row.cells)) return row;
  if (isOther(row) && (row.what === 'units' || row.what === PANEL_TABLE_ROW)) return { ...row, cells };
  const { columns, reading, relations } = list;
  const unchanged = Object.entries(flags).filter(([column]) => cells[Number(column)] === row.cells[Number(column)]);
  const raw = { number: row.row, cells, ...(unchanged.length > 0 && { flags: Object.fromEntries(unchanged) }) };
  const { findOther, read } = readersFor(columns);
  const what = findOther(withoutSide(raw, relations.sideColumns));
  if (what) return { row: row.row, cells, what };
  const line = read(raw);
  return reading && isShifted(raw, columns.length) ? distrust(line) : line;
}

/** Readers serve a list as long as its columns stay: many rows are read again at once, and often back and forth. */
const known = new WeakMap<readonly Column[], Readers>();

interface Readers {
  readonly read: LineReader['read'];
  readonly findOther: ReturnType<typeof createOtherFinder>;
}

function readersFor(columns: readonly Column[]): Readers {
  const readers = known.get(columns) ?? {
    read: createLineReader(columns).read,
    findOther: createOtherFinder(columns),
  };
  known.set(columns, readers);
  return readers;
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

function isOther(row: Line | OtherRow): row is OtherRow {
  return 'what' in row;
}
