import { partKey } from '../catalogue/part-key.ts';
import { nameKey } from '../intake/tree-row.ts';
import type { AuditedLine, AuditedList } from '../model/audited.ts';
import { distinct } from '../rollup/group-by.ts';
import { capital, nameEveryRow } from '../rollup/name-rows.ts';
import { headingOf } from '../rollup/questions.ts';
import type { AnsweredQuestion } from './read-answers.ts';

/** The question's rows that are still its rows, by part and panel, and a sentence on those that are not. */
export function findRows(
  { rows, partNumbers, panel, rowsGone = 0 }: AnsweredQuestion,
  list: Pick<AuditedList, 'lines'>,
): { readonly lines: readonly AuditedLine[]; readonly notes: readonly string[] } {
  const byRow = new Map(list.lines.map((line) => [line.row, line]));
  const there = rows.flatMap((row) => byRow.get(row) ?? []);
  const parts = distinct(there.map(({ line }) => line.partNumber)).join(', ');
  const areSame = there.length === rows.length && partKey(parts) === partKey(partNumbers);
  const lines = there.filter((line) => isOnPanel(line, panel) && (areSame || holdsOneOf(line, partNumbers)));
  const kept = new Set(lines.map(({ row }) => row));
  const gone = rows.filter((row) => !kept.has(row));
  return { lines, notes: [...sayLeftOut(gone), ...sayGone(rows.length, rowsGone)] };
}

function sayLeftOut(rows: readonly number[]): readonly string[] {
  if (rows.length === 0) return [];
  const [is, it] = rows.length === 1 ? ['is', 'it does'] : ['are', 'they do'];
  return [`${capital(nameEveryRow(rows))} ${is} left out: ${it} not hold what the question was about any more.`];
}

function sayGone(found: number, gone: number): readonly string[] {
  if (gone > 0) return [`${gone === 1 ? 'One of its rows is' : `${gone} of its rows are`} not in the list any more.`];
  return found === 0 ? ['Its rows cannot be read.'] : [];
}

function holdsOneOf({ line }: AuditedLine, partNumbers: string): boolean {
  const key = partKey(line.partNumber);
  return key === partKey(partNumbers) || (key !== '' && `,${partKey(partNumbers)},`.includes(`,${key},`));
}

function isOnPanel({ line }: AuditedLine, panel: string): boolean {
  return panel === headingOf(null) || nameKey(panel) === nameKey(headingOf(line.panel.trim()));
}
