import type { Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Report } from '../../core/rollup/report.ts';
import { writeReportSheet } from './report-sheet.ts';

/** What differs from an earlier revision of the list. */
export function writeCompareSheet(sheet: Worksheet, list: AuditedList, compared: Report): void {
  writeReportSheet(sheet, list, compared);
}
