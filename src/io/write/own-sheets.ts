import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import type { WorkRecord } from '../../core/model/change-record.ts';
import type { Report } from '../../core/rollup/report.ts';
import { planBasisSheet } from './basis-sheet.ts';
import { planChangesSheet } from './changes-sheet.ts';
import { planConcessionsSheet } from './concessions-sheet.ts';
import { planFindingsSheet } from './findings-sheet.ts';
import { planPressSheet } from './press-sheet.ts';
import { planPurchaseSheet } from './purchase-sheet.ts';
import { planQuestionsSheet } from './questions-sheet.ts';
import { planReportSheet } from './report-sheet.ts';
import type { SheetPlan } from './sheet-plan.ts';

const OURS = {
  findings: 'Findings',
  purchase: 'Purchase',
  press: 'Press sheet',
  questions: 'Questions',
  concessions: 'Concessions',
  changes: 'Changes',
  compare: 'Compare',
  basis: 'Basis',
};
/** Names of our sheets. */
export const OWN_NAMES: readonly string[] = Object.values(OURS);

const MEBIBYTE = 1024 * 1024;
/** What a sheet of findings may unpack to, and the workbook with it, so that it can be read again and opens without a long wait. */
const LARGEST_SHEET = 135 * MEBIBYTE;
const LARGEST_BOOK = 210 * MEBIBYTE;
/** What a row of the list takes with our cells and what other sheets say of it, and a finding: texts in a table of their own, or in their cells. */
const BYTES = { shared: { row: 1700, finding: 420 }, inline: { row: 2000, finding: 800 } };

/** Our sheets in order. `texts` tells where a workbook keeps the texts of cells, and so how many findings there is room for. */
export function planOwnSheets(
  list: AuditedList,
  date: string,
  parts: PartIndex,
  { concessions, changes, pressOrder, hadConcessions = false }: WorkRecord,
  compared: Report | null,
  texts: 'shared' | 'inline',
): readonly SheetPlan[] {
  const all: readonly (SheetPlan | null)[] = [
    planFindingsSheet(OURS.findings, list, roomForFindings(list, BYTES[texts])),
    planPurchaseSheet(OURS.purchase, list, parts),
    planPressSheet(OURS.press, list, parts, pressOrder),
    planQuestionsSheet(OURS.questions, list),
    concessions.length > 0 || hadConcessions ? planConcessionsSheet(OURS.concessions, list, concessions) : null,
    changes.length > 0 ? planChangesSheet(OURS.changes, list, changes) : null,
    compared && planReportSheet(OURS.compare, list, compared),
    planBasisSheet(OURS.basis, list, date),
  ];
  return all.filter((plan) => plan !== null);
}

/** So many findings that the workbook can be read again within the limits for reading, and opens in a spreadsheet. */
function roomForFindings({ lines, others }: AuditedList, bytes: { readonly row: number; readonly finding: number }) {
  const free = LARGEST_BOOK - (lines.length + others.length) * bytes.row;
  return Math.floor(Math.max(Math.min(LARGEST_SHEET, free), LARGEST_SHEET / 10) / bytes.finding);
}
