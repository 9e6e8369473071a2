import { exchangeRows, itemOfRow } from '../caching/in-order.ts';
import type { PartIndex } from '../catalogue/find-part.ts';
import type { AuditedLine, AuditedList, Totals } from '../model/audited.ts';
import type { Line } from '../model/line.ts';
import type { HardwareList, OtherRow } from '../model/list.ts';
import type { Subject } from '../rules/rule.ts';
import { auditedLines, type ChangedLines, findChangedLines } from './audited-lines.ts';
import type { Basis } from './basis.ts';
import { conflictNotices } from './conflict-notices.ts';
import { createRowJudge, type JudgedRow, type RowJudge } from './judge-rows.ts';
import { type ChangedRows, judgeTogether, judgeTogetherAgain, type Together } from './together.ts';

/** Hooks into a long run. */
export interface Watch {
  /** Called now and then with the share done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
  /** Asked now and then; true ends the run with `Cancelled`. */
  readonly isCancelled?: () => boolean;
}

/** The user ended a run. */
export class Cancelled extends Error {
  override readonly name = 'Cancelled';
}

/** A list with every row judged by itself: what a session keeps, and starts from when a cell changes. */
export interface JudgedList {
  readonly list: HardwareList;
  readonly basis: Basis;
  /** Judges further rows of this list, those that say the same as one before at no cost. */
  readonly judgeRow: RowJudge;
  /** Fastener rows in file order. */
  readonly rows: readonly JudgedRow[];
  readonly others: readonly OtherRow[];
}

const ROWS_BETWEEN_REPORTS = 256;

/** Judges every row by itself. Throws `Cancelled` when the watch says so. */
export function judgeList(list: HardwareList, basis: Basis, watch: Watch = {}): JudgedList {
  const judgeRow = createRowJudge(basis);
  const rows: JudgedRow[] = [];
  const others: OtherRow[] = [...list.others];
  list.lines.forEach((line, index) => {
    if (index % ROWS_BETWEEN_REPORTS === 0) report(index / list.lines.length, watch);
    const what = isLeftOut(line, basis.parts);
    if (what) others.push({ row: line.row, cells: line.cells, what });
    else rows.push(judgeRow(line, piecesInProduct(list, line)));
  });
  return { list, basis, judgeRow, rows, others: others.sort((a, b) => a.row - b.row) };
}

/** Judges the whole list, rows by themselves and together. Throws `Cancelled` when the watch says so. */
export function auditList(list: HardwareList, basis: Basis, watch: Watch = {}): AuditedList {
  return toAuditedList(judgeList(list, basis, watch));
}

/** A list as judged: every row by itself, the rows together, and both as shown. */
export interface Audit {
  readonly judged: JudgedList;
  readonly together: Together;
  readonly audited: AuditedList;
}

/** Adds what the rules over the whole list say, and counts. */
export function auditJudged(judged: JudgedList): Audit {
  const together = judgeTogether(judged.rows.map(({ subject }) => subject));
  const lines = auditedLines(judged, together);
  return { judged, together, audited: show(judged, lines, totalsOf(lines)) };
}

/** Seeks the remedies of all rows now, for whoever wants to see how it goes on; each is sought when first asked for otherwise. */
export function seekRemedies(lines: readonly AuditedLine[], watch: Watch): void {
  lines.forEach((line, index) => {
    if (index % ROWS_BETWEEN_REPORTS === 0) report(index / lines.length, watch);
    seek(line);
  });
}

/** To ask for them is to have them sought. */
const seek = ({ remedies }: AuditedLine) => remedies;

/** A list as judged again. */
export interface AuditAgain extends Audit {
  /** Lines that are others than before, in file order. */
  readonly changed: readonly AuditedLine[];
}

/** The same after some rows were judged anew; what nothing has changed for comes out as the same object. */
export function auditAgain(before: Audit, judged: JudgedList, rows: ChangedRows): AuditAgain {
  const touched = new Set<Subject>();
  const all = () => judged.rows.map(({ subject }) => subject);
  const together = judgeTogetherAgain(before.together, rows, all, touched);
  const changes = findChangedLines(before.audited.lines, judged, together, { ...rows, touched });
  const lines = exchangeRows(before.audited.lines, changes);
  const changed = [...changes.values()].filter((line) => line !== null).sort((a, b) => a.row - b.row);
  return { judged, together, audited: show(judged, lines, totalsAgain(before.audited, changes)), changed };
}

function totalsAgain({ lines, totals }: AuditedList, changes: ChangedLines): Totals {
  const again = { ...totals };
  for (const [row, line] of changes) {
    const former = itemOfRow(lines, row);
    if (former) again[former.verdict] -= 1;
    if (line) again[line.verdict] += 1;
  }
  return again;
}

export function toAuditedList(judged: JudgedList): AuditedList {
  return auditJudged(judged).audited;
}

function show(judged: JudgedList, lines: readonly AuditedLine[], totals: Totals): AuditedList {
  const { list, basis, others } = judged;
  return {
    file: list.file,
    sheet: list.sheet,
    sheets: list.sheets,
    headerRow: list.headerRow,
    columns: list.columns,
    catalogues: basis.catalogues.map(({ name, demo }) => ({ name, demo })),
    shop: basis.shop,
    notices: [...list.notices, ...conflictNotices(basis.parts.conflicts)],
    hiddenRows: list.hiddenRows,
    ...(list.reading && { reading: list.reading }),
    lines,
    others,
    totals,
  };
}

/** Pieces of a row in the whole product; null where a quantity on the way cannot be used. */
export function piecesInProduct({ relations }: HardwareList, { row }: Line): number | null {
  return relations.extended.get(row) ?? null;
}

/**
 * What a row is when it is no press-in fastener, or null. A part on file is always judged, and so is a row that nobody can
 * place: leaving a fastener out is worse than asking about a washer.
 */
export function isLeftOut(line: Line, parts: PartIndex): string | null {
  return line.seemsToBe === null || parts.find(line.partNumber) ? null : line.seemsToBe;
}

/** How many rows have each verdict. */
function totalsOf(lines: readonly AuditedLine[]): Totals {
  const totals = { holds: 0, marginal: 0, fails: 0, unknown: 0 };
  for (const { verdict } of lines) totals[verdict] += 1;
  return totals;
}

function report(share: number, { onProgress, isCancelled }: Watch): void {
  if (isCancelled?.()) throw new Cancelled('the run was ended by the user');
  onProgress?.(share);
}
