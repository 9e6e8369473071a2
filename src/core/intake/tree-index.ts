import type { Column } from '../model/list.ts';
import { addTo, type Placing, type TreeRow } from './tree-row.ts';

/** Places rows by a dotted index: `1.2.1` stands under `1.2`. The shortest numbers on the list are its top. */
export function placeByIndex(rows: readonly TreeRow[], columns: readonly Column[]): readonly Placing[] {
  return columns
    .filter(({ role, heading }) => role === 'index' || role === 'level' || (role === 'other' && heading.trim() === ''))
    .flatMap(({ index }) => placeByColumn(rows, index) ?? []);
}

/** A position as the list writes it, with its parts made comparable (`1.0` is `1`, `01.2` is `1.2`); null for other texts. */
export function indexParts(text: string): readonly string[] | null {
  const plain = text.trim().replace(/[.)]$/, '');
  if (!/^(?:\p{L}|\d{1,4})(?:\.\d{1,4})*$/u.test(plain)) return null;
  const parts = plain.split('.').map((part) => (/^\d+$/.test(part) ? String(Number(part)) : part.toUpperCase()));
  const last = parts.findLastIndex((part) => part !== '0');
  return parts.slice(0, Math.max(1, last + 1));
}

function placeByColumn(rows: readonly TreeRow[], column: number): Placing | null {
  if (!rows.some(({ cells }) => cells[column]?.includes('.'))) return null;
  const paths = rows.map(({ cells }) => indexParts(cells[column] ?? ''));
  const known = paths.filter((path) => path !== null);
  if (known.length * 2 < rows.length || !known.some((path) => path.length > 1)) return null;
  const top = Math.min(...new Set(known.map((path) => path.length)));
  const holders = new Map<string, number[]>();
  rows.forEach(({ row }, at) => {
    const path = paths[at];
    if (path) addTo(holders, path.join('.'), row);
  });
  return place(rows, paths, top, holders);
}

function place(
  rows: readonly TreeRow[],
  paths: readonly (readonly string[] | null)[],
  top: number,
  holders: ReadonlyMap<string, readonly number[]>,
): Placing {
  const parents = new Map<number, readonly number[]>();
  const lost: number[] = [];
  rows.forEach(({ row }, at) => {
    const path = paths[at];
    if (!path || path.length <= top) return;
    const found = lastBefore(holders.get(path.slice(0, -1).join('.')) ?? [], row);
    if (found === null) lost.push(row);
    else parents.set(row, [found]);
  });
  const because = 'have a number whose upper level is not on the list';
  return { parents, lost, because, explained: parents.size, broken: lost.length };
}

/** A number that occurs twice (`1.10` that a spreadsheet made `1.1`) means the one before; a single one may stand anywhere. */
function lastBefore(holders: readonly number[], row: number): number | null {
  if (holders.length === 1) return holders[0] ?? null;
  return holders.filter((holder) => holder < row).at(-1) ?? null;
}
