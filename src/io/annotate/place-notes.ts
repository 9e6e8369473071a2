import type { RawTable } from '../../core/model/raw.ts';
import { LAST_ROW } from './ranges.ts';
import type { SheetSurvey } from './survey.ts';

/** Blank rows between the list and what is said below it. */
const GAP = 2;

/**
 * Rows below the list for sentences in our first column, one each: where our columns are free, or hold the same sentences of an earlier
 * export.
 */
export function placeNotes(
  sheet: SheetSurvey,
  table: RawTable,
  columns: { readonly start: number; readonly end: number },
  sentences: readonly string[],
): readonly number[] {
  const found: number[] = [];
  const isOver = (left: number, right: number) => left < columns.end && right >= columns.start;
  const isFree = (number: number) => {
    if (sheet.taken.some(({ top, bottom, left, right }) => number >= top && number <= bottom && isOver(left, right)))
      return false;
    const texts = table.rows.find((row) => row.number === number)?.cells ?? [];
    return (sheet.below.get(number) ?? [])
      .filter((column) => isOver(column, column))
      .every((column) => column === columns.start && sentences.includes(texts[column] ?? ''));
  };
  for (let number = sheet.bottom + GAP; found.length < sentences.length && number <= LAST_ROW; number++) {
    if (isFree(number)) found.push(number);
  }
  return found;
}
