import { type RawFile, type RawTable, Unreadable } from '../../core/model/raw.ts';
import { describeTooMuch, MOST_CELLS, MOST_CHARACTERS, MOST_SHEETS, MOST_TEXTS, showCount } from '../limits.ts';
import { type ReadOptions, type Report, watchReading } from '../options.ts';
import type { CellContext } from './cell-text.ts';
import { decodeXmlBytes, decodeXmlPieces } from './decode-xml.ts';
import { describeOtherPackage } from './other-package.ts';
import { findWorkbookPart, readWorkbookParts, type SheetPart, type WorkbookParts } from './parts.ts';
import { type Room, readSheet, type SheetRows } from './read-sheet.ts';
import { readSharedStrings } from './shared-strings.ts';
import { noticeSheet } from './sheet-notices.ts';
import { readStyles } from './styles.ts';
import { openZip, type Zip } from './zip.ts';

/**
 * Reads every sheet of a workbook, in order, hidden ones included. Formulas give their stored result; charts, pictures,
 * comments and names are left alone.
 * @throws Unreadable when the bytes hold no workbook, a damaged or oversized one, or one without a filled cell.
 */
export function readXlsx(bytes: Uint8Array, file: string, options: ReadOptions = {}): RawFile {
  const report = watchReading(options, file);
  const zip = openZip(bytes, file);
  const workbook = findWorkbookPart(zip);
  if (workbook === undefined) throw new Unreadable(describeOtherPackage(zip, file));
  const parts = readWorkbookParts(zip, workbook);
  if (parts.sheets.length > MOST_SHEETS) refuse(file, '', `more than ${showCount(MOST_SHEETS)} sheets`, ALONE);
  const context = readContext(zip, parts, file, () => report());
  const present = parts.sheets.filter((sheet) => sheet.part !== undefined);
  const read = readSheets(zip, present, context, file, report);
  if (read.every(({ content }) => content.rows.length === 0)) throw new Unreadable(describeEmpty(parts, file));
  return {
    file,
    format: 'xlsx',
    tables: read.map(({ sheet, content }) => toTable(sheet, content)),
    notices: [...noticeLost(parts), ...read.flatMap(({ sheet, content }) => noticeSheet(sheet.name, content))],
  };
}

/** Sheets that share a part share what stands in it. */
function readSheets(zip: Zip, sheets: readonly SheetPart[], context: CellContext, file: string, report: Report) {
  const room = { cells: MOST_CELLS, characters: MOST_CHARACTERS };
  const known = new Map<string | undefined, SheetRows>();
  return sheets.map((sheet, index) => {
    const reportPart: Report = (share = 0) => report((index + share) / sheets.length);
    const content = known.get(sheet.part) ?? readPart(zip, sheet, { ...context, room }, file, reportPart);
    known.set(sheet.part, content);
    return { sheet, content };
  });
}

const ALONE = 'copy the list into a new workbook and save that';

function refuse(file: string, place: string, what: string, cure: string): never {
  throw new Unreadable(describeTooMuch(file, place, what, cure));
}

function readContext(zip: Zip, parts: WorkbookParts, file: string, report: Report): CellContext {
  const shared = parts.strings === undefined ? undefined : readSharedStrings(readPieces(zip, parts.strings, report));
  if (shared?.isTooLong) refuse(file, ', in its table of texts,', `more than ${showCount(MOST_TEXTS)} texts`, ALONE);
  if (shared?.isComplete === false) {
    throw new Unreadable(`‘${file}’ is cut short: its table of texts breaks off; save or download it again.`);
  }
  return {
    strings: shared?.texts ?? [],
    formats: parts.styles === undefined ? [] : readStyles(readXml(zip, parts.styles)),
    has1904Dates: parts.has1904Dates,
    isUncalculated: parts.isUncalculated,
  };
}

function readPart(
  zip: Zip,
  sheet: SheetPart,
  context: CellContext & { readonly room: Room },
  file: string,
  report: Report,
): SheetRows {
  report(0);
  const content = readSheet(readPieces(zip, sheet.part ?? '', report), context, context.room);
  if (context.room.characters < 0) {
    refuse(file, `, sheet ‘${sheet.name}’,`, `more than ${showCount(MOST_CHARACTERS)} characters`, ALONE);
  }
  if (content.isTooSpread) {
    throw new Unreadable(
      `Sheet ‘${sheet.name}’ of ‘${file}’ spreads over millions of cells, which no list needs; clear what stands far to the right of the list and save it again.`,
    );
  }
  if (!content.isComplete) {
    const last = content.rows.at(-1)?.number;
    const where = last === undefined ? 'before its first row' : `after row ${last}`;
    throw new Unreadable(
      `‘${file}’ is cut short: sheet ‘${sheet.name}’ breaks off ${where}; save or download it again.`,
    );
  }
  return content;
}

function readXml(zip: Zip, part: string): string {
  return decodeXmlBytes(zip.read(part));
}

/** Text of a part as it unpacks; `report` hears the share read so far. */
function readPieces(zip: Zip, part: string, report: Report): Generator<string> {
  return decodeXmlPieces(bytesOf(zip, part, report));
}

function* bytesOf(zip: Zip, part: string, report: Report): Generator<Uint8Array> {
  for (const { bytes, share } of zip.pieces(part)) {
    yield bytes;
    report(share);
  }
}

function toTable(sheet: SheetPart, content: SheetRows): RawTable {
  return { name: sheet.name, rows: content.rows, ...(sheet.isHidden ? { hidden: true } : {}) };
}

function noticeLost(parts: WorkbookParts) {
  return parts.sheets
    .filter((sheet) => sheet.part === undefined)
    .map(({ name }) => ({
      text: `Sheet ‘${name}’ is named in the workbook but missing from the file; save the workbook again if you need it.`,
      sheet: name,
    }));
}

function describeEmpty(parts: WorkbookParts, file: string): string {
  if (parts.sheets.some((sheet) => sheet.part !== undefined)) {
    return `‘${file}’ holds no filled cells; choose the workbook with your list.`;
  }
  return `‘${file}’ holds no worksheet that can be read; open it in a spreadsheet program and save it as .xlsx.`;
}
