import type { Row, Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Report, ReportBlock, ReportCell } from '../../core/rollup/report.ts';
import { fitHeight, font, paintOwnHeading, QUIET, setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

const NARROWEST = 7;
const WIDEST = 44;
/** Characters that a sentence may have in one row, however narrow the tables. */
const SHORTEST_LINE = 140;
/** Keeps text clear of a number in the column before. */
const LEFT = { horizontal: 'left', indent: 1 } as const;

/** Tables of a report one below the other, headings once where the next table has the same, sentences across below them, the foot last. */
export function writeReportSheet(sheet: Worksheet, list: AuditedList, { blocks, foot }: Report): void {
  const widths = widthsOf(blocks);
  for (const [index, width] of widths.entries()) sheet.getColumn(index + 1).width = width;
  for (const [index, block] of blocks.entries()) writeBlock(sheet, block, blocks[index - 1], widths);
  sheet.addRow([]);
  for (const text of foot) writeSentence(sheet, text, widths, true);
  sheet.views = [{ state: 'frozen', ySplit: 1 }];
  setUpPrint(sheet, list);
}

function writeBlock(
  sheet: Worksheet,
  { title, headings, rows, notes }: ReportBlock,
  before: ReportBlock | undefined,
  widths: readonly number[],
): void {
  const isSame = before?.headings === headings;
  if (before) sheet.addRow([]);
  if (title && !isSame && before) writeTitle(sheet, title);
  if (!isSame) writeHeadings(sheet.addRow([...headings]), headings, widths);
  if (title && (isSame || !before)) writeTitle(sheet, title);
  for (const row of rows) writeRow(sheet.addRow([]), row, widths);
  for (const note of notes) writeSentence(sheet, note, widths, false);
}

function writeHeadings(target: Row, headings: readonly string[], widths: readonly number[]): void {
  target.eachCell(paintOwnHeading);
  // Bold words fill a line sooner, and break at spaces only.
  const lines = headings.map((text, index) =>
    text.length + 1 > (widths[index] ?? WIDEST) ? text.replaceAll(' ', '\n') : text,
  );
  fitHeight(
    target,
    lines.map((text) => ({ text, width: WIDEST })),
  );
}

function writeTitle(sheet: Worksheet, title: string): void {
  sheet.addRow([safeText(title)]).font = font({ bold: true, size: 11 });
}

function writeRow(target: Row, cells: readonly ReportCell[], widths: readonly number[]): void {
  target.font = font();
  const texts = cells.map((cell, index) => ({ text: String(cell ?? ''), width: widths[index] ?? WIDEST }));
  for (const [index, value] of cells.entries()) {
    const cell = target.getCell(index + 1);
    cell.alignment = { vertical: 'top', wrapText: true, ...(typeof value === 'string' && LEFT) };
    if (value === null || value === '') continue;
    cell.value = typeof value === 'number' ? value : safeText(value);
    if (typeof value === 'string' && /^[=+\-@]/.test(value)) cell.numFmt = '@';
  }
  fitHeight(target, texts);
}

/** A sentence that runs over the empty cells beside it, in as many rows as it needs: merged cells would not sort, and are slow by the thousand. */
function writeSentence(sheet: Worksheet, text: string, widths: readonly number[], isFoot: boolean): void {
  const width = Math.max(
    SHORTEST_LINE,
    widths.reduce((sum, width) => sum + width, 0),
  );
  for (const line of linesOf(safeText(text), width)) {
    const row = sheet.addRow([line]);
    row.getCell(1).font = font(isFoot ? { italic: true, colour: QUIET } : {});
  }
}

/** Lines of at most so many characters, broken between words. */
function linesOf(text: string, width: number): readonly string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last === '') lines[lines.length - 1] = word;
    else if (last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Wide enough for what is in each column over all tables, within reason. */
function widthsOf(blocks: readonly ReportBlock[]): readonly number[] {
  const widths: number[] = [];
  const widen = (index: number, length: number) => {
    widths[index] = Math.min(WIDEST, Math.max(NARROWEST, widths[index] ?? 0, length + 2));
  };
  for (const { headings, rows } of blocks) {
    for (const [index, heading] of headings.entries()) widen(index, longestWord(heading));
    for (const row of rows) for (const [index, cell] of row.entries()) widen(index, String(cell ?? '').length);
  }
  return widths;
}

/** Headings wrap between words. */
function longestWord(text: string): number {
  return Math.max(...text.split(' ').map(({ length }) => length));
}
