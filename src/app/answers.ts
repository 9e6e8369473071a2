import type { AnswerPlan } from '../core/answers/plan-answers.ts';
import type { AnsweredQuestion, AnswerSheet } from '../core/answers/read-answers.ts';
import type { ChangeDetail } from '../core/model/change-record.ts';
import { Unreadable } from '../core/model/raw.ts';
import type { CellEdit } from '../worker/protocol.ts';
import type { ManyCells } from './many-cells.ts';

/**
 * Whether a file with a question sheet is for the open list; else it is a list itself.
 * @throws Unreadable where it is neither.
 */
export function isForOpenList(file: string, { answered, isAlone }: AnswerSheet, isListOpen: boolean): boolean {
  if (answered.length > 0 && isListOpen) return true;
  if (!isAlone) return false;
  throw new Unreadable(
    answered.length > 0
      ? `“${file}” is an answered question sheet: open the list it belongs to first, then this file again.`
      : `“${file}” is a question sheet, and its column “Answer” is empty: open it when it has been filled in.`,
  );
}

/** Whether no answer is about a row of the list. */
export function areForAnotherList(plans: readonly AnswerPlan[]): boolean {
  return plans.every(({ isAboutList }) => !isAboutList);
}

export function sayAnotherList(file: string): string {
  return `“${file}” answers questions about another list: no row here holds the part that is asked about. Open its list first, then this file again.`;
}

/** Every cell that answers fill, once. */
export function cellsOfAnswers(plans: Iterable<AnswerPlan>): readonly CellEdit[] {
  const cells = [...plans].flatMap((plan) => plan.cells.map(({ row, column, text }) => ({ row, column, text })));
  return [...new Map(cells.map((cell) => [`${cell.row} ${cell.column}`, cell])).values()];
}

/** Answers as one step, which tells every answer of the sender in its own words, those too that were not filled in. */
export function deedOfAnswers(
  file: string,
  plans: readonly AnswerPlan[],
  chosen: ReadonlySet<AnswerPlan>,
): ManyCells & { readonly told: readonly ChangeDetail[] } {
  const count = countAnswers(chosen.size === 0 ? plans.length : chosen.size);
  return {
    cells: cellsOfAnswers(plans.filter((plan) => chosen.has(plan))),
    name: `${chosen.size === 0 ? 'keep' : 'fill in'} ${count} of the sender from “${file}”`,
    told: plans.map((plan) => tell(plan.question, chosen.has(plan))),
  };
}

function countAnswers(count: number): string {
  return count === 1 ? 'an answer' : `${count} answers`;
}

function tell({ number, text, answer, flaw }: AnsweredQuestion, isFilledIn: boolean): ChangeDetail {
  const asked = text === '' ? 'Sender, without a question' : `Sender’s answer to question ${number}: ${text}`;
  return { row: null, where: asked, before: isFilledIn ? 'filled in' : 'not filled in', after: answer || flaw };
}
