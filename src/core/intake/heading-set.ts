import type { ColumnChoices } from './columns.ts';
import { foldText } from './heading-text.ts';

/** What the user chose for lists with one set of headings. */
export interface HeadingSet extends ColumnChoices {
  /** As `headingKey` gives it. */
  readonly key: string;
}

/** One text for the headings of a list, the same whatever their case, accents and spaces are. */
export function headingKey(headings: readonly string[]): string {
  return headings.map(foldText).join('\n');
}
