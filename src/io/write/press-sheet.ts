import type { Worksheet } from 'exceljs';
import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { rollUpPress } from '../../core/rollup/press.ts';
import { pressReport } from '../../core/rollup/press-report.ts';
import { writeReportSheet } from './report-sheet.ts';

/** What to press, panel by panel. */
export function writePressSheet(sheet: Worksheet, list: AuditedList, parts: PartIndex): void {
  writeReportSheet(sheet, list, pressReport(list, rollUpPress(list, parts)));
}
