import type { Workbook } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import { writeBasisSheet } from './basis-sheet.ts';
import { writeFindingsSheet } from './findings-sheet.ts';
import { writeListSheet } from './list-sheet.ts';
import { safeSheetName } from './safe-text.ts';

const FINDINGS = 'Findings';
const BASIS = 'Basis';

/**
 * A new workbook: the sender's columns as they were with ours beside them, a sheet of findings, and a sheet that says what the
 * judgement rests on. `date` is the day of the judgement, as it is to be shown.
 */
export async function writeWorkbook(list: AuditedList, date: string): Promise<Uint8Array> {
  const { default: exceljs } = await import('exceljs');
  const workbook: Workbook = new exceljs.Workbook();
  workbook.creator = 'Clinchsheet';
  writeListSheet(workbook.addWorksheet(safeSheetName(list.sheet || 'List', [FINDINGS, BASIS])), list);
  writeFindingsSheet(workbook.addWorksheet(FINDINGS), list);
  writeBasisSheet(workbook.addWorksheet(BASIS), list, date);
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
