import type { Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import { basisOf } from '../../core/rollup/basis.ts';
import { DEMO_WORDS, SAFETY_WORDS } from '../../core/say/safety.ts';
import { fitHeight, font, isDemo, setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

const NAME_WIDTH = 58;
const VALUE_WIDTH = 62;

/** What the judgement rests on: file, day, catalogues, settings, counts, and the safety words. */
export function writeBasisSheet(sheet: Worksheet, list: AuditedList, date: string): void {
  sheet.getColumn(1).width = NAME_WIDTH;
  sheet.getColumn(2).width = VALUE_WIDTH;
  for (const [name, value] of basisOf(list, date)) {
    const row = sheet.addRow([name, typeof value === 'string' ? safeText(value) : value]);
    row.getCell(1).font = font({ bold: true });
    row.getCell(2).font = font();
    row.getCell(2).alignment = { horizontal: 'left' };
  }
  sheet.addRow([]);
  for (const text of isDemo(list) ? [DEMO_WORDS, ...SAFETY_WORDS] : SAFETY_WORDS) writeWords(sheet, text);
  setUpPrint(sheet, list);
}

/** One sentence across both columns. */
function writeWords(sheet: Worksheet, text: string): void {
  const row = sheet.addRow([text]);
  sheet.mergeCells(row.number, 1, row.number, 2);
  row.getCell(1).font = font({ bold: text === DEMO_WORDS });
  row.getCell(1).alignment = { wrapText: true, vertical: 'top' };
  fitHeight(row, [{ text, width: NAME_WIDTH + VALUE_WIDTH }]);
}
