import type { RawRow } from '../model/raw.ts';

/** Headings put together from the row of headings, a row of group names above it and a row of units below it. */
export interface Headings {
  readonly headings: readonly string[];
  /** The row of units, where there is one: it is no row of the list. */
  readonly unitsRow: RawRow | null;
}

/**
 * Headings as one text a column. A row of units below ("mm", "pcs") is added in brackets; a group name above ("Fastener" over
 * "P/N, Material") is put before headings that occur more than once, because only together they say what they mean.
 */
export function joinHeadings(header: RawRow, above: RawRow | null, below: RawRow | null): Headings {
  const unitsRow = below && below.number === header.number + 1 && isUnitsRow(below) ? below : null;
  const texts = trimEnd(header.cells).map((text) => text.replace(/\s+/g, ' ').trim());
  const groups = above && above.number === header.number - 1 ? groupNames(above, texts.length) : [];
  const seen = countTexts(texts);
  const headings = texts.map((text, index) => {
    const isTwice = text !== '' && (seen.get(text.toLowerCase()) ?? 0) > 1;
    const group = isTwice && groups[index] ? `${groups[index]} ` : '';
    const unit = unitsRow?.cells[index]?.replace(/[()[\]]/g, '').trim();
    return `${group}${text}${unit && text !== '' ? ` (${unit})` : ''}`;
  });
  return { headings, unitsRow };
}

function countTexts(texts: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text.toLowerCase(), (counts.get(text.toLowerCase()) ?? 0) + 1);
  return counts;
}

/**
 * Gives the cells under a block merged downwards the block's text, in columns of words. Numbers stay as they are: a quantity
 * merged over four rows is one quantity.
 */
export function fillMergedDown(rows: readonly RawRow[]): readonly RawRow[] {
  const filled: RawRow[] = [];
  for (const row of rows) {
    const before = filled.at(-1);
    const isNext = before !== undefined && before.number === row.number - 1;
    filled.push(
      isNext && row.flags ? { ...row, cells: row.cells.map((cell, index) => fill(cell, index, row, before)) } : row,
    );
  }
  return filled;
}

function fill(cell: string, index: number, row: RawRow, before: RawRow): string {
  if (row.flags?.[index] !== 'merged' || cell !== '') return cell;
  const text = before.cells[index] ?? '';
  return /\p{L}/u.test(text) ? text : cell;
}

const UNIT_WORDS =
  /^[([]?(?:mm|in|inch(?:es)?|"|ga|gauge|pcs?|ea|each|qty|n|kn|lbf?|n·?m|hrb|hrc|µm|um|-|usd|eur|\$|€)\.?[)\]]?$/i;

function isUnitsRow({ cells }: RawRow): boolean {
  const filled = cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  return (
    filled.length > 0 && filled.every((cell) => UNIT_WORDS.test(cell)) && filled.some((cell) => /mm|in|"/i.test(cell))
  );
}

/** Group names reach to the right over merged and blank cells. A row that reads as headings or a long title is none. */
function groupNames({ cells }: RawRow, width: number): readonly string[] {
  const filled = cells.filter((cell) => cell.trim() !== '');
  if (filled.length < 2 || filled.some((cell) => cell.length > 30)) return [];
  let name = '';
  return Array.from({ length: width }, (_, index) => {
    name = cells[index]?.trim() || name;
    return name;
  });
}

function trimEnd(cells: readonly string[]): readonly string[] {
  const last = cells.findLastIndex((cell) => cell.trim() !== '');
  return cells.slice(0, last + 1);
}
