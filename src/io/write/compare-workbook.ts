import type { AuditedList } from '../../core/model/audited.ts';
import type { Report } from '../../core/rollup/report.ts';
import { planBasisSheet } from './basis-sheet.ts';
import { planReportSheet } from './report-sheet.ts';
import { writeBook } from './write-book.ts';

/** A workbook of a comparison alone, with what both lists were judged by. `date` is the day as it is to be shown. */
export async function writeCompareWorkbook(list: AuditedList, compared: Report, date: string): Promise<Uint8Array> {
  return writeBook([planReportSheet('Compare', list, compared), planBasisSheet('Basis', list, date)]);
}
