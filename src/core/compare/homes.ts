import { isSheetPart } from '../intake/sheet-part.ts';
import { readTree } from '../intake/tree.ts';
import { nameKey, type TreeRow } from '../intake/tree-row.ts';
import type { Line } from '../model/line.ts';
import type { Column } from '../model/list.ts';

interface Placed {
  readonly line: Line;
  /** What a row is that is no press-in fastener. */
  readonly what: string | null;
}

/** Rows that are no part of the tree. */
const OUTSIDE: ReadonlySet<string | null> = new Set(['total', 'note', 'example', 'panel table']);

/**
 * Where each row belongs, by row: the panel that it names, else the row above it in the tree, else the title above it. Rows are in
 * file order. A flat list that names no panels gives nothing, so that its order does not matter.
 */
export function homesOf(rows: readonly Placed[], columns: readonly Column[]): ReadonlyMap<number, string> {
  const above = rows.every(({ line }) => nameKey(line.panel) !== '') ? new Map() : rowsAbove(rows, columns);
  return new Map(
    rows.map(({ line }) => [line.row, nameKey(line.panel) === '' ? (above.get(line.row) ?? '') : line.panel]),
  );
}

function rowsAbove(rows: readonly Placed[], columns: readonly Column[]): ReadonlyMap<number, string> {
  const names = new Map(rows.map(({ line }) => [line.row, nameOf(line)]));
  const { parents } = readTree(rows.filter(({ what }) => !OUTSIDE.has(what)).map(toTreeRow), columns);
  const above = new Map<number, string>();
  let title = '';
  for (const row of rows) {
    const parent = parents.get(row.line.row)?.[0];
    if (isTitle(row) || row.what === 'total') title = '';
    above.set(row.line.row, parent === undefined ? title : (names.get(parent) ?? ''));
    if (isTitle(row)) title = nameOf(row.line);
  }
  return above;
}

/** A text on its own that heads the rows below it. */
function isTitle({ line, what }: Placed): boolean {
  if (what === 'section') return true;
  return what !== null && isSheetPart(line) && line.cells.filter((cell) => cell.trim() !== '').length === 1;
}

function toTreeRow({ line, what }: Placed): TreeRow {
  const { row, cells } = line;
  if (what === 'section') return { row, cells, partNumber: '', description: '', quantity: null, seemsToBe: null };
  return line;
}

function nameOf({ partNumber, description, cells }: Line): string {
  return partNumber || description || (cells.find((cell) => cell.trim() !== '') ?? '').trim();
}
