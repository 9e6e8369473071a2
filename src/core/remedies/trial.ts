import { subjectFor } from '../engine/prepare.ts';
import type { Fastener } from '../model/fastener.ts';
import { type Outcome, type Verdict, worstOf } from '../model/outcome.ts';
import { listRules, rules } from '../rules/index.ts';
import type { ListRule, Rule, Subject } from '../rules/rule.ts';

/** The listed description speaks of the listed part: a substitute is not judged by it. */
export const swapRules = rules.filter(({ id }) => id !== 'part/description');

/** What the rules over single rows say of a part in a row, without sentences. A rule that throws makes it unknown. */
export function tryPart(part: Fastener, { line, shop }: Subject): Verdict {
  const subject = subjectFor(line, part, shop);
  return worstOf(swapRules.map((rule) => outcomeOf(rule, subject)));
}

/** What the rules over the whole list say of some of its rows, by row; rows of which nothing is said are left out. */
export function tryList(subjects: readonly Subject[], asked: ReadonlySet<number>): ReadonlyMap<number, Verdict> {
  const outcomes = new Map<number, Outcome[]>();
  for (const rule of listRules) {
    for (const [row, outcome] of listOutcomes(rule, subjects, asked)) {
      outcomes.set(row, [...(outcomes.get(row) ?? []), outcome]);
    }
  }
  return new Map([...outcomes].map(([row, found]) => [row, worstOf([...found, 'holds'])]));
}

function outcomeOf(rule: Rule, subject: Subject): Outcome {
  try {
    return rule.check(subject)?.outcome ?? 'note';
  } catch {
    return 'unknown';
  }
}

function listOutcomes(
  rule: ListRule,
  subjects: readonly Subject[],
  asked: ReadonlySet<number>,
): readonly (readonly [number, Outcome])[] {
  try {
    const said = [...rule.checkList(subjects)].map(([{ line }, { outcome }]) => [line.row, outcome] as const);
    return said.filter(([row]) => asked.has(row));
  } catch {
    return [...asked].map((row) => [row, 'unknown']);
  }
}
