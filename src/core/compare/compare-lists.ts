import type { AuditedList } from '../model/audited.ts';
import type { Concession } from '../model/concession.ts';
import { carryConcessions } from './carry-concessions.ts';
import { changedCells } from './changed-cells.ts';
import { type ColumnPair, matchColumns } from './columns.ts';
import type { ChangedRow, Comparison } from './comparison.ts';
import { type MatchedRows, matchRows } from './match-rows.ts';
import { newlyWrong } from './newly-wrong.ts';
import { findRenamedPanels } from './panels.ts';
import { changedQuantities } from './quantities.ts';
import { cellsOf, type ReadColumn, type Row, readRows } from './rows.ts';
import { changedSheets } from './sheets.ts';
import { changedVerdicts } from './verdicts.ts';

/**
 * What differs between two revisions of a list, both judged. Rows are found again by part, panel and reference, then by less, wherever
 * they stand; columns by what they mean. `concessions` are those given on the list before.
 */
export function compareLists(
  before: AuditedList,
  after: AuditedList,
  concessions: readonly Concession[] = [],
): Comparison {
  const { pairs: columns, changes, moved: columnsMoved } = matchColumns(tableOf(before), tableOf(after));
  const left = readRows(before, readColumns(columns, 'before'));
  const right = readRows(after, readColumns(columns, 'after'));
  const { renames, after: renamed } = findRenamedPanels(left, right);
  const matched = matchRows(columns, left, renamed);
  const { pairs, references } = matched;
  return {
    columns: changes,
    columnsMoved,
    orderChanged: isReordered(pairs),
    renumbered: references.numbers === 'given anew',
    panelsRenamed: renames,
    ...rowChanges(columns, matched),
    sheets: changedSheets(pairs, after.shop.units),
    quantities: changedQuantities(before.lines, after.lines),
    totals: { before: before.totals, after: after.totals },
    concessions: carryConcessions(concessions, left, pairs),
    found: matched.found,
    pairs: pairs.map(([one, other]) => ({ before: one.name.row, after: other.name.row })),
  };
}

function tableOf(list: AuditedList) {
  return { columns: list.columns, rows: cellsOf(list) };
}

function readColumns(columns: readonly ColumnPair[], side: 'before' | 'after'): readonly ReadColumn[] {
  return columns.map((pair) => ({ column: pair[side], role: pair.role }));
}

/** Rows by what became of them, and verdicts with whether their row itself changed. */
function rowChanges(
  columns: readonly ColumnPair[],
  { pairs, added, removed, references }: MatchedRows,
): Pick<Comparison, 'changed' | 'rewritten' | 'moved' | 'added' | 'removed' | 'newlyWrong' | 'verdicts'> {
  const rows = pairs.map(
    (pair): ChangedRow => ({ ...namesOf(pair), cells: changedCells(columns, references, ...pair) }),
  );
  const isChanged = ({ cells }: ChangedRow) => cells.some(({ writtenOnly }) => !writtenOnly);
  const changed = rows.filter(isChanged);
  const changedNames = new Set([
    ...changed.map(({ after }) => after),
    ...pairs.filter(isMoved).map(([, row]) => row.name),
  ]);
  const hasChanged = ({ name }: Row) => changedNames.has(name);
  return {
    changed,
    rewritten: rows.filter((row) => row.cells.length > 0 && !isChanged(row)),
    moved: pairs.filter(isMoved).map(namesOf),
    added: added.map(({ name }) => name),
    removed: removed.map(({ name }) => name),
    newlyWrong: newlyWrong(pairs, added, hasChanged),
    verdicts: changedVerdicts(pairs, hasChanged),
  };
}

function namesOf([before, after]: readonly [Row, Row]) {
  return { before: before.name, after: after.name };
}

function isMoved([before, after]: readonly [Row, Row]): boolean {
  return before.panel !== after.panel;
}

/** Whether rows that stay on their panels stand in another order. */
function isReordered(pairs: readonly (readonly [Row, Row])[]): boolean {
  const rows = pairs.filter((pair) => !isMoved(pair)).map(([before]) => before.name.row);
  return rows.some((row, at) => at > 0 && row < (rows[at - 1] ?? 0));
}
