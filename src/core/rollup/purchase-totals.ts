import type { PurchaseLine } from './purchase.ts';

/** Price of everything ordered in one currency. */
export interface Total {
  readonly currency: string;
  readonly price: number;
}

/** How long until everything ordered is there. */
export interface Lead {
  /** Longest lead time of a part to be ordered; null where none is known. */
  readonly longestDays: number | null;
  /** Parts that take that long. */
  readonly partNumbers: readonly string[];
  /** Parts to be ordered whose lead time the catalogue does not give: they may take longer. */
  readonly unknown: readonly string[];
}

/** Totals by currency in alphabetical order; added in hundredths, so that they come out as the lines do. */
export function totalsOf(lines: readonly PurchaseLine[]): readonly Total[] {
  const hundredths = new Map<string, number>();
  for (const { currency, price, order } of lines) {
    if (currency === null || price === null || order === 0) continue;
    hundredths.set(currency, (hundredths.get(currency) ?? 0) + Math.round(price * 100));
  }
  return [...hundredths]
    .map(([currency, sum]) => ({ currency, price: sum / 100 }))
    .sort((a, b) => (a.currency < b.currency ? -1 : 1));
}

/** Parts that are ordered and stand in no total. */
export function unpricedOf(lines: readonly PurchaseLine[]): readonly string[] {
  return lines.filter(({ order, price }) => order > 0 && price === null).map(({ partNumber }) => partNumber);
}

/** The longest lead time among the parts that are ordered. */
export function longestLead(lines: readonly PurchaseLine[]): Lead {
  const ordered = lines.filter(({ order }) => order > 0);
  const known = ordered.flatMap(({ leadDays }) => leadDays ?? []);
  const longestDays = known.length > 0 ? Math.max(...known) : null;
  const named = (days: number | null) =>
    ordered.filter(({ leadDays }) => leadDays === days).map(({ partNumber }) => partNumber);
  return { longestDays, partNumbers: longestDays === null ? [] : named(longestDays), unknown: named(null) };
}
