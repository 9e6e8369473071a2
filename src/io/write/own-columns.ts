import type { Cell, Row } from 'exceljs';
import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import {
  describeDecision,
  describeHole,
  describeMargin,
  describeRemedies,
  describeSheet,
} from '../../core/say/describe.ts';
import { font, paintOutcome, QUIET } from './look.ts';
import { safeText } from './safe-text.ts';

const MM_PER_INCH = 25.4;
/** Our text columns wider than this wrap. */
const WRAPS_FROM = 24;
const REMEDIES_SHOWN = 2;

/** A row of the list as written: judged, or in a word what else it is. */
export interface ListRow {
  readonly row: number;
  readonly cells: readonly string[];
  readonly line: AuditedLine | null;
  readonly what: string;
}

/** One of our columns beside a list. */
export interface OwnColumn {
  readonly heading: string;
  readonly width: number;
  readonly wraps: boolean;
  readonly write: (cell: Cell, row: ListRow) => void;
}

/** Our columns in order; lengths in the units given. */
export function ownColumns(units: LengthUnit): readonly OwnColumn[] {
  const length = (heading: string, of: (line: AuditedLine) => number | null | undefined): OwnColumn => ({
    heading: `${heading} (${units})`,
    width: 10,
    wraps: false,
    write: (cell, { line }) => line && writeLength(cell, of(line) ?? null, units),
  });
  const text = (heading: string, width: number, of: (line: AuditedLine) => string): OwnColumn => ({
    heading,
    width,
    wraps: width > WRAPS_FROM,
    write: (cell, { line }) => {
      if (!line) return;
      writeText(cell, of(line));
      cell.alignment = { horizontal: 'left', vertical: 'top', wrapText: width > WRAPS_FROM, indent: 1 };
    },
  });
  return [
    { heading: 'Row in file', width: 7, wraps: false, write: writeRowNumber },
    { heading: 'Verdict', width: 12, wraps: false, write: writeVerdict },
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

/** Fasteners and other rows of a list woven together in file order. */
export function listRows(list: AuditedList): readonly ListRow[] {
  const rows: ListRow[] = [
    ...list.lines.map((line) => ({ row: line.row, cells: line.line.cells, line, what: '' })),
    ...list.others.map((other) => ({ row: other.row, cells: other.cells, line: null, what: other.what })),
  ];
  return rows.sort((a, b) => a.row - b.row);
}

/** Writes our columns of one row from a 1-based column on. */
export function writeOwnCells(target: Row, from: number, row: ListRow, own: readonly OwnColumn[]): void {
  target.font = font(row.line ? {} : { colour: QUIET });
  target.alignment = { vertical: 'top' };
  for (const [index, column] of own.entries()) column.write(target.getCell(from + index), row);
}

/** Text that begins like a formula is marked as text, so that a later edit does not bring it to life. */
export function writeText(cell: Cell, text: string): void {
  if (text === '') return;
  cell.value = safeText(text);
  if (/^[=+\-@]/.test(text)) cell.numFmt = '@';
}

function writeRowNumber(cell: Cell, { row }: ListRow): void {
  cell.value = row;
}

function writeVerdict(cell: Cell, { line, what }: ListRow): void {
  if (line) paintOutcome(cell, line.verdict);
  else cell.value = safeText(`${what}: not a fastener`);
}

function writeLength(cell: Cell, mm: number | null, units: LengthUnit): void {
  if (mm === null || !Number.isFinite(mm)) return;
  cell.value = Number((units === 'mm' ? mm : mm / MM_PER_INCH).toFixed(units === 'mm' ? 3 : 4));
  cell.numFmt = units === 'mm' ? '0.00' : '0.0000';
}
