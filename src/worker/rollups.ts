import { rollUpPress } from '../core/rollup/press.ts';
import { inSetOrder } from '../core/rollup/press-order.ts';
import { pressReport } from '../core/rollup/press-report.ts';
import { rollUpPurchase } from '../core/rollup/purchase.ts';
import { purchaseReport } from '../core/rollup/purchase-report.ts';
import { askSender, type Question, questionKey } from '../core/rollup/questions.ts';
import { questionsReport } from '../core/rollup/questions-report.ts';
import type { Report } from '../core/rollup/report.ts';
import { writeReportCsv } from '../io/write/report-csv.ts';
import type { ReportAsk, Rollups } from './protocol.ts';
import type { Session } from './session.ts';

/** What the open list comes to: what to order, press and ask. */
export function rollUp({ audited, judged }: Session): Rollups {
  const { parts } = judged.basis;
  return {
    purchase: rollUpPurchase(audited, parts),
    press: rollUpPress(audited, parts),
    questions: askSender(audited),
  };
}

/** One report as a file. CSV is for whoever opens it, so it begins with the mark by which a spreadsheet knows UTF-8. */
export async function writeReport(session: Session, ask: ReportAsk): Promise<Uint8Array> {
  if (ask.format === 'csv') return new TextEncoder().encode(`\ufeff${writeReportCsv(reportOf(session, ask))}`);
  return writeBook(session, ask);
}

function reportOf(session: Session, ask: ReportAsk): Report {
  const { audited } = session;
  const { parts } = session.judged.basis;
  if (ask.which === 'purchase') return purchaseReport(audited, rollUpPurchase(audited, parts));
  if (ask.which === 'press') return pressReport(audited, inSetOrder(rollUpPress(audited, parts), ask.pressOrder));
  return questionsReport(audited, keptQuestions(session, ask));
}

/** What writes workbooks is loaded when the first is asked for. */
async function writeBook(session: Session, ask: ReportAsk): Promise<Uint8Array> {
  const { audited } = session;
  const { parts } = session.judged.basis;
  const { writeReportWorkbook } = await import('../io/write/report-workbook.ts');
  const { planPurchaseSheet } = await import('../io/write/purchase-sheet.ts');
  const { planPressSheet } = await import('../io/write/press-sheet.ts');
  const { planQuestionsSheet } = await import('../io/write/questions-sheet.ts');
  switch (ask.which) {
    case 'purchase':
      return writeReportWorkbook(planPurchaseSheet('Purchase', audited, parts));
    case 'press':
      return writeReportWorkbook(planPressSheet('Press sheet', audited, parts, ask.pressOrder));
    case 'questions':
      return writeReportWorkbook(planQuestionsSheet('Questions', audited, keptQuestions(session, ask)));
  }
}

function keptQuestions({ audited }: Session, { leftOut }: ReportAsk): readonly Question[] {
  return askSender(audited).filter((question) => !leftOut.includes(questionKey(question)));
}
