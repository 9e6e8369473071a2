import type { Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import { describeSources } from '../../core/say/describe.ts';
import { paintHeading, paintOutcome, setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

const HEADINGS = [
  'Row in file',
  'Part number',
  'Panel',
  'Row verdict',
  'Check',
  'Outcome',
  'Finding',
  'Numbers',
  'Rests on',
];
const WIDTHS = [8, 24, 14, 12, 22, 11, 80, 40, 60];

/** Every finding of every row, one a line. */
export function writeFindingsSheet(sheet: Worksheet, list: AuditedList): void {
  sheet.addRow(HEADINGS);
  for (const { row, line, verdict, findings } of list.lines) {
    for (const { rule, outcome, text, values, cites } of findings) {
      const cells = [
        row,
        safeText(line.partNumber),
        safeText(line.panel),
        '',
        rule,
        '',
        safeText(text),
        showNumbers(values),
        describeSources(cites),
      ];
      const target = sheet.addRow(cells);
      paintOutcome(target, 4, verdict);
      paintOutcome(target, 6, outcome);
      target.alignment = { vertical: 'top', wrapText: true };
    }
  }
  paintHeading(sheet, HEADINGS.length);
  WIDTHS.forEach((width, index) => {
    sheet.getColumn(index + 1).width = width;
  });
  setUpPrint(sheet, list);
}

/** The values as `name value`, in the units that their names say. */
function showNumbers(values: Readonly<Record<string, number>>): string {
  return Object.entries(values)
    .map(([key, value]) => `${key} ${Number(value.toFixed(4))}`)
    .join('; ');
}
