import type { Cell, Worksheet } from 'exceljs';
import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Column, LengthUnit, Role } from '../../core/model/list.ts';
import {
  describeDecision,
  describeHole,
  describeMargin,
  describeRemedies,
  describeSheet,
} from '../../core/say/describe.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../core/say/safety.ts';
import { paintHeading, paintOutcome, setUpPrint, solid } from './look.ts';
import { safeText } from './safe-text.ts';

/** Columns whose numbers are numbers; everything else stays text, so that leading zeros and part numbers survive. */
const NUMBER_ROLES: ReadonlySet<Role> = new Set([
  'quantity',
  'thickness',
  'hole',
  'edge',
  'spacing',
  'bend',
  'length',
  'price',
]);
const MM_PER_INCH = 25.4;

interface OwnColumn {
  readonly heading: string;
  readonly width: number;
  readonly write: (cell: Cell, line: AuditedLine) => void;
}

/** The list as it was sent, row by row, with our columns to the right of the sender's. */
export function writeListSheet(sheet: Worksheet, list: AuditedList): void {
  const senders = Math.max(
    0,
    ...list.columns.map(({ index }) => index + 1),
    ...allRows(list).map(({ cells }) => cells.length),
  );
  const own = ownColumns(list.shop.units);
  sheet.addRow(headings(list, senders, own));
  for (const { cells, line, row, what } of allRows(list)) {
    const target = sheet.addRow([]);
    for (const [index, text] of cells.entries()) writeSenders(target.getCell(index + 1), text, list.columns[index]);
    target.getCell(senders + 1).value = row;
    if (line) paintOutcome(target, senders + 2, line.verdict);
    else target.getCell(senders + 2).value = `${what}: not a fastener`;
    if (line) for (const [index, column] of own.entries()) column.write(target.getCell(senders + 3 + index), line);
    else target.font = { color: { argb: 'FF8A8F93' } };
  }
  finish(sheet, list, senders, own);
}

function finish(sheet: Worksheet, list: AuditedList, senders: number, own: readonly OwnColumn[]): void {
  paintHeading(sheet, senders + 2 + own.length);
  for (let column = 1; column <= senders; column++) sheet.getColumn(column).width = widthFor(sheet, column);
  sheet.getColumn(senders + 1).width = 7;
  sheet.getColumn(senders + 2).width = 12;
  own.forEach(({ width }, index) => {
    sheet.getColumn(senders + 3 + index).width = width;
  });
  for (let column = senders + 1; column <= senders + 2 + own.length; column++)
    sheet.getRow(1).getCell(column).fill = solid('FFE3E8EE');
  setUpPrint(sheet, list);
  const words = list.catalogues.some(({ demo }) => demo) ? [DEMO_WORDS, SAFETY_SHORT] : [SAFETY_SHORT];
  sheet.addRow([]);
  for (const text of words) sheet.addRow([text]).font = { italic: true, color: { argb: 'FF5C666D' } };
}

function headings(list: AuditedList, senders: number, own: readonly OwnColumn[]): string[] {
  const names = Array.from({ length: senders }, (_, index) =>
    safeText(list.columns.find((column) => column.index === index)?.heading ?? ''),
  );
  return [...names, 'Row in file', 'Verdict', ...own.map(({ heading }) => heading)];
}

function ownColumns(units: LengthUnit): readonly OwnColumn[] {
  const length = (heading: string, of: (line: AuditedLine) => number | null | undefined): OwnColumn => ({
    heading: `${heading} (${units})`,
    width: 11,
    write: (cell, line) => writeLength(cell, of(line) ?? null, units),
  });
  const text = (heading: string, width: number, of: (line: AuditedLine) => string): OwnColumn => ({
    heading,
    width,
    write: (cell, line) => writeText(cell, of(line)),
  });
  return [
    text('What decides it', 44, describeDecision),
    text('Sheet understood', 30, (line) => describeSheet(line, units)),
    length('Sheet', (line) => line.sheet?.thicknessMm),
    length('Thinnest from the mill', (line) => line.sheet?.thinnestMm),
    length('Minimum sheet', (line) => line.requires?.sheetMinMm),
    text(`Hole required (${units})`, 18, (line) => describeHole(line.requires, units)),
    length('Edge required', (line) => line.requires?.edgeMm),
    text('Hardness margin (HRB points)', 12, describeMargin),
    text('Would hold instead', 50, describeRemedies),
  ];
}

function writeSenders(cell: Cell, text: string, column: Column | undefined): void {
  const decimals = /^-?(?:0|[1-9]\d{0,14})(?:\.(\d{1,8}))?$/.exec(text);
  if (!decimals || !column || !NUMBER_ROLES.has(column.role)) {
    writeText(cell, text);
    return;
  }
  cell.value = Number(text);
  cell.numFmt = decimals[1] ? `0.${'0'.repeat(decimals[1].length)}` : '0';
}

/** Text that begins like a formula is marked as text, so that a later edit does not bring it to life. */
function writeText(cell: Cell, text: string): void {
  if (text === '') return;
  cell.value = safeText(text);
  if (/^[=+\-@]/.test(text)) cell.numFmt = '@';
}

function writeLength(cell: Cell, mm: number | null, units: LengthUnit): void {
  if (mm === null || !Number.isFinite(mm)) return;
  cell.value = Number((units === 'mm' ? mm : mm / MM_PER_INCH).toFixed(units === 'mm' ? 3 : 4));
  cell.numFmt = units === 'mm' ? '0.00' : '0.0000';
}

function allRows(list: AuditedList) {
  const rows = [
    ...list.lines.map((line) => ({ row: line.row, cells: line.line.cells, line, what: '' })),
    ...list.others.map((other) => ({ row: other.row, cells: other.cells, line: null, what: other.what })),
  ];
  return rows.sort((a, b) => a.row - b.row);
}

/** Wide enough for what is in the column, within reason. */
function widthFor(sheet: Worksheet, column: number): number {
  let widest = 6;
  sheet.getColumn(column).eachCell((cell) => {
    widest = Math.max(widest, String(cell.value ?? '').length + 2);
  });
  return Math.min(widest, 40);
}
