import type { PartIndex } from '../catalogue/find-part.ts';
import type { AuditedLine, AuditedList, Totals } from '../model/audited.ts';
import type { Line } from '../model/line.ts';
import type { HardwareList, OtherRow } from '../model/list.ts';
import { auditedLines } from './audited-lines.ts';
import type { Basis } from './basis.ts';
import { conflictNotices } from './conflict-notices.ts';
import { createRowJudge, type JudgedRow, type RowJudge } from './judge-rows.ts';

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

/** A list as judged before, for what has not changed since. */
export interface Before {
  readonly judged: JudgedList;
  readonly audited: AuditedList;
}

/**
 * Adds what the rules over the whole list say, and counts. A row that nothing has changed for since `before` comes out as the same
 * object.
 */
export function toAuditedList(judged: JudgedList, before?: Before): AuditedList {
  const { list, basis, others } = judged;
  const lines = auditedLines(judged, before);
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
    totals: totalsOf(lines),
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
  return parts.find(line.partNumber) ? null : line.seemsToBe;
}

/** How many rows have each verdict. */
export function totalsOf(lines: readonly AuditedLine[]): Totals {
  const totals = { holds: 0, marginal: 0, fails: 0, unknown: 0 };
  for (const { verdict } of lines) totals[verdict] += 1;
  return totals;
}

function report(share: number, { onProgress, isCancelled }: Watch): void {
  if (isCancelled?.()) throw new Cancelled('the run was ended by the user');
  onProgress?.(share);
}
