import type { Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import { askSender, type Question } from '../../core/rollup/questions.ts';
import { ANSWER_COLUMN, questionsReport } from '../../core/rollup/questions-report.ts';
import { writeReportSheet } from './report-sheet.ts';

const ANSWER_WIDTH = 44;

/** What to ask the sender, with a column for the answers. */
export function writeQuestionsSheet(
  sheet: Worksheet,
  list: AuditedList,
  questions: readonly Question[] = askSender(list),
): void {
  writeReportSheet(sheet, list, questionsReport(list, questions));
  sheet.getColumn(ANSWER_COLUMN).width = ANSWER_WIDTH;
}
