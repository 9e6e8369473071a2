import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Finding } from '../../core/model/finding.ts';
import { describeNumbers, describeSources } from '../../core/say/describe.ts';
import { type ChosenFindings, chooseFindings } from './choose-findings.ts';
import { BODY, footerOf, headingRow, heightFor, numberCell, outcomeCell, textCell, WORDS, WRAPPED } from './look.ts';
import type { PlannedCell, PlannedRow, SheetPlan } from './sheet-plan.ts';

const COLUMNS = [
  ['Row in file', 8],
  ['Part number', 25],
  ['Panel', 12],
  ['Row verdict', 11],
  ['Check', 22],
  ['Outcome', 11],
  ['Finding', 70],
  ['Numbers', 34],
  ['Source', 56],
] as const;
/** The columns that wrap, from the seventh on. */
const WRAPPED_WIDTHS = [70, 34, 56] as const;

/** Every finding of every row, one a line; of a list too long for that what does not hold, and a sentence below. */
export function planFindingsSheet(name: string, list: AuditedList, mostRows: number): SheetPlan {
  const chosen = chooseFindings(list, mostRows);
  return {
    name,
    widths: COLUMNS.map(([, width]) => width),
    isFrozen: true,
    filter: { rows: chosen.count + 1, columns: COLUMNS.length },
    footer: footerOf(list),
    size: chosen.count,
    rows: () => planRows(list, chosen),
  };
}

function* planRows(list: AuditedList, { isChosen, leftOut }: ChosenFindings): Generator<PlannedRow> {
  const worded = wordsOnce(list);
  yield headingRow(
    COLUMNS.map(([heading]) => heading),
    COLUMNS.map(([, width]) => width),
  );
  for (const line of list.lines) {
    const start = startOf(line);
    for (const finding of line.findings) if (isChosen(finding)) yield planFinding(start, finding, worded(finding));
  }
  if (leftOut === '') return;
  yield { cells: [] };
  yield { cells: [{ value: leftOut, style: WORDS }] };
}

/** The cells that are the same in all findings of a row. */
function startOf({ row, line, verdict }: AuditedLine): readonly (PlannedCell | null)[] {
  return [numberCell(row), textCell(line.partNumber), textCell(line.panel), outcomeCell(verdict)];
}

interface Worded {
  readonly cells: readonly (PlannedCell | null)[];
  readonly height: number;
}

function planFinding(
  start: readonly (PlannedCell | null)[],
  { rule, outcome }: Finding,
  { cells, height }: Worded,
): PlannedRow {
  return { cells: [...start, { value: rule, style: BODY }, outcomeCell(outcome), ...cells], height };
}

/** What a finding says; rows that are the same share theirs. */
function wordsOnce({ shop }: AuditedList): (finding: Finding) => Worded {
  const known = new WeakMap<Finding, Worded>();
  return (finding) => {
    let worded = known.get(finding);
    if (worded) return worded;
    const { text, values, cites } = finding;
    const words = [text, describeNumbers(values, shop.units), describeSources(cites)];
    const height = heightFor(words.map((word, at) => [word, WRAPPED_WIDTHS[at] ?? 40]));
    worded = { cells: words.map((word) => textCell(word, WRAPPED)), height };
    known.set(finding, worded);
    return worded;
  };
}
