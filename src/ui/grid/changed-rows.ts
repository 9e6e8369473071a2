import type { GridRow } from '../../app/state.ts';

/** Rows that are others than before; null where it is another list. */
export function changedRows(before: readonly GridRow[], after: readonly GridRow[]): readonly GridRow[] | null {
  if (before.length !== after.length) return null;
  const changed = after.filter((row, at) => row !== before[at]);
  const isSameList = after.every(({ row }, at) => row === before[at]?.row);
  return isSameList ? changed : null;
}
