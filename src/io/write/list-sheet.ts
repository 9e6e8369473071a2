import type { Cell, Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Column } from '../../core/model/list.ts';
import { fitHeight, font, paintHeading, paintOwnHeading, QUIET, setUpPrint, wordsUnder } from './look.ts';
import { holdsNumbers } from './number-roles.ts';
import { type ListRow, listRows, type OwnColumn, ownColumns, writeOwnCells, writeText } from './own-columns.ts';
import { safeText } from './safe-text.ts';

/** The list as it was sent, row by row, with our columns to the right of the sender's. */
export function writeListSheet(sheet: Worksheet, list: AuditedList): void {
  const rows = listRows(list);
  const senders = Math.max(0, ...list.columns.map(({ index }) => index + 1), ...rows.map(({ cells }) => cells.length));
  const own = ownColumns(list.shop.units);
  sheet.addRow(headings(list, senders, own));
  for (const row of rows) writeRow(sheet, row, list, senders, own);
  paintHeading(sheet, senders + own.length);
  for (const [index] of own.entries()) paintOwnHeading(sheet.getRow(1).getCell(senders + 1 + index));
  setWidths(sheet, senders, own);
  setUpPrint(sheet, list);
  sheet.addRow([]);
  for (const text of wordsUnder(list)) sheet.addRow([text]).font = font({ italic: true, colour: QUIET });
}

function writeRow(sheet: Worksheet, row: ListRow, list: AuditedList, senders: number, own: readonly OwnColumn[]): void {
  const target = sheet.addRow([]);
  writeOwnCells(target, senders + 1, row, own);
  for (const [index, text] of row.cells.entries()) writeSenders(target.getCell(index + 1), text, list.columns[index]);
  if (!row.line) return;
  const wrapped = own.flatMap((column, index) =>
    column.wraps ? [{ text: target.getCell(senders + 1 + index).text, width: column.width }] : [],
  );
  fitHeight(target, wrapped);
}

function setWidths(sheet: Worksheet, senders: number, own: readonly OwnColumn[]): void {
  for (let column = 1; column <= senders; column++) sheet.getColumn(column).width = widthFor(sheet, column);
  for (const [index, { width }] of own.entries()) sheet.getColumn(senders + 1 + index).width = width;
}

function headings(list: AuditedList, senders: number, own: readonly OwnColumn[]): string[] {
  const names = Array.from({ length: senders }, (_, index) =>
    safeText(list.columns.find((column) => column.index === index)?.heading ?? ''),
  );
  return [...names, ...own.map(({ heading }) => heading)];
}

function writeSenders(cell: Cell, text: string, column: Column | undefined): void {
  const decimals = /^-?(?:0|[1-9]\d{0,14})(?:\.(\d{1,8}))?$/.exec(text);
  if (!decimals || !holdsNumbers(column)) {
    writeText(cell, text);
    return;
  }
  cell.value = Number(text);
  cell.numFmt = decimals[1] ? `0.${'0'.repeat(decimals[1].length)}` : '0';
}

/** Wide enough for what is in the column, within reason. */
function widthFor(sheet: Worksheet, column: number): number {
  let widest = 6;
  sheet.getColumn(column).eachCell((cell) => {
    widest = Math.max(widest, String(cell.value ?? '').length + 2);
  });
  return Math.min(widest, 40);
}
