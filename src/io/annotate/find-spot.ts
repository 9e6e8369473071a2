import { type ColumnRun, findOwnColumns } from '../../core/intake/own-columns.ts';
import type { AuditedList } from '../../core/model/audited.ts';
import type { Concession } from '../../core/model/concession.ts';
import type { RawTable } from '../../core/model/raw.ts';
import { wordsUnder } from '../write/look.ts';
import { CONCEDED, type OwnColumn, ownColumnsOf } from '../write/own-columns.ts';
import { type Beside, isFree, placeColumns } from './place-columns.ts';
import { placeNotes } from './place-notes.ts';
import type { SheetSurvey } from './survey.ts';

/** Where on the sheet our columns go, and the sentences under the list. */
export interface Spot {
  readonly own: readonly OwnColumn[];
  /** 0-based column from which ours stand, and that before which they end. */
  readonly start: number;
  readonly end: number;
  /** The columns are there already, as wide as the user has made them. */
  readonly keepsWidths: boolean;
  /** Columns of an earlier export, which are written over or cleared. */
  readonly earlier: ColumnRun | null;
  /** Sentences by row. */
  readonly notes: ReadonlyMap<number, string>;
}

/** Columns of an earlier export are written over; where they lack the one for concessions, the next must be free for it. */
export function findSpot(
  survey: SheetSurvey,
  beside: Beside,
  table: RawTable,
  list: AuditedList,
  concessions: readonly Concession[],
): Spot {
  const earlier = findEarlier(table, list);
  const headings = table.rows.find(({ number }) => number === list.headerRow)?.cells ?? [];
  const hadConceded = earlier !== null && headings.slice(earlier.start, earlier.end).includes(CONCEDED);
  const own = ownColumnsOf(list, concessions, hadConceded);
  const more = earlier ? own.length - (earlier.end - earlier.start) : 0;
  const fits = earlier !== null && (more === 0 || (more === 1 && isFree(survey, beside, earlier.end)));
  const start = fits ? earlier.start : placeColumns(survey, beside, own.length);
  const end = start + own.length;
  const words = wordsUnder(list);
  const rows = placeNotes(survey, table, { start, end }, words);
  const notes = new Map(rows.map((row, index) => [row, words[index] ?? '']));
  return { own, start, end, keepsWidths: fits && more === 0, earlier, notes };
}

/** Our columns of an earlier export, if they still stand side by side. */
export function findEarlier(table: RawTable, list: AuditedList): ColumnRun | null {
  const headings = table.rows.find(({ number }) => number === list.headerRow)?.cells ?? [];
  const [first] = findOwnColumns(headings);
  return first ?? null;
}
