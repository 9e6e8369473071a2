import type { AuditedLine } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import type { Subject } from '../rules/rule.ts';
import { decide } from './audit-line.ts';
import type { Audit, JudgedList } from './audit-list.ts';
import type { JudgedRow } from './judge-rows.ts';
import { findingsOf, type Together } from './together.ts';

/** What all the rules say of a row. */
type AllSaid = Pick<AuditedLine, 'findings' | 'verdict' | 'decidedBy'>;

/** A list as judged before, and the rows for which that may no longer be so. */
export interface Before {
  readonly audit: Audit;
  readonly touched: ReadonlySet<Subject>;
}

/** Every fastener row with what the rules over the whole list add to it; the same object where nothing has changed. */
export function auditedLines({ list, rows }: JudgedList, together: Together, before?: Before): readonly AuditedLine[] {
  const formerOf = createFormerFinder(before?.audit);
  const join = createJoin();
  return rows.map((row) => {
    const { line } = row.subject;
    const former = formerOf(row);
    if (former && !before?.touched.has(row.subject)) return former;
    const added = findingsOf(together, row.subject);
    const extendedQuantity = list.relations.extended.get(line.row) ?? null;
    if (former && former.extendedQuantity === extendedQuantity && isSaid(former, row, added)) return former;
    const { findings, verdict, decidedBy } = join(row.judged, added);
    const { fastener, sheet, requires, remedies } = row.judged;
    return {
      row: line.row,
      line,
      verdict,
      decidedBy,
      findings,
      fastener,
      sheet,
      requires,
      quantity: line.quantity.value,
      extendedQuantity,
      remedies,
    };
  });
}

/** What came of a judged row before; rows are asked for in file order. Undefined: it was not judged as it is. */
function createFormerFinder(before?: Audit): (row: JudgedRow) => AuditedLine | undefined {
  const rows = before?.judged.rows ?? [];
  let at = 0;
  return (row) => {
    const number = row.subject.line.row;
    while ((rows[at]?.subject.line.row ?? Infinity) < number) at += 1;
    return rows[at] === row ? before?.audited.lines[at] : undefined;
  };
}

/** Does a line say just what its row says by itself, and what is added now? */
function isSaid({ findings }: AuditedLine, { judged }: JudgedRow, added: readonly Finding[]): boolean {
  const own = judged.findings.length;
  if (findings.length !== own + added.length) return false;
  return added.every((finding, index) => {
    const former = findings[own + index];
    return (
      former === finding ||
      (former?.rule === finding.rule && former.says === finding.says && former.text === finding.text)
    );
  });
}

/** What is said of rows so far, and what it becomes with one finding more. */
interface Joined {
  readonly said: AllSaid;
  readonly more: Map<Finding, Joined>;
}

/** Adds findings to what a row says by itself; the same findings said give the same object, for rows that say the same. */
function createJoin(): (own: AllSaid, added: readonly Finding[]) => AllSaid {
  const known = new Map<AllSaid, Joined>();
  const withNone = (said: AllSaid): Joined => ({ said, more: new Map() });
  return (own, added) => {
    if (added.length === 0) return own;
    let joined = known.get(own) ?? withNone(own);
    known.set(own, joined);
    for (const finding of added) {
      const next = joined.more.get(finding) ?? withNone(join(joined.said, finding));
      joined.more.set(finding, next);
      joined = next;
    }
    return joined.said;
  };
}

function join({ findings: before }: AllSaid, finding: Finding): AllSaid {
  const findings = [...before, finding];
  return { findings, ...decide(findings) };
}
