import type { QuantityReading } from '../model/line.ts';
import type { Column } from '../model/list.ts';
import { headingText } from './heading-text.ts';
import { parseQuantity } from './quantity.ts';
import type { Tree } from './tree.ts';
import type { AssemblyColumn, TreeRow } from './tree-row.ts';

/** Pieces in the whole product. */
export interface Extended {
  /** By row; null where a quantity on the way cannot be used. */
  readonly pieces: ReadonlyMap<number, number | null>;
  /** Rows whose own quantity can be used, but not one that it is multiplied with. */
  readonly spoiled: readonly number[];
}

/**
 * Multiplies each row's quantity through the tree, or with its own multiplier where the list has a column for that. A row at the top
 * has its quantity as listed, whatever that is; below it only whole numbers above zero are multiplied.
 */
export function extendQuantities(rows: readonly TreeRow[], tree: Tree, columns: readonly Column[]): Extended {
  const multiplier = columns.find(isMultiplier);
  const countOf = multiplier
    ? (row: TreeRow) => times(wholeOf(row.quantity), wholeOf(parseQuantity(row.cells[multiplier.index] ?? '')))
    : throughTree(rows, tree);
  const pieces = new Map<number, number | null>();
  const spoiled: number[] = [];
  for (const row of rows) {
    const counted = countOf(row);
    pieces.set(row.row, counted);
    if (counted === null && row.quantity && wholeOf(row.quantity) !== null) spoiled.push(row.row);
  }
  return { pieces, spoiled };
}

/** "Assembly multiplier", "No. of panels". "Panel qty" is none: it may as well be the quantity in one panel. */
function isMultiplier({ heading, role }: Column): boolean {
  if (role !== 'other') return false;
  return /\bmultiplier\b|^(?:no|quantity) of (?:(?:sub )?assembl(?:y|ies)|panels?|sets?)$/.test(
    headingText(heading).words,
  );
}

function throughTree(rows: readonly TreeRow[], tree: Tree): (row: TreeRow) => number | null {
  if (tree.parents.size === 0 && tree.perAssembly.length === 0) return ({ quantity }) => quantity?.value ?? null;
  const byRow = new Map(rows.map((row) => [row.row, row]));
  const known = new Map<number, number | null>();
  const countAt = (at: number): number | null => {
    const row = byRow.get(at);
    if (!row) return null;
    const before = known.get(at);
    const counted = before === undefined ? count(row) : before;
    known.set(at, counted);
    return counted;
  };
  const count = (row: TreeRow): number | null => {
    const columns = columnsOf(row, tree);
    if (columns.length > 0) return sum(columns.map((column) => inAssembly(row, column, countAt)));
    const own = wholeOf(row.quantity);
    const above = tree.parents.get(row.row);
    return above && own !== null ? times(own, sum(above.map(countAt))) : own;
  };
  return (row) => {
    const isTop = !tree.parents.has(row.row) && columnsOf(row, tree).length === 0;
    return isTop ? (row.quantity?.value ?? null) : countAt(row.row);
  };
}

/** The assembly columns in which a row is counted. */
function columnsOf({ row, cells }: TreeRow, { parents, perAssembly }: Tree): readonly AssemblyColumn[] {
  return perAssembly.filter(
    (column) =>
      (column.row === null || parents.get(row)?.includes(column.row)) &&
      parseQuantity(cells[column.index] ?? '').how !== 'blank',
  );
}

function inAssembly(
  { cells }: TreeRow,
  { index, row }: AssemblyColumn,
  countAt: (row: number) => number | null,
): number | null {
  const { value, how } = parseQuantity(cells[index] ?? '');
  if (how === 'zero') return 0;
  return times(how === 'whole' ? value : null, row === null ? 1 : countAt(row));
}

/** A title counts once; of a quantity only a whole number above zero. */
function wholeOf(quantity: QuantityReading | null): number | null {
  if (!quantity) return 1;
  return quantity.how === 'whole' ? quantity.value : null;
}

function times(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : finite(a * b);
}

function sum(counts: readonly (number | null)[]): number | null {
  return counts.reduce((total, count) => (total === null || count === null ? null : finite(total + count)), 0);
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
