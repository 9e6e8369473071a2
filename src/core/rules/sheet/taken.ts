import type { Disputed, TakenFrom } from '../../model/sheet.ts';

/** Where a fact was taken from, to follow it in a sentence: ", taken from row 12"; empty where the row gives it itself. */
export function takenWords(from: TakenFrom | undefined): string {
  return from ? `, taken from ${placeOf(from)}` : '';
}

/** Why a missing fact was not taken, to follow "is missing": names the rows that disagree. Empty where no row could give it. */
export function disputedWords(disputed: Disputed | undefined): string {
  if (!disputed) return '';
  const places = disputed.by.map((from) => `${placeOf(from)} (“${from.text.trim()}”)`);
  const named = places.length > 1 ? `${places.slice(0, -1).join(', ')} and ${places.at(-1)}` : (places[0] ?? '');
  return disputed.why === 'each-other'
    ? `, and ${named} do not agree about the panel`
    : `, and ${named} does not agree with what this row says of the sheet`;
}

function placeOf({ row, sheet }: TakenFrom): string {
  return sheet === undefined ? `row ${row}` : `row ${row} of sheet “${sheet}”`;
}
