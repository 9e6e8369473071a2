import { columnTexts } from '../intake/column-texts.ts';
import { findHeader, type Header } from '../intake/find-header.ts';
import { refuseHuge } from '../intake/list-limits.ts';
import { findLongCell, LONGEST_READ } from '../intake/long-cells.ts';
import { fillMergedDown, joinHeadings } from '../intake/raw-rows.ts';
import type { Catalogue, Fastener } from '../model/fastener.ts';
import { type RawFile, type RawRow, type RawTable, Unreadable } from '../model/raw.ts';
import { type CatalogueColumn, findCatalogueColumns } from './catalogue-columns.ts';
import type { CatalogueField } from './catalogue-fields.ts';
import { findField } from './catalogue-headings.ts';
import { type CatalogueProblem, readRow } from './catalogue-row.ts';
import { findContradictions } from './check-fastener.ts';
import { partKey } from './part-key.ts';

/** Choices of the user; whatever is left out is found. */
export interface CatalogueOptions {
  /** Name to show; the file's name without its ending by default. */
  readonly name?: string;
  /** Fields by 0-based column, over what the headings say. */
  readonly mapping?: Readonly<Record<number, CatalogueField>>;
}

/**
 * Reads a supplier's table as a catalogue. Rows and cells that cannot be used are reported, the others load. Throws `Unreadable`
 * when no column of part numbers is found.
 */
export function importCatalogue(
  file: RawFile,
  { name = nameOf(file), mapping = {} }: CatalogueOptions = {},
): Catalogue {
  const { table, header } = findCatalogue(file, mapping);
  refuseHuge(file, table, header);
  const above = table.rows.filter(({ number }) => number < header.number).at(-1) ?? null;
  const below = table.rows.filter(({ number }) => number > header.number);
  const { headings, unitsRow } = joinHeadings(header, above, below[0] ?? null);
  const rows = fillMergedDown(unitsRow ? below.slice(1) : below);
  const texts = columnTexts(headings.length, rows);
  const columns = findCatalogueColumns(headings, texts, mapping);
  const parts = columns.find(({ field }) => field === 'partNumber');
  if (!parts) throw new Unreadable(noPartNumbers(file, table));
  const fastenerRows = rows.filter((row) => isFastenerRow(row, headings, parts.index));
  const long = fastenerRows.flatMap((row) => findLong(row, columns));
  const tooLong = new Set(long.map(({ row }) => row));
  const readable = fastenerRows.filter(({ number }) => !tooLong.has(number));
  const { fasteners, problems } = readRows(readable, columns, name);
  return { name, demo: isDemo(name, fasteners), fasteners, problems: [...long, ...problems] };
}

function nameOf(file: RawFile): string {
  return file.file.replace(/^.*[\\/]/, '').replace(/\.[a-z]{3,4}$/i, '');
}

function findCatalogue(
  file: RawFile,
  mapping: Readonly<Record<number, CatalogueField>>,
): { table: RawTable; header: RawRow } {
  const isMapped = Object.keys(mapping).length > 0;
  const found = file.tables.flatMap((table) => {
    const header = headerOf(table, isMapped);
    return header ? [{ table, header: header.row, score: header.score + Math.log10(table.rows.length) }] : [];
  });
  const [first, ...rest] = found;
  const [table] = file.tables;
  if (!first)
    throw new Unreadable(
      table ? noPartNumbers(file, table) : `${file.file} has no rows: check that it is the table you meant.`,
    );
  return rest.reduce((best, one) => (one.score > best.score ? one : best), first);
}

/** With a mapping by hand any row of texts may be the headings. */
function headerOf(table: RawTable, isMapped: boolean): Header | null {
  const header = findHeader(table, findField);
  const fallback = isMapped
    ? table.rows.find(({ cells }) => cells.filter((cell) => cell.trim() !== '').length >= 2)
    : undefined;
  return header ?? (fallback ? { row: fallback, score: 0 } : null);
}

function noPartNumbers(file: RawFile, { name }: RawTable): string {
  const place = name === '' ? file.file : `${file.file}, sheet “${name}”`;
  return `No column of part numbers was found in ${place}: give it a heading such as “partNumber”, or map the column by hand.`;
}

/** A title of a group of rows, a line of remarks or the headings once more are no fasteners. */
function isFastenerRow({ cells, flags }: RawRow, headings: readonly string[], partNumberAt: number): boolean {
  const filled = cells.filter((cell, index) => cell.trim() !== '' && flags?.[index] !== 'merged');
  const repeated = cells.filter((cell, index) => cell.trim() !== '' && cell.trim() === headings[index]).length;
  const isPartAlone = /^\S*\d\S*$/.test(cells[partNumberAt]?.trim() ?? '');
  return (filled.length > 1 || isPartAlone) && repeated * 2 < filled.length;
}

const TOO_LONG = `The cell has more than ${LONGEST_READ.toLocaleString('en-US')} characters; the row was left out.`;

function findLong({ number, cells }: RawRow, columns: readonly CatalogueColumn[]): readonly CatalogueProblem[] {
  const indexes = columns.map(({ index }) => index);
  const long = columns.find(({ index }) => index === findLongCell(cells, indexes));
  return long ? [{ row: number, column: long.heading, text: TOO_LONG }] : [];
}

function readRows(rows: readonly RawRow[], columns: readonly CatalogueColumn[], catalogue: string) {
  const fasteners: Fastener[] = [];
  const problems: CatalogueProblem[] = [];
  const seen = new Map<string, number>();
  const headingOf = (field: CatalogueField) => columns.find((column) => column.field === field)?.heading ?? field;
  for (const row of rows) {
    const { fastener, problems: unread } = readRow(row, columns, catalogue);
    const refusal = refuse(fastener, seen);
    if (refusal) {
      problems.push({ row: row.number, column: headingOf('partNumber'), text: refusal });
      continue;
    }
    seen.set(partKey(fastener.partNumber), row.number);
    const { sound, contradictions } = clearContradictions(fastener);
    problems.push(
      ...unread,
      ...contradictions.map(({ field, text }) => ({ row: row.number, column: headingOf(field), text })),
    );
    fasteners.push(sound);
  }
  return { fasteners, problems };
}

function refuse({ partNumber, origin }: Fastener, seen: ReadonlyMap<string, number>): string | null {
  if (!partNumber) return `Row ${origin.row} has no part number and was left out.`;
  const first = seen.get(partKey(partNumber));
  return first === undefined ? null : `“${partNumber}” stands in rows ${first} and ${origin.row}; row ${first} counts.`;
}

function clearContradictions(fastener: Fastener) {
  const contradictions = findContradictions(fastener);
  const cleared = contradictions.flatMap(({ field, alsoClear }) => [field, ...alsoClear]);
  const sound: Fastener = { ...fastener, ...Object.fromEntries(cleared.map((field) => [field, null])) };
  return { sound, contradictions };
}

/** Invented data says so in its name or in the note of every row. */
function isDemo(name: string, fasteners: readonly Fastener[]): boolean {
  return isInvented(name) || (fasteners.length > 0 && fasteners.every(({ note }) => isInvented(note ?? '')));
}

/** Whether a name or a note says that the data are invented. */
export function isInvented(text: string): boolean {
  return /(?<!\p{L})demo(?!\p{L})/iu.test(text);
}
