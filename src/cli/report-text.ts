import type { PartIndex } from '../core/catalogue/find-part.ts';
import type { AuditedList } from '../core/model/audited.ts';
import { rollUpPress } from '../core/rollup/press.ts';
import { pressReport } from '../core/rollup/press-report.ts';
import { rollUpPurchase } from '../core/rollup/purchase.ts';
import { purchaseReport } from '../core/rollup/purchase-report.ts';
import { askSender, showQuestions } from '../core/rollup/questions.ts';
import { questionsReport } from '../core/rollup/questions-report.ts';
import type { Report } from '../core/rollup/report.ts';
import type { CsvOptions } from '../io/write/csv-rows.ts';
import type { Format, ReportName } from './arguments.ts';
import { showReport } from './show-report.ts';

type RollUpName = Exclude<ReportName, 'findings'>;
type TextFormat = Exclude<Format, 'xlsx'>;

/** A roll-up in three forms, each made only when it is asked for. */
interface RollUp {
  /** The plain object, for JSON. */
  readonly data: object;
  readonly report: () => Report;
  /** For a terminal, where that is not the report's tables. */
  readonly text?: () => string;
}

/** A roll-up as text: tables (questions: a letter), CSV, or JSON as the README says. */
export async function reportText(
  name: RollUpName,
  format: TextFormat,
  list: AuditedList,
  parts: PartIndex,
  csv: CsvOptions,
): Promise<string> {
  const { data, report, text } = ROLL_UPS[name](list, parts);
  if (format === 'table') return text ? text() : showReport(report());
  if (format === 'json') return `${JSON.stringify(toJson(name, data, report().foot, list), null, 2)}\n`;
  const { writeReportCsv } = await import('../io/write/report-csv.ts');
  return writeReportCsv(report(), csv);
}

const ROLL_UPS: Readonly<Record<RollUpName, (list: AuditedList, parts: PartIndex) => RollUp>> = {
  purchase(list, parts) {
    const purchase = rollUpPurchase(list, parts);
    return { data: purchase, report: () => purchaseReport(list, purchase) };
  },
  press(list, parts) {
    const press = rollUpPress(list, parts);
    return { data: press, report: () => pressReport(list, press) };
  },
  questions(list) {
    const questions = askSender(list);
    const text = () => showQuestions(list, questions);
    return { data: { questions }, report: () => questionsReport(list, questions), text };
  },
};

function toJson(report: RollUpName, data: object, foot: readonly string[], { file, sheet, catalogues }: AuditedList) {
  return { report, list: { file, sheet, catalogues }, ...data, words: foot };
}
