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
import { fitHeight, font, isDemo, paintHeading, paintOutcome, QUIET, setUpPrint, solid } from './look.ts';
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
/** Our text columns wider than this wrap. */
const WRAPS_FROM = 24;
const REMEDIES_SHOWN = 2;

interface OwnColumn {
  readonly heading: string;
  readonly width: number;
  readonly wraps: boolean;
  readonly write: (cell: Cell, line: AuditedLine) => void;
}

/** The list as it was sent, row by row, with our columns to the right of the sender's. */
export function writeListSheet(sheet: Worksheet, list: AuditedList): void {
  const rows = allRows(list);
  const senders = Math.max(0, ...list.columns.map(({ index }) => index + 1), ...rows.map(({ cells }) => cells.length));
  const own = ownColumns(list.shop.units);
  sheet.addRow(headings(list, senders, own));
  for (const row of rows) writeRow(sheet, row, list, senders, own);
  paintHeading(sheet, senders + 2 + own.length);
  setWidths(sheet, senders, own);
  setUpPrint(sheet, list);
  sheet.addRow([]);
  const words = isDemo(list) ? [DEMO_WORDS, SAFETY_SHORT] : [SAFETY_SHORT];
  for (const text of words) sheet.addRow([text]).font = font({ italic: true, colour: QUIET });
}

function writeRow(sheet: Worksheet, row: ListRow, list: AuditedList, senders: number, own: readonly OwnColumn[]): void {
  const { cells, line, what } = row;
  const target = sheet.addRow([]);
  target.font = font(line ? {} : { colour: QUIET });
  target.alignment = { vertical: 'top' };
  for (const [index, text] of cells.entries()) writeSenders(target.getCell(index + 1), text, list.columns[index]);
  target.getCell(senders + 1).value = row.row;
  if (!line) {
    target.getCell(senders + 2).value = `${what}: not a fastener`;
    return;
  }
  paintOutcome(target.getCell(senders + 2), line.verdict);
  for (const [index, column] of own.entries()) column.write(target.getCell(senders + 3 + index), line);
  const wrapped = own.flatMap((column, index) =>
    column.wraps ? [{ text: target.getCell(senders + 3 + index).text, width: column.width }] : [],
  );
  fitHeight(target, wrapped);
}

function setWidths(sheet: Worksheet, senders: number, own: readonly OwnColumn[]): void {
  for (let column = 1; column <= senders; column++) sheet.getColumn(column).width = widthFor(sheet, column);
  sheet.getColumn(senders + 1).width = 7;
  sheet.getColumn(senders + 2).width = 12;
  for (const [index, { width }] of own.entries()) sheet.getColumn(senders + 3 + index).width = width;
  for (let column = senders + 1; column <= senders + 2 + own.length; column++) {
    sheet.getRow(1).getCell(column).fill = solid('FFE3E8EE');
  }
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
    width: 10,
    wraps: false,
    write: (cell, line) => writeLength(cell, of(line) ?? null, units),
  });
  const text = (heading: string, width: number, of: (line: AuditedLine) => string): OwnColumn => ({
    heading,
    width,
    wraps: width > WRAPS_FROM,
    write: (cell, line) => {
      writeText(cell, of(line));
      cell.alignment = { vertical: 'top', wrapText: width > WRAPS_FROM, indent: 1 };
    },
  });
  return [
    text('What decides it', 40, describeDecision),
    text('Sheet understood', 30, (line) => describeSheet(line, units)),
    length('Sheet', (line) => line.sheet?.thicknessMm),
    length('Thinnest from the mill', (line) => line.sheet?.thinnestMm),
    length('Minimum sheet', (line) => line.requires?.sheetMinMm),
    text(`Hole required (${units})`, 18, (line) => describeHole(line.requires, units)),
    length('Edge required', (line) => line.requires?.edgeMm),
    text('Hardness margin (HRB points)', 12, describeMargin),
    text('Would hold instead', 46, (line) => describeRemedies(line, REMEDIES_SHOWN)),
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

interface ListRow {
  readonly row: number;
  readonly cells: readonly string[];
  readonly line: AuditedLine | null;
  readonly what: string;
}

function allRows(list: AuditedList): readonly ListRow[] {
  const rows: ListRow[] = [
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
