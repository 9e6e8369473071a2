import type { AuditedList } from '../../core/model/audited.ts';
import { basisOf } from '../../core/rollup/basis.ts';
import { DEMO_WORDS, SAFETY_WORDS } from '../../core/say/safety.ts';
import { footerOf, heightFor, isDemo } from './look.ts';
import type { PlannedRow, SheetPlan } from './sheet-plan.ts';
import type { Style } from './style.ts';

const NAME_WIDTH = 58;
const VALUE_WIDTH = 62;
const NAME: Style = { bold: true };
const VALUE: Style = { left: true };
const WORDS: Style = { size: 11, top: true, wraps: true };
const DEMO: Style = { bold: true, top: true, wraps: true };

/** What the judgement rests on: file, day, catalogues, settings, counts, and the safety words. */
export function planBasisSheet(name: string, list: AuditedList, date: string): SheetPlan {
  const facts = basisOf(list, date);
  return {
    name,
    widths: [NAME_WIDTH, VALUE_WIDTH],
    isFrozen: false,
    footer: footerOf(list),
    size: facts.length,
    rows: () => planRows(list, facts),
  };
}

function* planRows(list: AuditedList, facts: ReturnType<typeof basisOf>): Generator<PlannedRow> {
  for (const [name, value] of facts) {
    yield {
      cells: [
        { value: name, style: NAME },
        { value, style: VALUE },
      ],
    };
  }
  yield { cells: [] };
  if (isDemo(list)) yield planWords(DEMO_WORDS, DEMO);
  for (const text of SAFETY_WORDS) yield planWords(text, WORDS);
}

/** One sentence across both columns. */
function planWords(text: string, style: Style): PlannedRow {
  return { cells: [{ value: text, style }], across: 2, height: heightFor([[text, NAME_WIDTH + VALUE_WIDTH]]) };
}
