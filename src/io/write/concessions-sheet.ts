import type { Worksheet } from 'exceljs';
import { describeStanding } from '../../core/concede/describe.ts';
import { CONCESSION_HEADINGS, showForReadingBack } from '../../core/concede/read-back.ts';
import { standing } from '../../core/concede/standing.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Concession } from '../../core/model/concession.ts';
import { listRules, rules } from '../../core/rules/index.ts';
import { fitHeight, font, paintHeading, paintOutcome, setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

const WIDTHS = [8, 25, 11, 22, 44, 44, 20, 12, 40, 20];
const OUTCOME_COLUMN = 3;
const TITLES = new Map([...rules, ...listRules].map(({ id, title }) => [id, title]));

/** Every accepted deviation: what, why, by whom, when, and whether it still applies to the row as it is. */
export function writeConcessionsSheet(sheet: Worksheet, list: AuditedList, concessions: readonly Concession[]): void {
  for (const [index, width] of WIDTHS.entries()) sheet.getColumn(index + 1).width = width;
  sheet.getColumn(WIDTHS.length).hidden = true;
  sheet.addRow([...CONCESSION_HEADINGS]);
  for (const concession of concessions) writeConcession(sheet, list, concession);
  paintHeading(sheet, WIDTHS.length);
  setUpPrint(sheet, list);
}

function writeConcession(sheet: Worksheet, list: AuditedList, concession: Concession): void {
  const { row, rule, outcome, says, reason, by, date } = concession;
  const line = list.lines.find((one) => one.row === row) ?? null;
  const state = describeStanding(standing(concession, line));
  const part = safeText(line?.line.partNumber ?? '');
  const words = [TITLES.get(rule) ?? rule, says, reason, by, date, state].map(safeText);
  const target = sheet.addRow([row, part, '', ...words, safeText(showForReadingBack(concession))]);
  target.font = font();
  target.alignment = { vertical: 'top', wrapText: true };
  paintOutcome(target.getCell(OUTCOME_COLUMN), outcome);
  fitHeight(
    target,
    words.map((text, index) => ({ text, width: WIDTHS[index + OUTCOME_COLUMN] ?? 40 })),
  );
}
