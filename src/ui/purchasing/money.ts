const CENTS = 2;
const MOST_DECIMALS = 6;

/** A price with two decimals, or with as many as a price each has. */
export function showPrice(price: number | null): string {
  if (price === null || !Number.isFinite(price)) return '–';
  const decimals = String(Number(price.toFixed(MOST_DECIMALS))).split('.')[1]?.length ?? 0;
  return price.toFixed(Math.max(CENTS, decimals));
}
