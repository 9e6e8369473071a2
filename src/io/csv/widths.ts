import type { RawRow } from '../../core/model/raw.ts';

/** The row that most likely holds the headings, and how many cells it has. Only good enough to spot shifted rows. */
export interface Heading {
  readonly row: number;
  readonly width: number;
}

const HEADING_REACH = 60;

/** The first row among the top ones that is mostly words and as wide as rows usually are; failing that, just words. */
export function findHeading(rows: readonly RawRow[]): Heading | undefined {
  const top = rows.slice(0, HEADING_REACH);
  const usual = findUsualWidth(top);
  const worded = top.filter((row) => countWords(row) >= Math.max(2, usual * 0.6));
  const heading = worded.find((row) => filledWidth(row) >= usual) ?? worded[0];
  return heading === undefined ? undefined : { row: heading.number, width: heading.cells.length };
}

/** Number of cells up to the last one with text. */
function filledWidth(row: RawRow): number {
  return row.cells.findLastIndex((cell) => cell.trim() !== '') + 1;
}

function findUsualWidth(rows: readonly RawRow[]): number {
  const counts = new Map<number, number>();
  for (const row of rows) {
    const width = filledWidth(row);
    if (width > 1) counts.set(width, (counts.get(width) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0]?.[0] ?? 0;
}

function countWords(row: RawRow): number {
  return row.cells.filter((cell) => /^\s*(#\s*$|[^\p{L}\d]*\p{L})/u.test(cell)).length;
}
