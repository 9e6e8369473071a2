import type { Text } from '../model/finding.ts';

/** Said by several rules in the same words. */
export const NO_SHEET_METAL: Text = {
  brief: 'Sheet metal unknown',
  full: 'The sheet metal is not known{listed}: its alloy and temper would settle this.',
};

export const NO_THICKNESS: Text = {
  brief: 'Sheet thickness unknown',
  full: 'The sheet thickness is not known{listed}: a thickness with its unit, or a gauge with its metal, would settle this.',
};

/** How a text that was not understood is quoted inside a sentence: ` ("see drawing")`, or nothing for a blank cell. */
export function quoted(text: string): string {
  return text.trim() === '' ? '' : ` (listed: “${text.trim()}”)`;
}
