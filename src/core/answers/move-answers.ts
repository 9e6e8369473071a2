import type { AuditedList } from '../model/audited.ts';
import type { RawFile } from '../model/raw.ts';
import { readEarlierRows } from '../readback/earlier-rows.ts';
import type { AnsweredQuestion } from './read-answers.ts';

/** Answers in the list's own workbook name rows of the file before the export: the same with the rows of this file. */
export function moveAnswers(
  answered: readonly AnsweredQuestion[],
  file: RawFile,
  list: AuditedList,
): readonly AnsweredQuestion[] {
  const { now } = readEarlierRows(file, list);
  return answered.map((question) => {
    const places = question.rows.map(now);
    const rows = places.flatMap(([row, ...copies]) => (row === undefined || copies.length > 0 ? [] : row));
    return { ...question, rows, rowsGone: places.length - rows.length };
  });
}
