import type { Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import { VERDICTS } from '../../core/model/outcome.ts';
import { DEMO_WORDS, SAFETY_WORDS } from '../../core/say/safety.ts';
import { setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

/** What the judgement rests on: file, day, catalogues, settings, counts, and the safety words. */
export function writeBasisSheet(sheet: Worksheet, list: AuditedList, date: string): void {
  const facts: [string, string | number][] = [
    ['List', safeText(list.file)],
    ['Sheet', safeText(list.sheet || '(the only table)')],
    ['Headings in row', list.headerRow],
    ['Judged on', date],
    ['Fastener rows', list.lines.length],
    ['Rows that are no press-in fasteners', list.others.length],
    ['Hidden rows, judged like the rest', list.hiddenRows],
    ...VERDICTS.map((verdict): [string, number] => [`Rows: ${verdict}`, list.totals[verdict]]),
    ...list.catalogues.map(({ name, demo }): [string, string] => [
      'Catalogue',
      safeText(demo ? `${name} (demo: not for production)` : name),
    ]),
    ...Object.entries(SETTING_NAMES).map(([key, label]): [string, string | number] => [
      label,
      list.shop[key as keyof typeof SETTING_NAMES],
    ]),
  ];
  for (const fact of facts) sheet.addRow(fact).getCell(1).font = { bold: true };
  sheet.addRow([]);
  const words = list.catalogues.some(({ demo }) => demo) ? [DEMO_WORDS, ...SAFETY_WORDS] : SAFETY_WORDS;
  for (const text of words) {
    const row = sheet.addRow([text]);
    sheet.mergeCells(row.number, 1, row.number, 2);
    row.getCell(1).alignment = { wrapText: true, vertical: 'top' };
    row.height = text.length > 110 ? 32 : 18;
  }
  sheet.getColumn(1).width = 44;
  sheet.getColumn(2).width = 60;
  sheet.getColumn(2).alignment = { horizontal: 'left' };
  setUpPrint(sheet, list);
}

const SETTING_NAMES = {
  thicknessStandard: 'Setting: mill tolerance by',
  sheetWidth: 'Setting: sheet width in the tolerance tables',
  judgeThicknessAt: 'Setting: minimum sheet judged at',
  hardnessMarginHrb: 'Setting: hardness margin (HRB points)',
  silence: 'Setting: silence of the list counts as',
  buildQuantity: 'Setting: build quantity',
  units: 'Setting: units shown',
} as const;
