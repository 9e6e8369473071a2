import { createNumbers, numberTuples } from '../caching/numbers.ts';
import type { AuditedLine } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import { listRules } from '../rules/index.ts';
import { decide, runListRule } from './audit-line.ts';
import type { Before, JudgedList } from './audit-list.ts';
import type { JudgedRow } from './judge-rows.ts';

/** What all the rules say of a row together. */
type Together = Pick<AuditedLine, 'findings' | 'verdict' | 'decidedBy'>;

/** Every fastener row with what the rules over the whole list add to it; the same object where nothing has changed. */
export function auditedLines({ list, rows }: JudgedList, before?: Before): readonly AuditedLine[] {
  const subjects = rows.map(({ subject }) => subject);
  const said = listRules.map((rule) => runListRule(rule, subjects));
  const formerOf = createFormerFinder(before);
  const join = createJoin();
  return rows.map((row) => {
    const { line } = row.subject;
    const added: Finding[] = [];
    for (const findings of said) {
      const finding = findings.get(row.subject);
      if (finding) added.push(finding);
    }
    const extendedQuantity = list.relations.extended.get(line.row) ?? null;
    const former = formerOf(row);
    if (former && former.extendedQuantity === extendedQuantity && isSaid(former, row, added)) return former;
    const { findings, verdict, decidedBy } = added.reduce(join, row.judged);
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
function createFormerFinder(before?: Before): (row: JudgedRow) => AuditedLine | undefined {
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

/** Adds a finding to those before; the same findings together give the same object, for rows that say the same. */
function createJoin(): (before: Together, finding: Finding) => Together {
  const numberOf = createNumbers<Together | Finding>();
  const pairs = numberTuples(2);
  const joined: Together[] = [];
  return (before, finding) => {
    const pair = pairs([numberOf(before), numberOf(finding)]);
    if (pair === joined.length) {
      const findings = [...before.findings, finding];
      joined.push({ findings, ...decide(findings) });
    }
    return joined[pair] ?? before;
  };
}
