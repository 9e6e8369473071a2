import type { Worksheet } from 'exceljs';
import { SETTING_KEYS } from '../../core/intake/shop-settings.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { VERDICTS } from '../../core/model/outcome.ts';
import { DEMO_WORDS, SAFETY_WORDS } from '../../core/say/safety.ts';
import { SETTING_WORDS, showSetting } from '../../core/say/show-setting.ts';
import { fitHeight, font, isDemo, setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

const NAME_WIDTH = 58;
const VALUE_WIDTH = 62;

/** What the judgement rests on: file, day, catalogues, settings, counts, and the safety words. */
export function writeBasisSheet(sheet: Worksheet, list: AuditedList, date: string): void {
  sheet.getColumn(1).width = NAME_WIDTH;
  sheet.getColumn(2).width = VALUE_WIDTH;
  for (const [name, value] of facts(list, date)) {
    const row = sheet.addRow([name, value]);
    row.getCell(1).font = font({ bold: true });
    row.getCell(2).font = font();
    row.getCell(2).alignment = { horizontal: 'left' };
  }
  sheet.addRow([]);
  for (const text of isDemo(list) ? [DEMO_WORDS, ...SAFETY_WORDS] : SAFETY_WORDS) writeWords(sheet, text);
  setUpPrint(sheet, list);
}

function facts(list: AuditedList, date: string): readonly (readonly [string, string | number])[] {
  return [
    ['List', safeText(list.file)],
    ['Sheet', safeText(list.sheet || '(the only table)')],
    ['Headings in row', list.headerRow],
    ['Judged on', date],
    ['Fastener rows', list.lines.length],
    ['Rows that are no press-in fasteners', list.others.length],
    ['Hidden rows, judged like the rest', list.hiddenRows],
    ...VERDICTS.map((verdict) => [`Rows: ${verdict}`, list.totals[verdict]] as const),
    ...list.catalogues.map(({ name, demo }) => ['Catalogue', catalogueName(name, demo)] as const),
    ...SETTING_KEYS.map((key) => [`Setting: ${SETTING_WORDS[key].name}`, showSetting(key, list.shop)] as const),
  ];
}

function catalogueName(name: string, demo: boolean): string {
  return safeText(demo ? `${name} (demo: not for production)` : name);
}

/** One sentence across both columns. */
function writeWords(sheet: Worksheet, text: string): void {
  const row = sheet.addRow([text]);
  sheet.mergeCells(row.number, 1, row.number, 2);
  row.getCell(1).font = font({ bold: text === DEMO_WORDS });
  row.getCell(1).alignment = { wrapText: true, vertical: 'top' };
  fitHeight(row, [{ text, width: NAME_WIDTH + VALUE_WIDTH }]);
}
