import type { Column, OtherRow, PanelRow, Role } from '../model/list.ts';
import type { RawRow } from '../model/raw.ts';
import { findColumns } from './columns.ts';
import { findRole } from './headings.ts';
import { headsPanels, readPanelRows } from './panel-table.ts';
import { nameKey } from './tree-row.ts';

/**
 * Columns of a panel table that stands beside the list, behind an empty column; none where there is no such table. Its rows only
 * happen to be level with those of the list. It is one when the list names panels itself, and the table names each but once.
 */
export function findSideTable(headings: readonly string[], rows: readonly RawRow[]): readonly Column[] {
  const blocks = blocksOf(headings, rows);
  const side = blocks.find((block) => {
    const roles = rolesOf(headings, block);
    return headsPanels(block.map((index) => headings[index] ?? '')) && !roles.includes('quantity');
  });
  const list = blocks.find((block) => block !== side && isList(rolesOf(headings, block)));
  if (!side || !list) return [];
  const inSide = new Set(side);
  const columns = findColumns(
    headings.map((heading, index) => (inSide.has(index) ? heading : '')),
    (index) => (inSide.has(index) ? rows.map(({ cells }) => cells[index] ?? '') : []),
  ).filter(({ index }) => inSide.has(index));
  return namesOnce(rows, columns) ? columns : [];
}

/** Reads the table beside the list from the cells of the list's rows as they are now. */
export function readSideTable(
  rows: readonly Pick<OtherRow, 'row' | 'cells'>[],
  columns: readonly Column[],
): readonly PanelRow[] {
  if (columns.length === 0) return [];
  return readPanelRows(
    rows.map(({ row, cells }) => ({ number: row, cells })),
    columns,
  );
}

/** The row without the cells of the table beside it. */
export function withoutSide(row: RawRow, side: readonly Column[]): RawRow {
  if (side.length === 0) return row;
  const isSide = new Set(side.map(({ index }) => index));
  return { ...row, cells: row.cells.map((cell, index) => (isSide.has(index) ? '' : cell)) };
}

/** Columns in groups that are parted by columns with nothing in them. */
function blocksOf(headings: readonly string[], rows: readonly RawRow[]): readonly (readonly number[])[] {
  const blocks: number[][] = [[]];
  headings.forEach((heading, index) => {
    const isEmpty = heading.trim() === '' && rows.every(({ cells }) => (cells[index] ?? '').trim() === '');
    if (isEmpty) blocks.push([]);
    else blocks.at(-1)?.push(index);
  });
  return blocks.filter((block) => block.length > 0);
}

function rolesOf(headings: readonly string[], block: readonly number[]): readonly Role[] {
  return block.flatMap((index) => findRole(headings[index] ?? '')?.role ?? []);
}

function isList(roles: readonly Role[]): boolean {
  return (
    (roles.includes('partNumber') || roles.includes('quantity')) &&
    (roles.includes('panel') || roles.includes('parent'))
  );
}

function namesOnce(rows: readonly RawRow[], columns: readonly Column[]): boolean {
  const name = columns.find(({ role }) => role === 'panel') ?? columns.find(({ role }) => role === 'partNumber');
  const column = name ?? columns.find(({ role }) => role === 'description');
  if (!column) return false;
  const names = rows.map(({ cells }) => nameKey(cells[column.index] ?? '')).filter(Boolean);
  return names.length > 0 && new Set(names).size * 2 > names.length;
}
