import type { AuditedLine } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import { VERDICTS, type Verdict } from '../model/outcome.ts';
import { describeDecision } from '../say/describe.ts';
import type { NewlyWrong } from './comparison.ts';
import type { Row } from './rows.ts';

/** Rows with something that was not wrong before, in the order of the list after; `hasChanged` tells of which row a cell changed. */
export function newlyWrong(
  pairs: readonly (readonly [Row, Row])[],
  added: readonly Row[],
  hasChanged: (after: Row) => boolean,
): readonly NewlyWrong[] {
  const rows = [
    ...pairs.map(([before, after]) => [before, after] as const),
    ...added.map((after) => [null, after] as const),
  ].sort(([, a], [, b]) => a.name.row - b.name.row);
  return rows.flatMap(([before, after]): readonly NewlyWrong[] => {
    const why = after.audited && whyWorse(before?.audited ?? null, after.audited);
    if (!after.audited || !why) return [];
    return [
      {
        before: before?.name ?? null,
        after: after.name,
        verdictBefore: before?.audited?.verdict ?? null,
        verdictAfter: after.audited.verdict,
        why,
        cellsChanged: before === null || hasChanged(after),
      },
    ];
  });
}

/** What makes a row worse than it was; '' where nothing does. */
function whyWorse(was: AuditedLine | null, is: AuditedLine): string {
  const before = was?.verdict ?? 'holds';
  if (rank(is.verdict) > rank(before)) return '';
  if (rank(is.verdict) < rank(before)) return describeDecision(is) || is.verdict;
  return worseChecks(was, is)
    .map(({ brief }) => brief)
    .join('; ');
}

/** Checks that come out worse than before; one that was not made counts as held. */
function worseChecks(was: AuditedLine | null, { findings }: AuditedLine): readonly Finding[] {
  const before = new Map((was?.findings ?? []).map(({ rule, outcome }) => [rule, outcome]));
  return findings.filter(({ rule, outcome }) => {
    if (outcome === 'note') return false;
    const former = before.get(rule) ?? 'holds';
    return rank(outcome) < rank(former === 'note' ? 'holds' : former);
  });
}

/** The worse, the lower. */
function rank(verdict: Verdict): number {
  return VERDICTS.indexOf(verdict);
}
