import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { NO_WORK, type WorkRecord } from '../../core/model/change-record.ts';
import { type RawFile, type RawTable, Unreadable } from '../../core/model/raw.ts';
import type { Report } from '../../core/rollup/report.ts';
import { type ListRow, listRows } from '../write/own-columns.ts';
import { planOwnSheets } from '../write/own-sheets.ts';
import { followRows, Stopped, type WriteOptions } from '../write/writing.ts';
import { packPart, type StoredPart } from '../write/zip-parts.ts';
import { readXlsx } from '../xlsx/read-xlsx.ts';
import { isZip } from '../xlsx/zip.ts';
import { findBeside } from './beside.ts';
import { editedCells } from './edited-cells.ts';
import { findEarlier, findSpot, type Spot } from './find-spot.ts';
import { type OpenBook, openBook } from './open-book.ts';
import { type OwnCells, planOwnCells } from './own-cells.ts';
import { openStyles } from './own-styles.ts';
import { patchLinks } from './patch-links.ts';
import { patchSheet, type SheetPatch } from './patch-sheet.ts';
import { patchZip } from './patch-zip.ts';
import type { Beside } from './place-columns.ts';
import { placeSheets } from './place-sheets.ts';
import { keptPrintArea } from './print-area.ts';
import { stretchesOf } from './stretches.ts';
import { type SheetSurvey, surveySheet } from './survey.ts';

/** The annotated workbook, or one sentence that says why it cannot be had. */
export type Annotated = { readonly bytes: Uint8Array } | { readonly refused: string };

/** What is put into a workbook. */
interface Given {
  readonly list: AuditedList;
  readonly date: string;
  readonly parts: PartIndex;
  readonly work: WorkRecord;
  readonly compared: Report | null;
  readonly options: AnnotateOptions;
}

export interface AnnotateOptions extends WriteOptions {
  /** The workbook as it was read, where that is still at hand: it is not read again then. */
  readonly read?: RawFile;
}

/**
 * The workbook that the list came in, with our columns beside the list and our sheets behind the others. Parts that carry none of that
 * are copied byte by byte; in the list's sheet every cell stays as it is but those that the user edited. `date` is the day of the
 * judgement, as it is to be shown; `parts` are those it was made with.
 * @throws Stopped when the caller has stopped the writing.
 */
export async function annotateWorkbook(
  original: Uint8Array,
  list: AuditedList,
  date: string,
  parts: PartIndex,
  work: WorkRecord = NO_WORK,
  compared: Report | null = null,
  options: AnnotateOptions = {},
): Promise<Annotated> {
  try {
    if (!isZip(original)) throw new Unreadable('The list did not come in a workbook.');
    return { bytes: await annotate(original, { list, date, parts, work, compared, options }) };
  } catch (error) {
    if (error instanceof Unreadable && !(error instanceof Stopped)) return { refused: error.message };
    throw error;
  }
}

/** The sheet is unpacked once and its text walked twice, stretch by stretch: to see what is where, and to write into it. */
async function annotate(original: Uint8Array, given: Given): Promise<Uint8Array> {
  const { list, work } = given;
  const { tables } = given.options.read ?? readXlsx(original, list.file);
  const table = tables.find(({ name }) => name === list.sheet) ?? { name: list.sheet, rows: [] };
  const book = openBook(original, list);
  const beside = findBeside(book.zip, book.sheet);
  const stretches = [...stretchesOf(book.pieces(book.sheet))];
  const rows = listRows(list);
  const survey = surveyList(stretches, list, rows, table);
  const spot = findSpot(survey, beside, table, list, work.concessions);
  const styles = openStyles(book);
  const own = planOwnCells(list, rows, spot, styles.book);
  const plans = planOwnSheets(list, given.date, given.parts, work, given.compared, 'inline');
  const onRow = followRows(plans, list.lines.length, given.options);
  const edits = editedCells(book, list, rows, table, survey);

  const changes = new Map<string, StoredPart | null>();
  const patch = { ...patchOf(spot, survey, own, onRow), editsOf: edits.cellsOf, isEdited: edits.isEdited };
  const patching = packPart(book.sheet, patchSheet(stretches, patch));
  const placing = placeSheets(book, plans, styles.book, onRow, changes);
  // Neither is left running where the other fails.
  await Promise.allSettled([patching, placing]);
  changes.set(book.sheet, await patching);
  const sheets = await placing;
  if (book.styles !== undefined && styles.isOpen) changes.set(book.styles, await packPart(book.styles, [styles.xml()]));
  const kept = keptArea(book, list, survey, beside);
  await patchLinks(book, sheets, { ...edits.seen(), kept }, changes);
  return patchZip(original, changes);
}

function surveyList(
  stretches: readonly string[],
  list: AuditedList,
  listed: readonly ListRow[],
  table: RawTable,
): SheetSurvey {
  const rows = new Set([list.headerRow, ...listed.map(({ row }) => row)]);
  return surveySheet(stretches, { rows, earlier: findEarlier(table, list), sheet: list.sheet });
}

function patchOf(
  { start, end, keepsWidths, earlier, notes }: Spot,
  survey: SheetSurvey,
  own: OwnCells,
  onRow: () => void,
): Omit<SheetPatch, 'editsOf' | 'isEdited'> {
  const isIn = (column: number, run: { start: number; end: number }) => column >= run.start && column < run.end;
  return {
    start,
    end,
    widths: keepsWidths ? null : own.widths,
    top: survey.top,
    bottom: Math.max(survey.bottom, ...notes.keys()),
    isStale: (column) => isIn(column, { start, end }) || (earlier !== null && isIn(column, earlier)),
    isPlain: survey.isNumbered && survey.lastCell < start,
    cellsOf: (row) => {
      onRow();
      return own.of(row);
    },
    added: behindRows(
      [...notes.keys()].filter((row) => !survey.below.has(row)),
      survey,
    ),
  };
}

/** New rows by the last row before them that is there. */
function behindRows(added: readonly number[], { bottom, below }: SheetSurvey): ReadonlyMap<number, readonly number[]> {
  const behind = new Map<number, number[]>();
  for (const row of added) {
    const before = [...below.keys()].reduce((last, one) => (one < row && one > last ? one : last), bottom);
    behind.set(before, [...(behind.get(before) ?? []), row]);
  }
  return behind;
}

function keptArea(book: OpenBook, list: AuditedList, survey: SheetSurvey, beside: Beside): string | null {
  const sheet = { name: list.sheet, index: book.names.indexOf(list.sheet) };
  return keptPrintArea(book.read(book.workbook), sheet, survey, beside);
}
