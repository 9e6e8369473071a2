import { addTo } from '../intake/tree-row.ts';
import type { AnswerPlan } from './plan-answers.ts';

/** Whether two answers put different texts into one cell: only one of them can be filled in. */
export function areAtOdds({ cells: one }: Pick<AnswerPlan, 'cells'>, { cells: other }: Pick<AnswerPlan, 'cells'>) {
  const texts = new Map(one.map((cell) => [keyOf(cell), cell.text]));
  return other.some((cell) => (texts.get(keyOf(cell)) ?? cell.text) !== cell.text);
}

/** Answers that contradict others, by their place, with a sentence for each that they contradict. */
export function findOdds(plans: readonly AnswerPlan[]): ReadonlyMap<number, readonly string[]> {
  const byCell = new Map<string, { readonly index: number; readonly text: string }[]>();
  for (const [index, { cells }] of plans.entries()) {
    for (const cell of cells) addTo(byCell, keyOf(cell), { index, text: cell.text });
  }
  const odds = new Map<number, string[]>();
  for (const sharers of byCell.values()) {
    for (const { index, text } of sharers) {
      const others = sharers.filter((other) => other.text !== text).flatMap((other) => plans[other.index] ?? []);
      for (const other of others) addTo(odds, index, sayOdds(other));
    }
  }
  return new Map([...odds].map(([index, notes]) => [index, [...new Set(notes)]]));
}

function sayOdds({ question: { answer, number } }: AnswerPlan): string {
  return `Question ${number} has another answer for the same cell, “${answer}”: tick the one that counts.`;
}

function keyOf({ row, column }: { readonly row: number; readonly column: number }): string {
  return `${row} ${column}`;
}
