import type { AuditedList } from '../../core/model/audited.ts';
import { askSender, type Question } from '../../core/rollup/questions.ts';
import { ANSWER_COLUMN, questionsReport } from '../../core/rollup/questions-report.ts';
import { planReportSheet } from './report-sheet.ts';
import type { SheetPlan } from './sheet-plan.ts';

const ANSWER_WIDTH = 44;

/** What to ask the sender, with a column for the answers. */
export function planQuestionsSheet(
  name: string,
  list: AuditedList,
  questions: readonly Question[] = askSender(list),
): SheetPlan {
  return planReportSheet(name, list, questionsReport(list, questions), { [ANSWER_COLUMN - 1]: ANSWER_WIDTH });
}
