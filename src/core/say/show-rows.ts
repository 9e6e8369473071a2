const MOST_NAMED = 10;

/** Row numbers in a sentence: "Row 4", "Rows 4 and 7", "Rows 4, 7, 9 (and 80 more)". At most ten are named. */
export function showRows(rows: readonly number[]): string {
  if (rows.length === 1) return `Row ${rows[0]}`;
  if (rows.length > MOST_NAMED)
    return `Rows ${rows.slice(0, MOST_NAMED).join(', ')} (and ${rows.length - MOST_NAMED} more)`;
  return `Rows ${rows.slice(0, -1).join(', ')} and ${rows.at(-1)}`;
}
