import type { Column, Role } from '../model/list.ts';
import type { RawRow } from '../model/raw.ts';

const SPREAD: readonly Role[] = ['partNumber', 'description'];

/**
 * Joins columns over which part numbers or names are spread to show how deep a row stands: one heading, columns without one behind
 * it, and never two texts in a row.
 */
export function spreadColumns(columns: readonly Column[], rows: readonly RawRow[]): readonly Column[] {
  return columns.map((column) => {
    const through = SPREAD.includes(column.role) ? lastOf(column, columns, rows) : column.index;
    return through > column.index ? { ...column, through } : column;
  });
}

function lastOf({ index }: Column, columns: readonly Column[], rows: readonly RawRow[]): number {
  const next = columns.findIndex(
    (column, at) => at > index && !(column.role === 'other' && column.heading.trim() === ''),
  );
  const last = (next < 0 ? columns.length : next) - 1;
  if (last <= index) return index;
  const places = rows.map(({ cells }) =>
    cells.slice(index, last + 1).flatMap((cell, at) => (cell.trim() === '' ? [] : [at])),
  );
  const isOneEach = places.every((filled) => filled.length === 1);
  const used = new Set(places.flat());
  return isOneEach && used.size > 1 ? index + Math.max(...used) : index;
}
