import type { Bounds } from '../reference/thickness/row-types.ts';

/** Does a value lie in a band, its ends counted as the table counts them? Never for what is no number. */
export function isInBand(value: number, low: number, high: number, bounds: Bounds): boolean {
  const aboveLow = bounds.startsWith('[') ? value >= low : value > low;
  const belowHigh = bounds.endsWith(']') ? value <= high : value < high;
  return aboveLow && belowHigh;
}

/** The tolerance in the column of a width; a blank column falls back to the widest printed one and says so. */
export function toleranceAtWidth(
  columns: { readonly narrow: number; readonly medium: number | null; readonly wide: number | null },
  width: 'narrow' | 'medium' | 'wide',
): { plusMinus: number; assumed: string | null } {
  const printed = columns[width];
  if (printed !== null) return { plusMinus: printed, assumed: null };
  return { plusMinus: columns.medium ?? columns.narrow, assumed: 'the widest column of the table' };
}
