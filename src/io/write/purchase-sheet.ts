import type { Worksheet } from 'exceljs';
import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { rollUpPurchase } from '../../core/rollup/purchase.ts';
import { purchaseReport } from '../../core/rollup/purchase-report.ts';
import { writeReportSheet } from './report-sheet.ts';

/** What to order, by part over all panels. */
export function writePurchaseSheet(sheet: Worksheet, list: AuditedList, parts: PartIndex): void {
  writeReportSheet(sheet, list, purchaseReport(list, rollUpPurchase(list, parts)));
}
