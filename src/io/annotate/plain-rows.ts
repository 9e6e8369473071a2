import type { RowPlace } from './sheet-outline.ts';

/**
 * The rows of a stretch without a look at their cells, where that is safe: every row says its number, and nothing but tags and text is
 * there. Null where it is not, or where one of them must be looked into.
 */
export function plainRows(
  stretch: string,
  prefix: string,
  mustLookInto: (row: number) => boolean,
): readonly RowPlace[] | null {
  if (stretch.includes('<!') || stretch.includes('<?')) return null;
  const [open, close] = [`<${prefix}row `, `</${prefix}row>`];
  const rows: RowPlace[] = [];
  for (let start = stretch.indexOf(open); start >= 0; start = stretch.indexOf(open, rows.at(-1)?.end)) {
    const tagEnd = stretch.indexOf('>', start) + 1;
    const tag = stretch.slice(start, tagEnd);
    const number = Number(/\sr="(\d+)"/.exec(tag)?.[1]);
    if (!isWhole(tag) || !(number > 0) || mustLookInto(number)) return null;
    const isEmpty = tag.endsWith('/>');
    const inside = isEmpty ? start : stretch.indexOf(close, tagEnd);
    if (inside < 0) return null;
    rows.push({ number, start, tagEnd, isEmpty, inside, end: isEmpty ? tagEnd : inside + close.length, cells: [] });
  }
  return rows;
}

/** Attributes stand in double quotes alone, and none is cut: the tag ends where it seems to. */
function isWhole(tag: string): boolean {
  let quotes = 0;
  for (let at = tag.indexOf('"'); at >= 0; at = tag.indexOf('"', at + 1)) quotes++;
  return quotes % 2 === 0 && !tag.includes("'");
}
