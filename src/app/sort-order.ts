import type { PurchaseLine } from '../core/rollup/purchase.ts';

/** What the order can be sorted by. */
export type SortKey = 'part' | 'supplier' | 'price' | 'lead';

/** How the order is sorted; null: as the parts come in the list. */
export type Sorting = { readonly by: SortKey; readonly isDescending: boolean } | null;

/** The lines sorted. What a line does not say comes last whichever way; prices are compared within one currency only. */
export function sortOrder(lines: readonly PurchaseLine[], sorting: Sorting): readonly PurchaseLine[] {
  if (!sorting) return lines;
  const sign = sorting.isDescending ? -1 : 1;
  const value = VALUES[sorting.by];
  return [...lines].sort((a, b) => groupsApart(a, b, sorting.by) || compare(value(a), value(b), sign));
}

/** The sorting after a click on a heading: upwards, downwards, as in the list. */
export function nextSorting(before: Sorting, by: SortKey): Sorting {
  if (before?.by !== by) return { by, isDescending: false };
  return before.isDescending ? null : { by, isDescending: true };
}

const VALUES: Readonly<Record<SortKey, (line: PurchaseLine) => string | number | null>> = {
  part: ({ partNumber }) => partNumber,
  supplier: ({ supplier }) => supplier?.trim() || null,
  price: ({ price }) => price,
  lead: ({ leadDays }) => leadDays,
};

function groupsApart(a: PurchaseLine, b: PurchaseLine, by: SortKey): number {
  return by === 'price' ? compare(a.currency, b.currency, 1) : 0;
}

function compare(a: string | number | null, b: string | number | null, sign: number): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  if (typeof a === 'number' && typeof b === 'number') return sign * (a - b);
  return sign * String(a).localeCompare(String(b), 'en', { numeric: true });
}
