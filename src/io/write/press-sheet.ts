import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { rollUpPress } from '../../core/rollup/press.ts';
import { inSetOrder, type PressOrder } from '../../core/rollup/press-order.ts';
import { pressReport } from '../../core/rollup/press-report.ts';
import { planReportSheet } from './report-sheet.ts';
import type { SheetPlan } from './sheet-plan.ts';

/** What to press, panel by panel, in the order that the user has set. */
export function planPressSheet(name: string, list: AuditedList, parts: PartIndex, order: PressOrder = []): SheetPlan {
  return planReportSheet(name, list, pressReport(list, inSetOrder(rollUpPress(list, parts), order)));
}
