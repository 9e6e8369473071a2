import { type RawFile, type RawTable, Unreadable } from '../../core/model/raw.ts';
import { type ReadOptions, reportProgress } from '../options.ts';
import type { CellContext } from './cell-text.ts';
import { decodeXmlBytes, decodeXmlPieces } from './decode-xml.ts';
import { describeOtherPackage } from './other-package.ts';
import { findWorkbookPart, readWorkbookParts, type SheetPart, type WorkbookParts } from './parts.ts';
import { readSheet, type SheetRows } from './read-sheet.ts';
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
  const zip = openZip(bytes, file);
  const workbook = findWorkbookPart(zip);
  if (workbook === undefined) throw new Unreadable(describeOtherPackage(zip, file));
  const parts = readWorkbookParts(zip, workbook);
  const context = readContext(zip, parts, file);
  const present = parts.sheets.filter((sheet) => sheet.part !== undefined);
  const read = present.map((sheet, index) => {
    const report = (share: number) => reportProgress(options, file, (index + share) / present.length);
    return { sheet, content: readPart(zip, sheet, context, file, report) };
  });
  if (read.every(({ content }) => content.rows.length === 0)) throw new Unreadable(describeEmpty(parts, file));
  return {
    file,
    format: 'xlsx',
    tables: read.map(({ sheet, content }) => toTable(sheet, content)),
    notices: [...noticeLost(parts), ...read.flatMap(({ sheet, content }) => noticeSheet(sheet.name, content))],
  };
}

function readContext(zip: Zip, parts: WorkbookParts, file: string): CellContext {
  const shared = parts.strings === undefined ? undefined : readSharedStrings(readPieces(zip, parts.strings));
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
  context: CellContext,
  file: string,
  report: (share: number) => void,
): SheetRows {
  report(0);
  const content = readSheet(readPieces(zip, sheet.part ?? '', report), context);
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
function readPieces(zip: Zip, part: string, report?: (share: number) => void): Generator<string> {
  return decodeXmlPieces(bytesOf(zip, part, report));
}

function* bytesOf(zip: Zip, part: string, report?: (share: number) => void): Generator<Uint8Array> {
  for (const { bytes, share } of zip.pieces(part)) {
    yield bytes;
    report?.(share);
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
