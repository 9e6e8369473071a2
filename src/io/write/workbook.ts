import type { PartIndex } from '../../core/catalogue/find-part.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import { NO_WORK, type WorkRecord } from '../../core/model/change-record.ts';
import type { Report } from '../../core/rollup/report.ts';
import { planListSheet } from './list-sheet.ts';
import { ownColumnsOf } from './own-columns.ts';
import { OWN_NAMES, planOwnSheets } from './own-sheets.ts';
import { safeSheetName } from './safe-text.ts';
import { writeBook } from './write-book.ts';
import { followRows, type WriteOptions } from './writing.ts';

/**
 * A new workbook: the sender's columns as they were with ours beside them, then sheets of findings, of what to order, press and ask, of
 * what was accepted and changed (where anything was), of what differs from an earlier revision (where it was compared with one), and of
 * what the judgement rests on. `date` is the day of the judgement, as it is to be shown; `parts` are those it was made with.
 * @throws Stopped when the caller has stopped the writing.
 */
export async function writeWorkbook(
  list: AuditedList,
  date: string,
  parts: PartIndex,
  work: WorkRecord = NO_WORK,
  compared: Report | null = null,
  options: WriteOptions = {},
): Promise<Uint8Array> {
  const name = safeSheetName(list.sheet || 'List', OWN_NAMES);
  const own = planOwnSheets(list, date, parts, work, compared, 'shared');
  const plans = [planListSheet(name, list, ownColumnsOf(list, work.concessions)), ...own];
  return writeBook(plans, followRows(plans, 0, options));
}
