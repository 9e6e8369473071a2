import { showColumn } from '../xlsx/address.ts';
import type { OwnCell } from './own-parts.ts';
import { LAST_COLUMN, parseBlocks } from './ranges.ts';
import type { CellPlace, RowPlace, SheetOutline, TagPlace } from './sheet-outline.ts';
import { opened, prefixOf, type Splice, splice, withAttribute, withoutAttributes, withPrefix } from './splice.ts';

/** What goes into a sheet. Cells are XML without prefixes; those of ours fill the columns from `start` on. */
export interface SheetPatch {
  readonly start: number;
  readonly widths: readonly number[];
  /** The columns are there already, as wide as the user has made them. */
  readonly keepsWidths: boolean;
  /** Rows to write into that are there. */
  readonly rows: readonly RowPlace[];
  readonly cells: ReadonlyMap<number, readonly OwnCell[]>;
}

/** The sheet's text with cells put in; every other character stays, but for dimension, column widths and the spans of the rows. */
export function patchSheet(xml: string, sheet: SheetOutline, patch: SheetPatch): string {
  const prefix = prefixOf(xml.slice(sheet.sheetData, sheet.sheetData + 100));
  return splice(xml, [
    ...patchDimension(xml, sheet.dimension, patch),
    ...(patch.keepsWidths ? [] : patchColumns(xml, sheet, patch, prefix)),
    ...patch.rows.flatMap((row) => patchRow(xml, row, patch, prefix)),
    ...addRows(sheet, patch, prefix),
  ]);
}

/** Rows that the sheet does not have yet, behind the last one before them. */
function addRows(sheet: SheetOutline, { rows, cells }: SheetPatch, prefix: string): readonly Splice[] {
  const known = new Set(rows.map(({ number }) => number));
  const added = new Map<number, string>();
  for (const [number, given] of [...cells].sort(([a], [b]) => a - b)) {
    if (known.has(number)) continue;
    const at = sheet.rows.findLast((row) => row.number < number)?.end ?? 0;
    const row = `<row r="${number}">${given.map(({ xml }) => xml).join('')}</row>`;
    added.set(at, (added.get(at) ?? '') + withPrefix(row, prefix));
  }
  return [...added].map(([at, text]) => ({ at, end: at, text }));
}

/** Cells go in where their column says; one that stands there already makes room. */
function patchRow(xml: string, row: RowPlace, { cells, start, widths }: SheetPatch, prefix: string): readonly Splice[] {
  const given = [...(cells.get(row.number) ?? [])].sort((a, b) => a.column - b.column);
  const isOurs = ({ column, isBlank }: CellPlace) => !isBlank && column >= start && column < start + widths.length;
  const stale = row.cells.filter((cell) => isOurs(cell) && !given.some(({ column }) => column === cell.column));
  if (given.length === 0 && stale.length === 0) return [];
  const tag = withoutAttributes(xml.slice(row.start, row.tagEnd), ['spans']);
  if (row.isEmpty) {
    const { start: open, end } = opened(tag);
    const inside = withPrefix(given.map((cell) => cell.xml).join(''), prefix);
    return [{ at: row.start, end: row.tagEnd, text: open + inside + end }];
  }
  return [
    { at: row.start, end: row.tagEnd, text: tag },
    ...stale.map((cell) => ({ at: cell.start, end: cell.end, text: '' })),
    ...putCells(row, given, prefix),
  ];
}

function putCells(row: RowPlace, given: readonly OwnCell[], prefix: string): readonly Splice[] {
  const inserted = new Map<number, string>();
  const replaced: Splice[] = [];
  for (const { column, xml } of given) {
    const same = row.cells.find((cell) => cell.column === column);
    const next = row.cells.find((cell) => cell.column > column);
    const at = same?.start ?? next?.start ?? row.cells.at(-1)?.end ?? row.tagEnd;
    const text = withPrefix(xml, prefix);
    if (same) replaced.push({ at, end: same.end, text });
    else inserted.set(at, (inserted.get(at) ?? '') + text);
  }
  return [...[...inserted].map(([at, text]) => ({ at, end: at, text })), ...replaced];
}

function patchDimension(
  xml: string,
  tag: TagPlace | null,
  { start, widths, rows, cells }: SheetPatch,
): readonly Splice[] {
  const text = tag ? xml.slice(tag.start, tag.end) : '';
  const [block] = parseBlocks(/\sref\s*=\s*["']([^"']*)/.exec(text)?.[1]);
  if (!tag || !block) return [];
  const numbers = [...rows.map(({ number }) => number), ...cells.keys()];
  const top = Math.min(block.top, ...numbers);
  const bottom = Math.max(block.bottom, ...numbers);
  const right = Math.max(block.right, start + widths.length - 1);
  const reference = `${showColumn(block.left)}${top}:${showColumn(right)}${bottom}`;
  return [{ at: tag.start, end: tag.end, text: withAttribute(text, 'ref', reference) }];
}

/** Our columns get their widths; a `col` tag that reaches over them is cut to what lies on either side. */
function patchColumns(xml: string, sheet: SheetOutline, patch: SheetPatch, prefix: string): readonly Splice[] {
  const first = patch.start + 1;
  const last = patch.start + patch.widths.length;
  const own = patch.widths.map((width, index) => {
    const at = first + index;
    return withPrefix(`<col min="${at}" max="${at}" width="${width}" customWidth="1"/>`, prefix);
  });
  const { columns } = sheet;
  if (!columns) {
    const all = `<${prefix}cols>${own.join('')}</${prefix}cols>`;
    return [{ at: sheet.sheetData, end: sheet.sheetData, text: all }];
  }
  const spans = columns.tags.map(({ start, end }) => {
    const tag = xml.slice(start, end);
    return { start, end, tag, min: numberIn(tag, 'min') ?? 1, max: numberIn(tag, 'max') ?? LAST_COLUMN + 1 };
  });
  const over = spans.filter(({ min, max }) => min <= last && max >= first);
  const piece = (tag: string, min: number, max: number) =>
    min > max ? '' : withAttribute(withAttribute(tag, 'min', String(min)), 'max', String(max));
  const before = over.map(({ tag, min, max }) => piece(tag, min, Math.min(max, first - 1)));
  const after = over.map(({ tag, min, max }) => piece(tag, Math.max(min, last + 1), max));
  const at = over[0]?.start ?? spans.find(({ min }) => min > last)?.start ?? columns.end;
  const text = [...before, ...own, ...after].join('');
  const [replaced, ...others] = over;
  return [{ at, end: replaced?.end ?? at, text }, ...others.map(({ start, end }) => ({ at: start, end, text: '' }))];
}

function numberIn(tag: string, attribute: string): number | undefined {
  const found = new RegExp(`\\s${attribute}\\s*=\\s*["'](\\d+)`).exec(tag)?.[1];
  return found === undefined ? undefined : Number(found);
}
