import type { Worksheet } from 'exceljs';
import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Finding } from '../../core/model/finding.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import { describeNumbers, describeSources } from '../../core/say/describe.ts';
import { fitHeight, font, paintHeading, paintOutcome, setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

const COLUMNS = [
  ['Row in file', 8],
  ['Part number', 25],
  ['Panel', 12],
  ['Row verdict', 11],
  ['Check', 22],
  ['Outcome', 11],
  ['Finding', 70],
  ['Numbers', 34],
  ['Rests on', 56],
] as const;
const WRAPPED = [7, 8, 9] as const;

/** Every finding of every row, one a line. */
export function writeFindingsSheet(sheet: Worksheet, list: AuditedList): void {
  for (const [index, [, width]] of COLUMNS.entries()) sheet.getColumn(index + 1).width = width;
  sheet.addRow(COLUMNS.map(([heading]) => heading));
  for (const line of list.lines) {
    for (const finding of line.findings) writeFinding(sheet, line, finding, list.shop.units);
  }
  paintHeading(sheet, COLUMNS.length);
  setUpPrint(sheet, list);
}

function writeFinding(
  sheet: Worksheet,
  { row, line, verdict }: AuditedLine,
  finding: Finding,
  units: LengthUnit,
): void {
  const { rule, outcome, text, values, cites } = finding;
  const words = [safeText(text), describeNumbers(values, units), describeSources(cites)];
  const target = sheet.addRow([row, safeText(line.partNumber), safeText(line.panel), '', rule, '', ...words]);
  target.font = font();
  target.alignment = { vertical: 'top' };
  for (const column of WRAPPED) target.getCell(column).alignment = { vertical: 'top', wrapText: true };
  paintOutcome(target.getCell(4), verdict);
  paintOutcome(target.getCell(6), outcome);
  fitHeight(
    target,
    words.map((word, index) => ({ text: word, width: COLUMNS[index + 6]?.[1] ?? 40 })),
  );
}
