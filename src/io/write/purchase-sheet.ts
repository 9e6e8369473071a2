import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { rollUpPurchase } from '../../core/rollup/purchase.ts';
import { purchaseReport } from '../../core/rollup/purchase-report.ts';
import { planReportSheet } from './report-sheet.ts';
import type { SheetPlan } from './sheet-plan.ts';

/** What to order, by part over all panels. */
export function planPurchaseSheet(name: string, list: AuditedList, parts: PartIndex): SheetPlan {
  return planReportSheet(name, list, purchaseReport(list, rollUpPurchase(list, parts)));
}
