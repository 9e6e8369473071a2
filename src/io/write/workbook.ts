import type { Workbook, Worksheet } from 'exceljs';
import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { NO_WORK, type WorkRecord } from '../../core/model/change-record.ts';
import type { Report } from '../../core/rollup/report.ts';
import { writeBasisSheet } from './basis-sheet.ts';
import { writeChangesSheet } from './changes-sheet.ts';
import { writeCompareSheet } from './compare-sheet.ts';
import { writeConcessionsSheet } from './concessions-sheet.ts';
import { writeFindingsSheet } from './findings-sheet.ts';
import { writeListSheet } from './list-sheet.ts';
import { writePressSheet } from './press-sheet.ts';
import { writePurchaseSheet } from './purchase-sheet.ts';
import { writeQuestionsSheet } from './questions-sheet.ts';
import { safeSheetName } from './safe-text.ts';

/** A sheet of ours that goes with a judged list, wherever the list itself stands. */
export interface OwnSheet {
  readonly name: string;
  readonly write: (sheet: Worksheet) => void;
}

const OURS = {
  findings: 'Findings',
  purchase: 'Purchase',
  press: 'Press sheet',
  questions: 'Questions',
  concessions: 'Concessions',
  changes: 'Changes',
  compare: 'Compare',
  basis: 'Basis',
};

/**
 * A new workbook: the sender's columns as they were with ours beside them, then sheets of findings, of what to order, press and ask, of
 * what was accepted and changed (where anything was), of what differs from an earlier revision (where it was compared with one), and of what the judgement rests on. `date` is the day of the judgement, as it is to be shown; `parts` are those it was made with.
 */
export async function writeWorkbook(
  list: AuditedList,
  date: string,
  parts: PartIndex,
  work: WorkRecord = NO_WORK,
  compared: Report | null = null,
): Promise<Uint8Array> {
  const { default: exceljs } = await import('exceljs');
  const workbook: Workbook = new exceljs.Workbook();
  workbook.creator = 'Clinchsheet';
  writeListSheet(workbook.addWorksheet(safeSheetName(list.sheet || 'List', Object.values(OURS))), list);
  for (const { name, write } of ownSheets(list, date, parts, work, compared)) write(workbook.addWorksheet(name));
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

/** Our sheets in order. */
export function ownSheets(
  list: AuditedList,
  date: string,
  parts: PartIndex,
  { concessions, changes, pressOrder }: WorkRecord,
  compared: Report | null,
): readonly OwnSheet[] {
  const all: readonly (OwnSheet | null)[] = [
    { name: OURS.findings, write: (sheet) => writeFindingsSheet(sheet, list) },
    { name: OURS.purchase, write: (sheet) => writePurchaseSheet(sheet, list, parts) },
    { name: OURS.press, write: (sheet) => writePressSheet(sheet, list, parts, pressOrder) },
    { name: OURS.questions, write: (sheet) => writeQuestionsSheet(sheet, list) },
    concessions.length > 0
      ? { name: OURS.concessions, write: (sheet) => writeConcessionsSheet(sheet, list, concessions) }
      : null,
    changes.length > 0 ? { name: OURS.changes, write: (sheet) => writeChangesSheet(sheet, list, changes) } : null,
    compared && { name: OURS.compare, write: (sheet) => writeCompareSheet(sheet, list, compared) },
    { name: OURS.basis, write: (sheet) => writeBasisSheet(sheet, list, date) },
  ];
  return all.filter((sheet) => sheet !== null);
}
