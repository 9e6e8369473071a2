import type { Cell, Fill, Font, Row, Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Outcome } from '../../core/model/outcome.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../core/say/safety.ts';

/** Ground and ink of each outcome; the word is always there too. */
const COLOURS: Readonly<Record<Outcome, { readonly ground: string; readonly ink: string }>> = {
  holds: { ground: 'FFE3F2EA', ink: 'FF14634A' },
  marginal: { ground: 'FFFBEFD9', ink: 'FF7D4E08' },
  fails: { ground: 'FFFBE4E1', ink: 'FF9A271F' },
  unknown: { ground: 'FFE9EBEE', ink: 'FF434C56' },
  note: { ground: 'FFFFFFFF', ink: 'FF5C666D' },
};

export const QUIET = 'FF7A8288';
const INK = 'FF1D2327';
const LINE_HEIGHT = 14;

/** The workbook's typeface with what differs: a font given in part would lose name and size. */
export function font(more: Partial<Font> & { readonly colour?: string } = {}): Partial<Font> {
  const { colour = INK, ...rest } = more;
  return { name: 'Calibri', size: 10, color: { argb: colour }, ...rest };
}

/** A cell filled with one colour. */
function solid(argb: string): Fill {
  return { type: 'pattern', pattern: 'solid', fgColor: { argb } };
}

/** Words an outcome into a cell, with its colours. */
export function paintOutcome(cell: Cell, outcome: Outcome): void {
  const { ground, ink } = COLOURS[outcome];
  cell.value = outcome;
  cell.alignment = { vertical: 'top', indent: 1 };
  cell.fill = solid(ground);
  cell.font = font({ bold: true, colour: ink });
}

/** Heading row: bold on a pale ground, wrapped, with a rule below; rows under it scroll and can be filtered, the row repeats in print. */
export function paintHeading(sheet: Worksheet, columns: number): void {
  const row = sheet.getRow(1);
  for (let column = 1; column <= columns; column++) paintHeadingCell(row.getCell(column), 'FFEEECE6');
  sheet.views = [{ state: 'frozen', ySplit: 1 }];
  sheet.autoFilter = { from: { row: 1, column: 1 }, to: { row: Math.max(sheet.rowCount, 1), column: columns } };
}

/** Heading of one of our own columns: told from the sender's by its ground. */
export function paintOwnHeading(cell: Cell): void {
  paintHeadingCell(cell, 'FFE3E8EE');
}

/** Makes a row as tall as its longest wrapped text needs: spreadsheets do not all do so by themselves when they open a file. */
export function fitHeight(row: Row, wrapped: readonly { readonly text: string; readonly width: number }[]): void {
  const lines = Math.max(1, ...wrapped.map(({ text, width }) => linesOf(text, width)));
  row.height = lines * LINE_HEIGHT + 2;
}

function paintHeadingCell(cell: Cell, ground: string): void {
  cell.font = font({ bold: true });
  cell.fill = solid(ground);
  cell.alignment = { vertical: 'top', wrapText: true };
  cell.border = { bottom: { style: 'thin', color: { argb: 'FF8A8F93' } } };
}

/** Words wrap whole, so a line is rarely quite full. */
function linesOf(text: string, width: number): number {
  return text.split('\n').reduce((sum, part) => sum + Math.max(1, Math.ceil(part.length / (width * 1.12))), 0);
}

/** Characters of columns that a page takes across before print becomes too small to read. */
const PAGE_WIDTH = 210;

/** Landscape, headings repeated, page numbers, the safety words at the foot of every page, and as many pages across as can be read. */
export function setUpPrint(sheet: Worksheet, list: AuditedList): void {
  const demo = isDemo(list) ? `${DEMO_WORDS} ` : '';
  const margins = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.7, header: 0.3, footer: 0.3 };
  const width = sheet.columns?.reduce((sum, column) => sum + (column.width ?? 0), 0) ?? 0;
  const fit = { fitToPage: true, fitToWidth: Math.max(1, Math.round(width / PAGE_WIDTH)), fitToHeight: 0 };
  sheet.pageSetup = {
    orientation: 'landscape',
    pageOrder: 'overThenDown',
    ...fit,
    printTitlesRow: '1:1',
    paperSize: 9,
    margins,
  };
  sheet.headerFooter.oddFooter = `&L&8${demo}${SAFETY_SHORT}&R&8&P / &N`;
}

/** What stands under a judged list. */
export function wordsUnder(list: AuditedList): readonly string[] {
  return isDemo(list) ? [DEMO_WORDS, SAFETY_SHORT] : [SAFETY_SHORT];
}

/** True when any catalogue behind the judgement is invented demonstration data. */
export function isDemo({ catalogues }: AuditedList): boolean {
  return catalogues.some(({ demo }) => demo);
}
