import type { Fill, Row, Worksheet } from 'exceljs';
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

/** A cell filled with one colour. */
export function solid(argb: string): Fill {
  return { type: 'pattern', pattern: 'solid', fgColor: { argb } };
}

/** Words an outcome into a cell, with its colours. */
export function paintOutcome(row: Row, column: number, outcome: Outcome): void {
  const cell = row.getCell(column);
  const { ground, ink } = COLOURS[outcome];
  cell.value = outcome;
  cell.fill = solid(ground);
  cell.font = { bold: true, color: { argb: ink } };
}

/** Heading row: bold on a pale ground, wrapped, with a rule below; rows under it scroll, the row repeats in print. */
export function paintHeading(sheet: Worksheet, columns: number): void {
  const row = sheet.getRow(1);
  for (let column = 1; column <= columns; column++) {
    const cell = row.getCell(column);
    cell.font = { bold: true };
    cell.fill = solid('FFEEECE6');
    cell.alignment = { vertical: 'top', wrapText: true };
    cell.border = { bottom: { style: 'thin', color: { argb: 'FF8A8F93' } } };
  }
  sheet.views = [{ state: 'frozen', ySplit: 1 }];
  sheet.autoFilter = { from: { row: 1, column: 1 }, to: { row: Math.max(sheet.rowCount, 1), column: columns } };
}

/** Landscape, headings repeated, page numbers, and the safety words at the foot of every page. */
export function setUpPrint(sheet: Worksheet, list: AuditedList): void {
  const demo = list.catalogues.some((catalogue) => catalogue.demo) ? `${DEMO_WORDS} ` : '';
  sheet.pageSetup = {
    orientation: 'landscape',
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
    printTitlesRow: '1:1',
    paperSize: 9,
  };
  sheet.headerFooter.oddFooter = `&L&8${demo}${SAFETY_SHORT}&R&8&P / &N`;
}
