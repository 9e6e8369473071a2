import { VERDICTS } from '../model/outcome.ts';
import type { ColumnChange, ColumnName, Comparison, VerdictChange, Way } from './comparison.ts';

/** The comparison in sentences: how many rows, what became of columns and panels, and what makes no difference. */
export function inShort(comparison: Comparison): readonly string[] {
  const { columns, panelsRenamed } = comparison;
  const sentences = [
    ...columns.map(columnSentence),
    ...panelsRenamed.map(({ before, after, rows }) => `Panel “${before}” is now “${after}” (${count(rows, 'row')}).`),
    ...withoutEffect(comparison),
  ];
  return [rowSentence(comparison), ...verdictSentence(comparison), ...sentences, ...concessionSentence(comparison)];
}

/** "Rows found again by part and panel". */
export function foundWords(way: Way): string {
  return `Rows found again${way === 'the same throughout' ? ',' : ' by'} ${way}`;
}

function rowSentence({ changed, added, removed, moved, columns, panelsRenamed }: Comparison): string {
  const counts = [
    [changed.length, 'changed'],
    [added.length, 'added'],
    [removed.length, 'removed'],
    [moved.length, 'moved to another panel'],
  ] as const;
  const told = counts.filter(([rows]) => rows > 0).map(([rows, what]) => `${count(rows, 'row')} ${what}`);
  if (told.length > 0) return `${told.join(', ')}.`;
  return columns.length > 0 || panelsRenamed.length > 0 ? 'No row has changed.' : 'Nothing has changed.';
}

function verdictSentence({ verdicts }: Comparison): readonly string[] {
  if (verdicts.length === 0) return [];
  const worse = verdicts.filter(isWorse).length;
  const untouched = verdicts.filter(({ cellsChanged }) => !cellsChanged).length;
  const though = untouched > 0 ? `; ${count(untouched, 'row')} of them had no change of their own` : '';
  return [`Another verdict on ${count(verdicts.length, 'row')}, worse on ${worse}${though}.`];
}

function isWorse({ verdictBefore, verdictAfter }: VerdictChange): boolean {
  if (verdictBefore === null || verdictAfter === null) return false;
  return VERDICTS.indexOf(verdictAfter) < VERDICTS.indexOf(verdictBefore);
}

function columnSentence({ change, before, after }: ColumnChange): string {
  if (change === 'added') return `${named(after)} is new.`;
  if (change === 'removed') return `${named(before)} is no longer there.`;
  if (change === 'renamed') return `${named(before)} is now “${after?.heading}”.`;
  return `${named(after)} was read as ${meaning(before)}, and is read as ${meaning(after)}.`;
}

function named(column: ColumnName | null): string {
  return column?.heading ? `Column “${column.heading}”` : 'A column without a heading';
}

/** "fastenerMaterial" is fastener material. */
function meaning(column: ColumnName | null): string {
  const role = column?.role ?? 'other';
  return role === 'other' ? 'nothing in particular' : role.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function withoutEffect({ orderChanged, columnsMoved, renumbered, rewritten }: Comparison): readonly string[] {
  return [
    ...(orderChanged ? ['The rows stand in another order.'] : []),
    ...(columnsMoved ? ['The columns stand in another order.'] : []),
    ...(renumbered ? ['The rows were renumbered; item numbers are not compared.'] : []),
    ...(rewritten.length > 0 ? [`${count(rewritten.length, 'row')} only written differently.`] : []),
  ];
}

function concessionSentence({ concessions }: Comparison): readonly string[] {
  if (concessions.length === 0) return [];
  const of = (state: string) => concessions.filter((one) => one.state === state).length;
  return [`Concessions: ${of('carried')} carried over, ${of('lapsed')} lapsed, ${of('gone')} gone with their rows.`];
}

function count(rows: number, what: string): string {
  return `${rows} ${what}${rows === 1 ? '' : 's'}`;
}
