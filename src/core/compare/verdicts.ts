import { describeDecision } from '../say/describe.ts';
import type { VerdictChange } from './comparison.ts';
import type { Row } from './rows.ts';

/** Rows of which the verdict is another; `hasChanged` tells of which row a cell changed. */
export function changedVerdicts(
  pairs: readonly (readonly [Row, Row])[],
  hasChanged: (after: Row) => boolean,
): readonly VerdictChange[] {
  return pairs.flatMap(([before, after]) => {
    const [was, is] = [before.audited?.verdict ?? null, after.audited?.verdict ?? null];
    if (was === is) return [];
    return [
      {
        before: before.name,
        after: after.name,
        verdictBefore: was,
        verdictAfter: is,
        whyBefore: why(before),
        whyAfter: why(after),
        cellsChanged: hasChanged(after),
      },
    ];
  });
}

function why({ audited, name }: Row): string {
  return audited ? describeDecision(audited) : (name.what ?? '');
}
