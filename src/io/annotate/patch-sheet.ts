import { showColumn } from '../xlsx/address.ts';
import type { OwnCell } from './own-cells.ts';
import { patchColumns } from './patch-columns.ts';
import { plainRows } from './plain-rows.ts';
import { parseBlocks } from './ranges.ts';
import { type RowPlace, SheetWalk, type TagPlace } from './sheet-outline.ts';
import { opened, prefixOf, type Splice, splice, withAttribute, withPrefix } from './splice.ts';

/** Characters handed on at once where that is free to choose. */
const PIECE = 1 << 16;

/** What goes into a sheet. Cells are XML without prefixes; those of ours fill the columns from `start` on. */
export interface SheetPatch {
  readonly start: number;
  /** Null: the columns are there already, as wide as the user has made them. */
  readonly widths: readonly number[] | null;
  /** Our columns end before this one. */
  readonly end: number;
  /** First and last row that is written into. */
  readonly top: number;
  readonly bottom: number;
  /** Columns whose cells go where none of ours takes their place: ours, and those of an earlier export. */
  readonly isStale: (column: number) => boolean;
  /** Our cells of a row; nothing for a row that stays as it is. */
  readonly cellsOf: (row: number) => readonly OwnCell[] | undefined;
  /** On rows of the list nothing stands in our columns or behind them, and every row says its number. */
  readonly isPlain: boolean;
  readonly isEdited: (row: number) => boolean;
  /** Cells of a row that the user has edited. */
  readonly editsOf: (stretch: string, row: RowPlace) => readonly OwnCell[];
  /** Rows that the sheet does not have yet, each behind one that it has. */
  readonly added: ReadonlyMap<number, readonly number[]>;
}

/** The sheet's text with cells put in; every other character stays, but for dimension, column widths and the spans of the rows. */
export function* patchSheet(stretches: Iterable<string>, patch: SheetPatch): Generator<string> {
  const walk = new SheetWalk();
  let prefix = '';
  for (const stretch of stretches) {
    const plain = patch.isPlain && walk.hasBegun ? plainRows(stretch, prefix, patch.isEdited) : null;
    if (plain) {
      yield* patchPlainRows(stretch, plain, patch, prefix);
      continue;
    }
    const outline = walk.outline(stretch);
    const { sheetData } = outline;
    if (sheetData >= 0) prefix = prefixOf(stretch.slice(sheetData, sheetData + 100));
    yield splice(stretch, [
      ...patchDimension(stretch, outline.dimension, patch),
      ...(sheetData < 0 || !patch.widths ? [] : patchColumns(stretch, outline, patch.start, patch.widths, prefix)),
      ...patchRows(stretch, outline.rows, patch, prefix),
    ]);
  }
}

/** Our cells go behind those of rows that have none to make room; in pieces, so that what takes them need not wait for the whole. */
function* patchPlainRows(
  stretch: string,
  rows: readonly RowPlace[],
  patch: SheetPatch,
  prefix: string,
): Generator<string> {
  let piece = '';
  let from = 0;
  for (const row of rows) {
    const own = patch.cellsOf(row.number) ?? [];
    if (own.length > 0) {
      piece += stretch.slice(from, row.start) + filledRow(stretch, row, withPrefix(xmlOf(own), prefix));
      from = row.isEmpty ? row.end : row.inside;
    }
    const added = addedRows(row.number, patch, prefix);
    if (added !== '') {
      piece += stretch.slice(from, row.end) + added;
      from = row.end;
    }
    if (piece.length < PIECE) continue;
    yield piece;
    piece = '';
  }
  yield piece + stretch.slice(from);
}

/** A row up to its end tag, or with one where it was empty, with cells behind its own. */
function filledRow(stretch: string, { start, tagEnd, inside, isEmpty }: RowPlace, xml: string): string {
  const tag = stretch.slice(start, tagEnd).replace(SPANS, '');
  if (!isEmpty) return tag + stretch.slice(tagEnd, inside) + xml;
  const { start: open, end } = opened(tag);
  return open + xml + end;
}

function patchRows(stretch: string, rows: readonly RowPlace[], patch: SheetPatch, prefix: string): readonly Splice[] {
  const splices: Splice[] = [];
  for (const row of rows) {
    const own = patch.cellsOf(row.number);
    if (own) splices.push(...patchRow(stretch, row, [...patch.editsOf(stretch, row), ...own], patch, prefix));
    const text = addedRows(row.number, patch, prefix);
    if (text !== '') splices.push({ at: row.end, end: row.end, text });
  }
  return splices;
}

/** New rows behind one that the sheet has. */
function addedRows(before: number, { added, cellsOf }: SheetPatch, prefix: string): string {
  const rows = added.get(before) ?? [];
  return withPrefix(rows.map((number) => `<row r="${number}">${xmlOf(cellsOf(number) ?? [])}</row>`).join(''), prefix);
}

const SPANS = /\s+spans\s*=\s*(?:"[^"]*"|'[^']*')/;

/** Cells go in where their column says; one that stands there already makes room. */
function patchRow(
  stretch: string,
  row: RowPlace,
  given: readonly OwnCell[],
  { isStale }: SheetPatch,
  prefix: string,
): readonly Splice[] {
  const stale = row.cells.filter(({ column, isBlank }) => !isBlank && isStale(column));
  const gone = stale.filter((cell) => !given.some(({ column }) => column === cell.column));
  if (given.length === 0 && gone.length === 0) return [];
  if (row.isEmpty) {
    return [{ at: row.start, end: row.tagEnd, text: filledRow(stretch, row, withPrefix(xmlOf(given), prefix)) }];
  }
  return [
    { at: row.start, end: row.tagEnd, text: stretch.slice(row.start, row.tagEnd).replace(SPANS, '') },
    ...gone.map((cell) => ({ at: cell.start, end: cell.end, text: '' })),
    ...putCells(row, given, prefix),
  ];
}

function putCells({ cells, inside }: RowPlace, given: readonly OwnCell[], prefix: string): readonly Splice[] {
  if (cells.every(({ column }) => column < (given[0]?.column ?? 0))) {
    return [{ at: inside, end: inside, text: withPrefix(xmlOf(given), prefix) }];
  }
  const inserted = new Map<number, string>();
  const replaced: Splice[] = [];
  for (const { column, xml } of given.toSorted((a, b) => a.column - b.column)) {
    const same = cells.find((cell) => cell.column === column);
    const next = cells.find((cell) => cell.column > column);
    const at = same?.start ?? next?.start ?? inside;
    const text = withPrefix(xml, prefix);
    if (same) replaced.push({ at, end: same.end, text });
    else inserted.set(at, (inserted.get(at) ?? '') + text);
  }
  return [...[...inserted].map(([at, text]) => ({ at, end: at, text })), ...replaced];
}

function patchDimension(stretch: string, tag: TagPlace | null, patch: SheetPatch): readonly Splice[] {
  const text = tag ? stretch.slice(tag.start, tag.end) : '';
  const [block] = parseBlocks(/\sref\s*=\s*["']([^"']*)/.exec(text)?.[1]);
  if (!tag || !block) return [];
  const top = Math.min(block.top, patch.top);
  const bottom = Math.max(block.bottom, patch.bottom);
  const right = Math.max(block.right, patch.end - 1);
  const reference = `${showColumn(block.left)}${top}:${showColumn(right)}${bottom}`;
  return [{ at: tag.start, end: tag.end, text: withAttribute(text, 'ref', reference) }];
}

function xmlOf(cells: readonly OwnCell[]): string {
  let text = '';
  for (const { xml } of cells) text += xml;
  return text;
}
