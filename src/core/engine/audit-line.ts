import type { Finding, Judgement } from '../model/finding.ts';
import { type Verdict, worstOf } from '../model/outcome.ts';
import type { ListRule, Rule, RuleCard, Subject } from '../rules/rule.ts';
import { fillText } from '../say/fill.ts';
import { sayFinding } from './say-finding.ts';

const BROKEN_SAYS = 'broken';
/** Said of a rule that broke; the row is then unknown and the run goes on. */
const BROKEN = {
  brief: 'Check {rule} could not run',
  full: 'The check {rule} could not run on this row ({error}). Please report it; until then check this by hand.',
};

/** Every finding that applies to a row, in the order of the rules given. */
export function auditLine(subject: Subject, rules: readonly Rule[]): readonly Finding[] {
  return rules.flatMap((rule) => runRule(rule, subject) ?? []);
}

/** Does every rule hold or only note something? Stops at the first that does not, and makes no sentences: for trying many parts. */
export function holdsThroughout(subject: Subject, rules: readonly Rule[]): boolean {
  try {
    return rules.every((rule) => {
      const outcome = rule.check(subject)?.outcome ?? 'note';
      return outcome === 'holds' || outcome === 'note';
    });
  } catch {
    return false;
  }
}

/** Does a rule over the whole list hold, note something or say nothing of a row that stands alone? */
export function holdsAlone(subject: Subject, rule: ListRule): boolean {
  try {
    const outcome = rule.checkList([subject]).get(subject)?.outcome ?? 'note';
    return outcome === 'holds' || outcome === 'note';
  } catch {
    return false;
  }
}

/** One rule on one row; null where it does not apply. A throw becomes an `unknown` finding that names the rule. */
export function runRule(rule: Rule, subject: Subject): Finding | null {
  try {
    const judgement = rule.check(subject);
    return judgement && sayFinding(rule, judgement, subject.shop.units);
  } catch (error) {
    return brokenFinding(rule, error);
  }
}

/** What one rule over the whole list says of a row, if anything; rows with one judgement share its finding. A throw makes every row unknown, as nobody knows which it would have named. */
export function listFindings(rule: ListRule, subjects: readonly Subject[]): (subject: Subject) => Finding | undefined {
  try {
    const judgements = rule.checkList(subjects);
    const units = subjects[0]?.shop.units ?? 'mm';
    const said = new Map<Judgement, Finding>();
    for (const judgement of judgements.different) said.set(judgement, sayFinding(rule, judgement, units));
    return (subject) => {
      const judgement = judgements.get(subject);
      return judgement && said.get(judgement);
    };
  } catch (error) {
    const finding = brokenFinding(rule, error);
    return () => finding;
  }
}

/** Whether a finding says that its rule broke. */
export function isBroken(finding: Finding | undefined): boolean {
  return finding?.says === BROKEN_SAYS;
}

/** The same as one map of findings by row. */
export function runListRule(rule: ListRule, subjects: readonly Subject[]): ReadonlyMap<Subject, Finding> {
  const findingOf = listFindings(rule, subjects);
  return new Map(
    subjects.flatMap((subject) => {
      const finding = findingOf(subject);
      return finding ? [[subject, finding] as const] : [];
    }),
  );
}

function brokenFinding({ id }: RuleCard, error: unknown): Finding {
  const words = { rule: id, error: error instanceof Error ? error.message : String(error) };
  const { brief, full } = fillText(BROKEN, {}, words, 'mm');
  return { rule: id, outcome: 'unknown', says: BROKEN_SAYS, brief, text: full, values: {}, words, cites: [] };
}

/** Worst of the findings, and the first finding that brought it about (null when all hold). */
export function decide(findings: readonly Finding[]): {
  readonly verdict: Verdict;
  readonly decidedBy: Finding | null;
} {
  const verdict = worstOf(findings.map((finding) => finding.outcome));
  const decidedBy = verdict === 'holds' ? null : (findings.find(({ outcome }) => outcome === verdict) ?? null);
  return { verdict, decidedBy };
}
