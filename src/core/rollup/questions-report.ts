import type { AuditedList } from '../model/audited.ts';
import { SAFETY_SHORT } from '../say/safety.ts';
import { showAbout } from './about.ts';
import { listRows } from './name-rows.ts';
import { headingOf, type Question } from './questions.ts';
import { footOf, type Report } from './report.ts';

/** The column “About” tells into which column of the list an answer goes. */
const HEADINGS = ['No.', 'Panel', 'Rows', 'Part numbers', 'Question', 'Why it matters', 'About', 'Answer'];
/** The empty column, counted from 1. */
export const ANSWER_COLUMN = HEADINGS.length;

/** The questions as a table with a column left empty for the answers. */
export function questionsReport(list: AuditedList, questions: readonly Question[]): Report {
  const rows = questions.map(({ number, panel, rows, partNumbers, text, about, because }) => [
    number,
    headingOf(panel),
    listRows(rows),
    partNumbers.join(', '),
    text,
    because.join('; '),
    showAbout(about, list.columns),
    null,
  ]);
  const notes = rows.length === 0 ? ['No questions.'] : [];
  return { blocks: [{ title: '', headings: HEADINGS, rows, notes }], foot: footOf(list, [SAFETY_SHORT]) };
}
