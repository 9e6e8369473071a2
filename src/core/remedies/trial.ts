import { subjectFor } from '../engine/prepare.ts';
import type { Fastener } from '../model/fastener.ts';
import { type Outcome, type Verdict, worstOf } from '../model/outcome.ts';
import { rules } from '../rules/index.ts';
import type { Rule, Subject } from '../rules/rule.ts';

/** The listed description speaks of the listed part: a substitute is not judged by it. */
export const swapRules = rules.filter(({ id }) => id !== 'part/description');

/** What the rules over single rows say of a part in a row, without sentences. A rule that throws makes it unknown. */
export function tryPart(part: Fastener, { line, shop }: Subject): Verdict {
  const subject = subjectFor(line, part, shop);
  return worstOf(swapRules.map((rule) => outcomeOf(rule, subject)));
}

function outcomeOf(rule: Rule, subject: Subject): Outcome {
  try {
    return rule.check(subject)?.outcome ?? 'note';
  } catch {
    return 'unknown';
  }
}
