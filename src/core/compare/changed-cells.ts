import type { ColumnPair } from './columns.ts';
import type { ChangedCell } from './comparison.ts';
import { isSameFact, textOf } from './facts.ts';
import type { References } from './references.ts';
import type { Row } from './rows.ts';

/** The cells of a row that read differently, and whether they also say something else. Where a row belongs is told apart, see `moved`. */
export function changedCells(
  columns: readonly ColumnPair[],
  { index, numbers }: References,
  before: Row,
  after: Row,
): readonly ChangedCell[] {
  const home = homeColumn(columns);
  return columns.flatMap((column, at) => {
    if (at === index && numbers === 'given anew') return [];
    if (at === home && !isSamePanel(before, after)) return [];
    const change = compareCell(column, at, before, after);
    if (change === 'same') return [];
    const [was, is] = [textOf(before.line, column.before), textOf(after.line, column.after)];
    const shown = was === is ? meanings(at, before, after, was) : { before: was, after: is };
    const heading = (column.after.heading || column.before.heading).replace(/\s+/g, ' ').trim();
    return [{ heading, role: column.role, ...shown, writtenOnly: change === 'written' || at === home }];
  });
}

/** The column that says where a row belongs: of panels, else of parents. */
function homeColumn(columns: readonly ColumnPair[]): number {
  const panel = columns.findIndex(({ role }) => role === 'panel');
  return panel < 0 ? columns.findIndex(({ role }) => role === 'parent') : panel;
}

/** A bare number that stays as it is means something else under a heading of another unit. */
function compareCell(column: ColumnPair, at: number, before: Row, after: Row): 'same' | 'written' | 'changed' {
  const [was, is] = [before.facts[at], after.facts[at]];
  if (!was || !is) return 'same';
  if (textOf(before.line, column.before) === textOf(after.line, column.after)) {
    const isMeasured = was.mm.length > 0 && is.mm.length > 0 && column.before.unit !== column.after.unit;
    return isMeasured && !isSameFact(was, is) ? 'changed' : 'same';
  }
  return isSameFact(was, is) ? 'written' : 'changed';
}

/** The same panel by the same name. */
function isSamePanel(before: Row, after: Row): boolean {
  return before.panel === after.panel && before.ownPanel === after.ownPanel;
}

function meanings(at: number, before: Row, after: Row, text: string) {
  const show = ({ facts }: Row) => `${text} (${facts[at]?.mm.map((mm) => `${Number(mm.toFixed(3))} mm`).join(', ')})`;
  return { before: show(before), after: show(after) };
}
