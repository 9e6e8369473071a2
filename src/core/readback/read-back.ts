import { ownSheetKind } from '../intake/own-sheets.ts';
import type { AuditedList } from '../model/audited.ts';
import type { ChangeRecord } from '../model/change-record.ts';
import type { Concession } from '../model/concession.ts';
import type { RawFile, RawTable } from '../model/raw.ts';
import { type EarlierRows, readEarlierRows } from './earlier-rows.ts';
import { findLatestSheet } from './latest-sheet.ts';
import { readChanges } from './read-changes.ts';
import { type LostConcession, type ReadConcessions, readConcessions } from './read-concessions.ts';

/** The user's earlier work as an exported workbook holds it. */
export interface ReadBack {
  /** Each with the row that it stands on in this file. */
  readonly concessions: readonly Concession[];
  /** What was changed before the export, oldest first; concessions that are not taken over stand at its end. */
  readonly changes: readonly ChangeRecord[];
  /** What could not be taken over and why, in sentences. */
  readonly notices: readonly string[];
}

/** Reads concessions and changes of the last export of this list. A file that is no export of ours holds none. */
export function readBack(file: RawFile, list: AuditedList): ReadBack {
  const earlier = readEarlierRows(file, list);
  const { concessions, lost } = concessionsOf(file, list, earlier);
  const sheet = findLatestSheet(file, 'changes', list.sheet);
  const changes = sheet ? readChanges(sheet, earlier) : [];
  const garbled = earlier.isKnown ? file.tables.filter(isGarbled).map(sayGarbled) : [];
  return {
    concessions,
    changes: [...changes, ...lost.map(toChange)],
    notices: [...lost.map(sayLost), ...garbled],
  };
}

/** Whether the workbook holds a sheet of concessions for the list: the next export in place must replace it, even by an empty one. */
export function holdsConcessions(file: RawFile, listSheet: string): boolean {
  return findLatestSheet(file, 'concessions', listSheet) !== null;
}

function concessionsOf(file: RawFile, list: AuditedList, earlier: EarlierRows): ReadConcessions {
  const sheet = findLatestSheet(file, 'concessions', list.sheet);
  return sheet ? readConcessions(sheet, list, earlier) : { concessions: [], lost: [] };
}

/** A sheet that is called like ours, in a workbook of ours, and does not begin like it. */
function isGarbled(table: RawTable): boolean {
  return /^(?:concessions|changes)(?: \d+)?$/i.test(table.name) && ownSheetKind(table) === null;
}

function sayGarbled({ name }: RawTable): string {
  return `The sheet “${name}” has lost its headings: nothing was taken over from it.`;
}

function sayLost({ former, partNumber, says, why }: LostConcession): string {
  return `The concession “${says}” of ${partNumber || 'a part'} (row ${former} of the file before) has lapsed: ${why}.`;
}

function toChange({ by, says, reason, partNumber, why }: LostConcession): ChangeRecord {
  const detail = { row: null, where: says, before: `accepted: ${reason}`, after: why };
  const what = `concession of ${partNumber || 'a part'} lapsed`;
  return { when: '', by, what, undone: false, earlier: true, details: [detail] };
}
