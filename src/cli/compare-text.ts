import { compareReport } from '../core/compare/compare-report.ts';
import type { Comparison } from '../core/compare/comparison.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { CsvOptions } from '../io/write/csv-rows.ts';
import type { Format } from './arguments.ts';
import { showReport } from './show-report.ts';

/** A comparison as text: tables, CSV, or JSON in the shape that `audit.schema.json` describes. */
export async function compareText(
  comparison: Comparison,
  before: AuditedList,
  after: AuditedList,
  format: Exclude<Format, 'xlsx'>,
  csv: CsvOptions,
): Promise<string> {
  const report = compareReport(comparison, before, after);
  if (format === 'table') return showReport(report);
  if (format === 'json') return `${JSON.stringify(toJson(comparison, before, after, report.foot), null, 2)}\n`;
  const { writeReportCsv } = await import('../io/write/report-csv.ts');
  return writeReportCsv(report, csv);
}

function toJson(comparison: Comparison, before: AuditedList, after: AuditedList, words: readonly string[]) {
  const { file, sheet, catalogues } = after;
  return {
    report: 'compare',
    list: { file, sheet, catalogues },
    before: { file: before.file, sheet: before.sheet },
    ...comparison,
    words,
  };
}
