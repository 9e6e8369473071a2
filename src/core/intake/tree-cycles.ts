import { addTo } from './tree-row.ts';

/** Rows that stand above themselves, in ascending order. */
export function findCycles(parents: ReadonlyMap<number, readonly number[]>): readonly number[] {
  const children = new Map<number, number[]>();
  for (const [row, above] of parents) for (const parent of above) addTo(children, parent, row);
  const belowTop = peel(new Set(parents.keys()), (row) => parents.get(row) ?? [], children);
  return [...peel(belowTop, (row) => children.get(row) ?? [], parents)].sort((a, b) => a - b);
}

/** Takes away, again and again, what depends on nothing that is left. `next` leads from a row to those that depend on it. */
function peel(
  rows: ReadonlySet<number>,
  dependsOn: (row: number) => readonly number[],
  next: ReadonlyMap<number, readonly number[]>,
): Set<number> {
  const left = new Set(rows);
  const open = new Map([...left].map((row) => [row, dependsOn(row).filter((other) => left.has(other)).length]));
  const free = [...left].filter((row) => open.get(row) === 0);
  for (let row = free.pop(); row !== undefined; row = free.pop()) {
    left.delete(row);
    for (const other of next.get(row) ?? []) {
      if (!left.has(other)) continue;
      const count = (open.get(other) ?? 0) - 1;
      open.set(other, count);
      if (count === 0) free.push(other);
    }
  }
  return left;
}
