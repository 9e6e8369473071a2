import type { WrittenList, WrittenRow } from './generate-list.ts';
import { CORE_RULES, type CoreRule, judge } from './judge.ts';
import { type Outcome, worst } from './outcomes.ts';
import { auditCells } from './product.ts';

/** Judges a list twice, by the product and by the oracle, and says in a sentence each where they differ. */
export function compareList({ parts, rows, headings, shop }: WrittenList): string[] {
  const lines = auditCells(
    parts,
    headings,
    rows.map(({ cells }) => cells),
    shop,
  );
  return rows.flatMap((row, index) => {
    const line = lines.get(index + 2);
    if (!line) return [`row left out | ${describeRow(row, headings)}`];
    const expected = judge(row, shop);
    const found = new Map<string, Outcome>(line.findings.map(({ rule, outcome }) => [rule, outcome]));
    const wrong = CORE_RULES.filter((rule) => found.get(rule) !== expected.outcomes[rule]).map(
      (rule) => `${rule}: product ${found.get(rule) ?? '(none)'}, oracle ${expected.outcomes[rule] ?? '(none)'}`,
    );
    const verdict = worst([expected.verdict, ...othersThan(CORE_RULES, line.findings)]);
    if (line.verdict !== verdict) wrong.push(`verdict: product ${line.verdict}, oracle ${verdict}`);
    return wrong.map((text) => `${text} | ${describeRow(row, headings)}`);
  });
}

/** Checks that the oracle does not restate still count in the row's verdict. */
function othersThan(rules: readonly CoreRule[], findings: readonly { rule: string; outcome: Outcome }[]): Outcome[] {
  return findings.filter(({ rule }) => !rules.includes(rule as CoreRule)).map(({ outcome }) => outcome);
}

function describeRow({ cells, part }: WrittenRow, headings: readonly string[]): string {
  return `${headings.slice(3).join(', ')} | ${JSON.stringify(cells)} on ${JSON.stringify(part)}`;
}
