import { itemBy, itemOfRow } from '../caching/in-order.ts';
import type { AuditedLine } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import type { Subject } from '../rules/rule.ts';
import { decide } from './audit-line.ts';
import type { JudgedList } from './audit-list.ts';
import { type AllSaid, AuditedRow } from './audited-row.ts';
import type { JudgedRow } from './judge-rows.ts';
import { saySame } from './say-finding.ts';
import { type ChangedRows, findingsOf, type Together } from './together.ts';

/** Every fastener row with what the rules over the whole list add to it. */
export function auditedLines(judged: JudgedList, together: Together): readonly AuditedLine[] {
  const audit = createLineAudit(together);
  return judged.rows.map((row) => audit(row));
}

/** What has changed since a list was judged: rows, and those of which the rules over the whole list may say something else now. */
export interface Changes extends ChangedRows {
  readonly touched: ReadonlySet<Subject>;
}

/** Lines that are others than before, by their rows; null where there is none any more. */
export type ChangedLines = ReadonlyMap<number, AuditedLine | null>;

/** The lines that have changed; one that says the same is not among them. */
export function findChangedLines(
  before: readonly AuditedLine[],
  judged: JudgedList,
  together: Together,
  { gone, come, touched }: Changes,
): ChangedLines {
  const audit = createLineAudit(together);
  const isNew = new Set(come);
  const lines = new Map<number, AuditedLine | null>(gone.map(({ line }) => [line.row, null]));
  for (const subject of new Set([...touched, ...come])) {
    const { row } = subject.line;
    const judgedRow = itemBy(judged.rows, row, rowOfJudged);
    const former = isNew.has(subject) ? undefined : itemOfRow(before, row);
    const line = judgedRow && audit(judgedRow, former);
    if (line && line !== former) lines.set(row, line);
  }
  return lines;
}

const rowOfJudged = ({ subject }: JudgedRow) => subject.line.row;

/** Puts together what is said of a row; `former` comes out where it says just that. */
function createLineAudit(together: Together): (row: JudgedRow, former?: AuditedLine) => AuditedLine {
  const join = createJoin();
  return (row, former) => {
    const added = findingsOf(together, row.subject);
    if (former?.extendedQuantity === row.subject.pieces && isSaid(former, row, added)) return former;
    return new AuditedRow(row, join(row.judged, added));
  };
}

/** Does a line say just what its row says by itself, and what is added now? */
function isSaid({ findings }: AuditedLine, { judged }: JudgedRow, added: readonly Finding[]): boolean {
  const own = judged.findings.length;
  if (findings.length !== own + added.length) return false;
  return added.every((finding, index) => saySame(findings[own + index], finding));
}

/** What is said of rows so far, and what it becomes with one finding more. */
interface Joined {
  readonly said: AllSaid;
  readonly more: Map<Finding, Joined>;
}

/** Adds findings to what a row says by itself; the same findings said give the same object, for rows that say the same. */
function createJoin(): (own: AllSaid, added: readonly Finding[]) => AllSaid {
  const known = new Map<AllSaid, Joined>();
  return (own, added) => {
    if (added.length === 0) return own;
    let joined = stepTo(known, own, () => own);
    for (const finding of added) {
      const { said, more } = joined;
      joined = stepTo(more, finding, () => join(said, finding));
    }
    return joined.said;
  };
}

function stepTo<Key>(steps: Map<Key, Joined>, key: Key, say: () => AllSaid): Joined {
  let next = steps.get(key);
  if (!next) {
    next = { said: say(), more: new Map() };
    steps.set(key, next);
  }
  return next;
}

function join({ findings: before }: AllSaid, finding: Finding): AllSaid {
  const findings = [...before, finding];
  return { findings, ...decide(findings) };
}
