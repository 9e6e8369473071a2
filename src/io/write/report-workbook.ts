import type { SheetPlan } from './sheet-plan.ts';
import { writeBook } from './write-book.ts';

/** A workbook of one report alone. */
export async function writeReportWorkbook(plan: SheetPlan): Promise<Uint8Array> {
  return writeBook([plan]);
}
