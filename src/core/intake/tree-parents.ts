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
export function isParentColumn({ role, heading }: Column): boolean {
  if (role === 'parent') return true;
  return role === 'panel' && /\bassembly\b/.test(findRole(heading)?.words ?? '');
}

function placeBy(rows: readonly TreeRow[], column: number, { own, named }: Keys): Placing {
  const holders = new Map<string, TreeRow[]>();
  const pairs = new Map<string, number>();
  const parentOf = (row: TreeRow) => named(row.cells[column] ?? '');
  const pairOf = (row: TreeRow) => `${parentOf(row)}\n${nameKey(row.partNumber)}`;
  for (const row of rows) {
    if (own(row)) addTo(holders, own(row), row);
    pairs.set(pairOf(row), (pairs.get(pairOf(row)) ?? 0) + 1);
  }
  const isTop = (row: TreeRow) => ['', '0', own(row)].includes(parentOf(row));
  const below = rows.filter((row) => !isTop(row));
  const found = below.filter((row) => holders.has(parentOf(row)));
  const missing = below.filter((row) => !holders.has(parentOf(row)));
  const product = below.length === rows.length ? theProduct(missing.map(parentOf)) : null;
  const parents = new Map(
    found.map((row) => [row.row, choose(holders.get(parentOf(row)) ?? [], row, pairs.get(pairOf(row)) ?? 1)]),
  );
  return {
    parents: new Map([...parents].filter(([, above]) => above.length > 0)),
    lost: below
      .filter((row) => (parents.get(row.row) ?? []).length === 0 && parentOf(row) !== product)
      .map(({ row }) => row),
    because: 'name an assembly that is not on the list, or that stands on it more than once',
    explained: new Set(found.map(parentOf)).size,
    broken: new Set(missing.map(parentOf)).size,
  };
}

/** Where no row stands at the top, the one thing that several rows belong to and that is not listed is the product itself. */
function theProduct(missing: readonly string[]): string | null {
  const [name, ...more] = new Set(missing);
  return name !== undefined && more.length === 0 && missing.length > 1 ? name : null;
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
