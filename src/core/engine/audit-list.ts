import type { PartIndex } from '../catalogue/find-part.ts';
import type { AuditedLine, AuditedList, Remedy, Totals } from '../model/audited.ts';
import type { Catalogue } from '../model/fastener.ts';
import type { Finding } from '../model/finding.ts';
import type { Line } from '../model/line.ts';
import type { HardwareList, OtherRow } from '../model/list.ts';
import type { VERDICTS } from '../model/outcome.ts';
import type { ShopSettings } from '../model/shop.ts';
import { listRules, rules } from '../rules/index.ts';
import type { Subject } from '../rules/rule.ts';
import { auditLine, decide, runListRule } from './audit-line.ts';
import { conflictNotices } from './conflict-notices.ts';
import { prepare } from './prepare.ts';
import { summariseFastener, summariseRequirement, summariseSheet } from './summarise.ts';

/** What an audit rests on. */
export interface Basis {
  readonly parts: PartIndex;
  readonly catalogues: readonly Catalogue[];
  readonly shop: ShopSettings;
  /** Finds parts that would hold instead, for rows that do not. */
  readonly findRemedies?: (subject: Subject) => readonly Remedy[];
}

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

/** A row with what the rules over single rows say of it: all that is kept between edits. */
export interface JudgedRow {
  readonly subject: Subject;
  readonly findings: readonly Finding[];
  readonly remedies: readonly Remedy[];
}

/** A list with every row judged by itself: what a session keeps, and starts from when a cell changes. */
export interface JudgedList {
  readonly list: HardwareList;
  readonly basis: Basis;
  /** Fastener rows in file order. */
  readonly rows: readonly JudgedRow[];
  readonly others: readonly OtherRow[];
}

const ROWS_BETWEEN_REPORTS = 256;

/** Judges every row by itself. Throws `Cancelled` when the watch says so. */
export function judgeList(list: HardwareList, basis: Basis, watch: Watch = {}): JudgedList {
  const rows: JudgedRow[] = [];
  const others: OtherRow[] = [...list.others];
  list.lines.forEach((line, index) => {
    if (index % ROWS_BETWEEN_REPORTS === 0) report(index / list.lines.length, watch);
    const what = isLeftOut(line, basis.parts);
    if (what) others.push({ row: line.row, cells: line.cells, what });
    else rows.push(judgeRow(line, basis));
  });
  return { list, basis, rows, others: others.sort((a, b) => a.row - b.row) };
}

/** Judges the whole list, rows by themselves and together. Throws `Cancelled` when the watch says so. */
export function auditList(list: HardwareList, basis: Basis, watch: Watch = {}): AuditedList {
  return toAuditedList(judgeList(list, basis, watch));
}

/** Adds what the rules over the whole list say, and counts. A row that nothing has changed for comes out as the same object. */
export function toAuditedList({ list, basis, rows, others }: JudgedList): AuditedList {
  const subjects = rows.map(({ subject }) => subject);
  const added = listRules.map((rule) => runListRule(rule, subjects));
  const lines = rows.map((row) =>
    toAuditedLine(
      row,
      added.flatMap((findings) => findings.get(row.subject) ?? []),
      list.relations.extended.get(row.subject.line.row) ?? null,
    ),
  );
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

/** One row by the rules over single rows. Remedies are sought where those do not hold. */
export function judgeRow(line: Line, basis: Basis): JudgedRow {
  const subject = prepare(line, basis.parts, basis.shop);
  const findings = auditLine(subject, rules);
  const { verdict } = decide(findings);
  return { subject, findings, remedies: verdict === 'holds' ? [] : (basis.findRemedies?.(subject) ?? []) };
}

/** Last outcome of each judged row, with the list findings and the quantity it was made with. */
const made = new WeakMap<JudgedRow, { readonly added: string; readonly line: AuditedLine }>();

function toAuditedLine(row: JudgedRow, added: readonly Finding[], extendedQuantity: number | null): AuditedLine {
  const key = [extendedQuantity, ...added.map(({ rule, says, text }) => `${rule} ${says} ${text}`)].join('\n');
  const before = made.get(row);
  if (before?.added === key) return before.line;
  const line = { ...auditedLine(row, added), extendedQuantity };
  made.set(row, { added: key, line });
  return line;
}

function auditedLine(
  { subject, findings: own, remedies }: JudgedRow,
  added: readonly Finding[],
): Omit<AuditedLine, 'extendedQuantity'> {
  const findings = added.length > 0 ? [...own, ...added] : own;
  return {
    row: subject.line.row,
    line: subject.line,
    ...decide(findings),
    findings,
    fastener: summariseFastener(subject),
    sheet: summariseSheet(subject),
    requires: summariseRequirement(subject),
    quantity: subject.line.quantity.value,
    remedies,
  };
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
  const count = (verdict: (typeof VERDICTS)[number]) => lines.filter((line) => line.verdict === verdict).length;
  return { holds: count('holds'), marginal: count('marginal'), fails: count('fails'), unknown: count('unknown') };
}

function report(share: number, { onProgress, isCancelled }: Watch): void {
  if (isCancelled?.()) throw new Cancelled('the run was ended by the user');
  onProgress?.(share);
}
