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

/** The writing library is as big as the grid, so it is loaded when the first workbook is asked for. */
async function writeBook(session: Session, ask: ReportAsk): Promise<Uint8Array> {
  const { audited } = session;
  const { parts } = session.judged.basis;
  const { writeReportWorkbook } = await import('../io/write/report-workbook.ts');
  const { writePurchaseSheet } = await import('../io/write/purchase-sheet.ts');
  const { writePressSheet } = await import('../io/write/press-sheet.ts');
  const { writeQuestionsSheet } = await import('../io/write/questions-sheet.ts');
  switch (ask.which) {
    case 'purchase':
      return writeReportWorkbook('Purchase', (sheet) => writePurchaseSheet(sheet, audited, parts));
    case 'press':
      return writeReportWorkbook('Press sheet', (sheet) => writePressSheet(sheet, audited, parts, ask.pressOrder));
    case 'questions': {
      const questions = keptQuestions(session, ask);
      return writeReportWorkbook('Questions', (sheet) => writeQuestionsSheet(sheet, audited, questions));
    }
  }
}

function keptQuestions({ audited }: Session, { leftOut }: ReportAsk): readonly Question[] {
  return askSender(audited).filter((question) => !leftOut.includes(questionKey(question)));
}
