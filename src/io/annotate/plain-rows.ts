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
    if (!PLAIN_TAG.test(tag) || !(number > 0) || mustLookInto(number)) return null;
    const isEmpty = tag.endsWith('/>');
    const inside = isEmpty ? start : stretch.indexOf(close, tagEnd);
    if (inside < 0) return null;
    rows.push({ number, start, tagEnd, isEmpty, inside, end: isEmpty ? tagEnd : inside + close.length, cells: [] });
  }
  return rows;
}

/** Attributes in double quotes alone, so that the tag ends where it seems to. */
const PLAIN_TAG = /^<[^\s"'=>]+(?:\s+[^\s"'=>]+="[^"'<>]*")*\s*\/?>$/;
