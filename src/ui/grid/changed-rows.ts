import type { GridRow } from '../../app/state.ts';

/** Rows that are others than before; null where it is another list. */
export function changedRows(before: readonly GridRow[], after: readonly GridRow[]): readonly GridRow[] | null {
  if (before.length !== after.length) return null;
  const changed: GridRow[] = [];
  for (let at = 0; at < after.length; at++) {
    const row = after[at];
    if (row === before[at]) continue;
    if (row?.row !== before[at]?.row) return null;
    if (row) changed.push(row);
  }
  return changed;
}
