import type { Text, Values, Words } from '../model/finding.ts';
import type { LengthUnit } from '../model/list.ts';
import { showValue, unitOf } from './show-value.ts';

/**
 * Fills the slots of both lengths of a text. `{name}` is a value in the unit system asked for, or a word; `{name:unit}` adds the
 * unit. A slot with nothing behind it is an error of the rule and throws, so that the rule is named instead of a hole shown.
 */
export function fillText(text: Text, values: Values, words: Words, units: LengthUnit): Text {
  const fill = (sentence: string) =>
    sentence.replace(/\{(\w+)(:unit)?\}/g, (_, name: string, withUnit?: string) =>
      fillSlot(name, withUnit !== undefined, values, words, units),
    );
  return { brief: tidy(fill(text.brief)), full: tidy(fill(text.full)) };
}

function fillSlot(name: string, withUnit: boolean, values: Values, words: Words, units: LengthUnit): string {
  const value = values[name];
  if (value !== undefined)
    return withUnit ? `${showValue(name, value, units)}${unitOf(name, units)}` : showValue(name, value, units);
  const word = words[name];
  if (word === undefined) throw new Error(`no value for {${name}}`);
  return word;
}

/** A word slot may be empty; what it leaves behind is closed up. */
function tidy(sentence: string): string {
  return sentence
    .replace(/ {2,}/g, ' ')
    .replace(/ ([.,;:])/g, '$1')
    .trim();
}
