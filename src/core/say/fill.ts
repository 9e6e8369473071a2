import { rememberFor, rememberSome } from '../caching/remember.ts';
import type { Text, Values, Words } from '../model/finding.ts';
import type { LengthUnit } from '../model/list.ts';
import { showValue, unitOf } from './show-value.ts';

/**
 * Fills the slots of both lengths of a text. `{name}` is a value in the unit system asked for, or a word; `{name:unit}` adds the
 * unit. A slot with nothing behind it is an error of the rule and throws.
 */
export function fillText(text: Text, values: Values, words: Words, units: LengthUnit): Text {
  return {
    brief: fillSentence(text.brief, values, words, units),
    full: fillSentence(text.full, values, words, units),
  };
}

/** Throws where a slot of a text has nothing behind it, so that the rule is named instead of a hole shown. */
export function refuseHoles(text: Text, values: Values, words: Words): void {
  for (const name of slotsOf(text)) {
    if (values[name] === undefined && words[name] === undefined) throw new Error(`no value for {${name}}`);
  }
}

const slotsOf = rememberFor(({ brief, full }: Text): readonly string[] => {
  const slots = [...piecesOf(brief), ...piecesOf(full)].flatMap((piece) =>
    typeof piece === 'string' ? [] : piece.name,
  );
  return [...new Set(slots)];
});

function fillSentence(sentence: string, values: Values, words: Words, units: LengthUnit): string {
  let filled = '';
  for (const piece of piecesOf(sentence)) {
    filled += typeof piece === 'string' ? piece : fillSlot(piece.name, piece.withUnit, values, words, units);
  }
  return tidy(filled);
}

/** What stands between the slots of a sentence, as it is, and the slots. */
type Piece = string | { readonly name: string; readonly withUnit: boolean };

/** Sentences of rules are few, and filled over and over. */
const piecesOf = rememberSome((sentence): readonly Piece[] => {
  const pieces: Piece[] = [];
  let end = 0;
  for (const slot of sentence.matchAll(/\{(\w+)(:unit)?\}/g)) {
    pieces.push(sentence.slice(end, slot.index), { name: slot[1] ?? '', withUnit: slot[2] !== undefined });
    end = slot.index + slot[0].length;
  }
  return [...pieces, sentence.slice(end)];
});

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
  if (!GAP.test(sentence)) return sentence.trim();
  return sentence
    .replace(/ {2,}/g, ' ')
    .replace(/ ([.,;:])/g, '$1')
    .trim();
}

const GAP = / [ .,;:]/;
