import type { Placing, TreeRow } from './tree-row.ts';

/**
 * Puts rows under the last row before them that stands one level higher. `depths` go with the rows; null: the row shows none. A row
 * that jumps by more than one level, or shows none, has lost its place.
 */
export function placeByDepth(rows: readonly TreeRow[], depths: readonly (number | null)[], because: string): Placing {
  const known = depths.filter((depth) => depth !== null);
  const top = known.reduce((least, depth) => Math.min(least, depth), Number.POSITIVE_INFINITY);
  const parents = new Map<number, readonly number[]>();
  const lost: number[] = [];
  let open: (number | undefined)[] = [];
  rows.forEach(({ row, quantity }, at) => {
    const depth = depths[at] ?? null;
    if (depth === null) {
      // A title without a level stands outside the tree.
      if (quantity) lost.push(row);
      return;
    }
    const parent = open[depth - top - 1];
    if (parent !== undefined) parents.set(row, [parent]);
    else if (depth > top) lost.push(row);
    open = open.slice(0, depth - top);
    open[depth - top] = row;
  });
  return { parents, lost, because, explained: parents.size, broken: lost.length };
}
