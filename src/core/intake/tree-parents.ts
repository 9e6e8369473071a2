import type { Column } from '../model/list.ts';
import { findRole } from './headings.ts';
import { indexParts } from './tree-index.ts';
import { addTo, nameKey, type Placing, type TreeRow } from './tree-row.ts';

/** Places rows by a column that names each row's parent: its part number, or its position on the list. */
export function placeByParents(rows: readonly TreeRow[], columns: readonly Column[]): readonly Placing[] {
  const keys: Keys[] = [{ own: ({ partNumber }) => nameKey(partNumber), named: nameKey }];
  for (const { index } of columns.filter(({ role }) => role === 'index'))
    keys.push({ own: ({ cells }) => indexKey(cells[index] ?? ''), named: indexKey });
  return columns.filter(isParentColumn).flatMap(({ index }) => keys.map((key) => placeBy(rows, index, key)));
}

/** How rows are called, and how the parent column calls them. */
interface Keys {
  readonly own: (row: TreeRow) => string;
  readonly named: (text: string) => string;
}

function indexKey(text: string): string {
  return indexParts(text)?.join('.') ?? '';
}

/** "Assembly" may name where a row goes; "Panel" names the sheet that a fastener is pressed into, which is no count. */
function isParentColumn({ role, heading }: Column): boolean {
  if (role === 'parent') return true;
  return role === 'panel' && /\bassembly\b/.test(findRole(heading)?.words ?? '');
}

function placeBy(rows: readonly TreeRow[], column: number, { own, named }: Keys): Placing {
  const holders = new Map<string, TreeRow[]>();
  const pairs = new Map<string, number>();
  const parentOf = (row: TreeRow) => named(row.cells[column] ?? '');
  for (const row of rows) {
    if (own(row)) addTo(holders, own(row), row);
    const pair = `${parentOf(row)}\n${nameKey(row.partNumber)}`;
    pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
  }
  const parents = new Map<number, readonly number[]>();
  const lost: number[] = [];
  const [found, missing] = [new Set<string>(), new Set<string>()];
  for (const row of rows) {
    const key = parentOf(row);
    if (key === '' || key === '0' || key === own(row)) continue;
    const chosen = choose(holders.get(key) ?? [], row, pairs.get(`${key}\n${nameKey(row.partNumber)}`) ?? 1);
    (holders.has(key) ? found : missing).add(key);
    if (chosen.length > 0) parents.set(row.row, chosen);
    else lost.push(row.row);
  }
  const because = 'name an assembly that is not on the list, or that stands on it more than once';
  return { parents, lost, because, explained: found.size, broken: missing.size };
}

/**
 * An assembly that is used in several places: a row that is written once belongs to each of them, a row that is written as often as
 * its assembly belongs to the one before it. Anything else cannot be told.
 */
function choose(holders: readonly TreeRow[], { row }: TreeRow, times: number): readonly number[] {
  if (holders.length <= 1 || times === 1) return holders.map((holder) => holder.row);
  const before = holders.filter((holder) => holder.row < row).at(-1);
  return times === holders.length && before ? [before.row] : [];
}
