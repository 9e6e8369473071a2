import { strToU8 } from 'fflate';
import type { PartIndex } from '../../core/catalogue/find-part.ts';
import { findOwnColumns } from '../../core/intake/own-columns.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { NO_WORK, type WorkRecord } from '../../core/model/change-record.ts';
import { type RawTable, Unreadable } from '../../core/model/raw.ts';
import type { Report } from '../../core/rollup/report.ts';
import { wordsUnder } from '../write/look.ts';
import { listRows, type OwnColumn, ownColumns } from '../write/own-columns.ts';
import { safeSheetName } from '../write/safe-text.ts';
import { type OwnSheet, ownSheets } from '../write/workbook.ts';
import { readXlsx } from '../xlsx/read-xlsx.ts';
import { readStyles } from '../xlsx/styles.ts';
import { isZip } from '../xlsx/zip.ts';
import { findBeside } from './beside.ts';
import { findEdits } from './edits.ts';
import { type OpenBook, openBook } from './open-book.ts';
import { type OwnCell, type OwnParts, writeOwnParts } from './own-parts.ts';
import { patchSheet } from './patch-sheet.ts';
import { appendStyles } from './patch-styles.ts';
import { type NewSheet, patchContentTypes, patchRelationships, patchWorkbookPart } from './patch-workbook.ts';
import { patchZip } from './patch-zip.ts';
import { placeColumns } from './place-columns.ts';
import { placeNotes } from './place-notes.ts';
import { outlineSheet, type RowPlace, type SheetOutline } from './sheet-outline.ts';
import { writeEdit } from './write-edit.ts';

/** The annotated workbook, or one sentence that says why it cannot be had. */
export type Annotated = { readonly bytes: Uint8Array } | { readonly refused: string };

/**
 * The workbook that the list came in, with our columns beside the list and our sheets behind the others. Parts that carry none of that
 * are copied byte by byte; in the list's sheet every cell stays as it is but those that the user edited. `date` is the day of the
 * judgement, as it is to be shown; `parts` are those it was made with.
 */
export async function annotateWorkbook(
  original: Uint8Array,
  list: AuditedList,
  date: string,
  parts: PartIndex,
  work: WorkRecord = NO_WORK,
  compared: Report | null = null,
): Promise<Annotated> {
  try {
    if (!isZip(original)) throw new Unreadable('The list did not come in a workbook.');
    return { bytes: await annotate(original, list, ownSheets(list, date, parts, work, compared)) };
  } catch (error) {
    if (error instanceof Unreadable) return { refused: error.message };
    throw error;
  }
}

async function annotate(original: Uint8Array, list: AuditedList, sheets: readonly OwnSheet[]): Promise<Uint8Array> {
  const { tables } = readXlsx(original, list.file);
  const table = tables.find(({ name }) => name === list.sheet) ?? { name: list.sheet, rows: [] };
  const book = openBook(original, list);
  const xml = book.read(book.sheet);
  const outline = outlineSheet(xml);
  if (outline.isProtected) throw new Unreadable(`Sheet ‘${list.sheet}’ is protected.`);
  const own = ownColumns(list.shop.units);
  const spot = findSpot(book, outline, table, list, own);
  const parts = await writeOwnParts(list, spot.start, own, spot.notes, sheets);
  const styles = book.styles === undefined ? null : appendStyles(book.read(book.styles), parts.styles);
  const restyle = (own: string) => withStyles(own, styles?.offset);

  const edits = editedCells(book, list, table, { xml, outline });
  const cells = new Map(edits.cells);
  for (const [row, given] of parts.cells) {
    const restyled = given.map((cell) => ({ column: cell.column, xml: restyle(cell.xml) }));
    cells.set(row, [...(cells.get(row) ?? []), ...restyled]);
  }
  const patched = patchSheet(xml, outline, { ...spot, widths: parts.widths, cells });
  const changes: Record<string, Uint8Array | null> = { [book.sheet]: strToU8(patched) };
  if (styles && book.styles !== undefined) changes[book.styles] = strToU8(styles.xml);
  const added = placeSheets(book, parts, changes, (own) => book.dialect(restyle(own)));
  return patchZip(original, { ...changes, ...patchLinks(book, added, edits) });
}

/** Where on the sheet our columns go, and the sentences under the list by row. Columns of an earlier export are written over. */
function findSpot(
  book: OpenBook,
  outline: SheetOutline,
  table: RawTable,
  list: AuditedList,
  own: readonly OwnColumn[],
) {
  const rows = findRows(outline, list);
  const earlier = findEarlier(table, list, own);
  const start = earlier ?? placeColumns(outline, rows, findBeside(book.zip, book.sheet), own.length);
  const words = wordsUnder(list);
  const noteRows = placeNotes(outline, table, rows, { start, end: start + own.length }, words);
  const there = noteRows.flatMap((number) => outline.rows.find((row) => row.number === number) ?? []);
  return {
    start,
    keepsWidths: earlier !== null,
    rows: [...rows, ...there],
    notes: new Map(noteRows.map((row, index) => [row, words[index] ?? ''])),
  };
}

/** The sheet's rows that belong to the list, its headings first. */
function findRows(sheet: SheetOutline, list: AuditedList): readonly RowPlace[] {
  const wanted = new Set([list.headerRow, ...listRows(list).map(({ row }) => row)]);
  const rows = sheet.rows.filter(({ number }) => wanted.has(number));
  const found = new Set(rows.map(({ number }) => number));
  if (found.size < rows.length) throw new Unreadable(`Sheet ‘${list.sheet}’ has the same row twice.`);
  const missing = [...wanted].find((number) => !found.has(number));
  if (missing !== undefined) throw new Unreadable(`Row ${missing} of the list is not in its sheet.`);
  return rows;
}

/** Where our columns of an earlier export stand, if they all still do. */
function findEarlier(table: RawTable, list: AuditedList, own: readonly OwnColumn[]): number | null {
  const headings = table.rows.find(({ number }) => number === list.headerRow)?.cells ?? [];
  const run = findOwnColumns(headings).find(({ start, end }) => end - start === own.length);
  return run?.start ?? null;
}

/** Texts of the user in place of what stood in the file. */
function editedCells(
  book: OpenBook,
  list: AuditedList,
  table: RawTable,
  sheet: { readonly xml: string; readonly outline: SheetOutline },
) {
  const formats = book.styles === undefined ? [] : readStyles(book.read(book.styles));
  const context = { strings: [], formats, has1904Dates: book.has1904Dates, isUncalculated: false };
  const rows = new Map(sheet.outline.rows.map((row) => [row.number, row]));
  const cells = new Map<number, readonly OwnCell[]>();
  let removesFormula = false;
  const edits = findEdits(list, table);
  for (const edit of edits) {
    const row = rows.get(edit.row);
    if (!row) continue;
    const header = list.columns.find(({ index }) => index === edit.column);
    const cell = writeEdit(sheet.xml, sheet.outline, row, edit, header, context);
    cells.set(edit.row, [...(cells.get(edit.row) ?? []), cell]);
    removesFormula ||= row.cells.some(({ column, hasFormula }) => column === edit.column && hasFormula);
  }
  return { cells, isEdited: edits.length > 0, removesFormula };
}

/** Puts our sheets in as new parts, under names that are free. */
function placeSheets(
  book: OpenBook,
  { sheets }: OwnParts,
  changes: Record<string, Uint8Array | null>,
  finish: (xml: string) => string,
): readonly NewSheet[] {
  const names = [...book.names];
  return sheets.map(({ name: wanted, xml }) => {
    const name = safeSheetName(wanted, names);
    const place = book.takePart();
    names.push(name);
    changes[place.part] = strToU8(finish(xml));
    return { name, ...place };
  });
}

/** The parts that name all others. The order of calculation is dropped when a formula is gone: spreadsheets work it out anew. */
function patchLinks(book: OpenBook, added: readonly NewSheet[], edits: { isEdited: boolean; removesFormula: boolean }) {
  const chain = edits.removesFormula ? book.calculationChain : undefined;
  const gone = chain === undefined ? [] : [chain];
  return {
    [book.workbook]: strToU8(patchWorkbookPart(book.read(book.workbook), added, edits.isEdited)),
    [book.links]: strToU8(
      patchRelationships(book.read(book.links), book.folder, added, chain === undefined ? [] : ['calcChain']),
    ),
    [book.types]: strToU8(patchContentTypes(book.read(book.types), added, gone)),
    ...Object.fromEntries(gone.map((part) => [part, null])),
  };
}

/** Our style indexes as the workbook's; without a styles part to extend, none. */
function withStyles(xml: string, offset: number | undefined): string {
  return xml.replace(/ (s|style)="(\d+)"/g, (_, name: string, index: string) =>
    offset === undefined ? '' : ` ${name}="${Number(index) + offset}"`,
  );
}
