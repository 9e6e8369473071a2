import { describeStanding } from '../../core/concede/describe.ts';
import { standing } from '../../core/concede/standing.ts';
import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Concession } from '../../core/model/concession.ts';
import { CONCESSION_HEADINGS, showConcessionCell } from '../../core/readback/concession-cell.ts';
import { listRules, rules } from '../../core/rules/index.ts';
import { BODY, footerOf, headingRow, heightFor, numberCell, outcomeCell, textCell, WRAPPED } from './look.ts';
import type { PlannedRow, SheetPlan } from './sheet-plan.ts';

const WIDTHS = [8, 25, 11, 22, 44, 44, 20, 12, 40, 20];
const WORDS_FROM = 3;
const TITLES = new Map([...rules, ...listRules].map(({ id, title }) => [id, title]));

/** Every accepted deviation: what, why, by whom, when, and whether it still applies to the row as it is. */
export function planConcessionsSheet(name: string, list: AuditedList, concessions: readonly Concession[]): SheetPlan {
  return {
    name,
    widths: WIDTHS,
    hidden: WIDTHS.length - 1,
    isFrozen: true,
    filter: { rows: Math.max(concessions.length, 1) + 1, columns: WIDTHS.length },
    footer: footerOf(list),
    size: concessions.length,
    rows: () => planRows(list, concessions),
  };
}

function* planRows(list: AuditedList, concessions: readonly Concession[]): Generator<PlannedRow> {
  const lines = new Map(list.lines.map((line) => [line.row, line]));
  yield headingRow(CONCESSION_HEADINGS, WIDTHS);
  for (const concession of concessions) yield planConcession(list, lines.get(concession.row) ?? null, concession);
  if (concessions.length === 0) yield { cells: [{ value: 'None is left.', style: BODY }] };
}

function planConcession(list: AuditedList, line: AuditedLine | null, concession: Concession): PlannedRow {
  const { row, rule, outcome, says, reason, by, date } = concession;
  const state = describeStanding(standing(concession, line));
  const words = [TITLES.get(rule) ?? rule, says, reason, by, date, state];
  return {
    cells: [
      numberCell(row, WRAPPED),
      textCell(line?.line.partNumber ?? '', WRAPPED),
      outcomeCell(outcome),
      ...[...words, showConcessionCell(concession, list)].map((text) => textCell(text, WRAPPED)),
    ],
    height: heightFor(words.map((text, index) => [text, WIDTHS[index + WORDS_FROM] ?? 40])),
  };
}
