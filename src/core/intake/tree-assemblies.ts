import type { Column } from '../model/list.ts';
import { headingText } from './heading-text.ts';
import { parseQuantity } from './quantity.ts';
import { type AssemblyColumn, nameKey, type Placing, type TreeRow } from './tree-row.ts';

/** Places rows by quantity columns of single assemblies: "Qty Door", "Qty Frame", or headings that are names of rows. */
export function placeByAssemblies(rows: readonly TreeRow[], columns: readonly Column[]): readonly Placing[] {
  const perAssembly = assemblyColumns(rows, columns);
  if (perAssembly.length < 2) return [];
  const parents = new Map<number, readonly number[]>();
  for (const { row, cells } of rows) {
    const above = perAssembly.flatMap(({ index, row: assembly }) =>
      assembly !== null && assembly !== row && parseQuantity(cells[index] ?? '').how !== 'blank' ? [assembly] : [],
    );
    if (above.length > 0) parents.set(row, above);
  }
  return [{ parents, lost: [], because: '', explained: rows.length, broken: 0, perAssembly }];
}

function assemblyColumns(rows: readonly TreeRow[], columns: readonly Column[]): readonly AssemblyColumn[] {
  const counting = columns.filter(({ role }) => role === 'quantity' || role === 'other');
  const named = rowsCalled(new Set(counting.map(({ heading }) => nameKey(assemblyName(heading) ?? heading))), rows);
  const found = counting.flatMap(({ index, heading }) => {
    const name = assemblyName(heading);
    const row = named.get(nameKey(name ?? heading)) ?? null;
    if (row === null && name === null) return [];
    const texts = rows.map(({ cells }) => parseQuantity(cells[index] ?? ''));
    const filled = texts.filter(({ how }) => how !== 'blank');
    if (filled.length === 0 || filled.filter(({ value }) => value !== null).length * 2 <= filled.length) return [];
    return [{ index, row }];
  });
  const onList = found.filter(({ row }) => row !== null);
  return onList.length === found.length || isSummed(rows, columns, found) ? found : onList;
}

/** "Qty Rev B" looks like "Qty Door": columns of assemblies that are not on the list count only where a total adds them up. */
function isSummed(rows: readonly TreeRow[], columns: readonly Column[], parts: readonly AssemblyColumn[]): boolean {
  const isPart = new Set(parts.map(({ index }) => index));
  const totals = columns.filter(({ index, heading }) => !isPart.has(index) && TOTAL.test(headingText(heading).words));
  return totals.some(({ index }) => {
    const stated = rows.filter(({ cells }) => parseQuantity(cells[index] ?? '').value !== null);
    return (
      stated.length > 0 && stated.every(({ cells }) => parseQuantity(cells[index] ?? '').value === sumOf(cells, parts))
    );
  });
}

const TOTAL = /\b(?:total|sum|quantity)\b/;

function sumOf(cells: readonly string[], parts: readonly AssemblyColumn[]): number {
  return parts.reduce((sum, { index }) => sum + (parseQuantity(cells[index] ?? '').value ?? 0), 0);
}

/** Rows with one of those names as part number or description; a name that two rows have names none. */
function rowsCalled(names: ReadonlySet<string>, rows: readonly TreeRow[]): ReadonlyMap<string, number | null> {
  const named = new Map<string, number | null>();
  for (const { row, partNumber, description } of rows) {
    const part = nameKey(partNumber);
    const words = nameKey(description);
    if (part && names.has(part)) named.set(part, named.has(part) ? null : row);
    if (words && words !== part && names.has(words)) named.set(words, named.has(words) ? null : row);
  }
  return named;
}

/** Words beside "quantity" that name no assembly. */
const NO_NAME =
  /\b(?:total|sum|required|order|ordered|buy|build|bought|extended|ext|each|per|stock|available|spare|pack|unit|of|part|item|bom|purchase|fastener|component|used|minimum|needed|set|assembly)\b/;

/** The assembly that a heading counts for: "Qty Door", "Door qty", "Qty in DOOR-1"; null for any other heading. */
function assemblyName(heading: string): string | null {
  const { words } = headingText(heading);
  if (!/^quantity .|. quantity$/.test(words) || NO_NAME.test(words)) return null;
  const name = heading
    .replace(/^\s*(?:quantity|qty)\b\.?\s*(?:(?:in|for|on)\b)?|\s*\b(?:quantity|qty)\b\.?\s*$/gi, '')
    .replace(/^[\s:()[\]-]+|[\s:()[\]-]+$/g, '');
  return name || null;
}
