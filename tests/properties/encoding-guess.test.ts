import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ENCODING_NAMES, type TextEncoding } from '../../src/core/model/raw.ts';
import { decodeText } from '../../src/io/csv/decode.ts';
import { encode } from '../files/encode.ts';
import { WORDS_BY_LANGUAGE } from '../files/words-by-language.ts';

const LANGUAGES = Object.entries(WORDS_BY_LANGUAGE);

describe.each(LANGUAGES)('%s text without mark', (_, { encoding, words }) => {
  const lists = fc.subarray([...words], { minLength: 1 }).map(listOf);

  it('is read rightly or else with a warning', () => {
    fc.assert(
      fc.property(lists, (text) => {
        const decoded = decodeText(encode(text, encoding), 'list.csv');
        if (decoded.text !== text) expect(decoded.notice).toMatch(/which is a guess|do not fit/);
      }),
      { numRuns: 200 },
    );
  });

  it('is read rightly and without a warning once it has all its words', () => {
    const decoded = decodeText(encode(listOf(words), encoding), 'list.csv');
    expect(decoded).toEqual({ text: listOf(words), encoding });
  });
});

describe('a choice of the user', () => {
  it('is obeyed whatever the bytes', () => {
    const encodings = fc.constantFrom(...(Object.keys(ENCODING_NAMES) as TextEncoding[]));
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), encodings, (bytes, encoding) => {
        expect(decodeText(bytes, 'list.csv', encoding).encoding).toBe(encoding);
      }),
    );
  });
});

function listOf(words: readonly string[]): string {
  return ['Part,Note,Qty', ...words.map((word, at) => `N-${at},${word.replaceAll(',', ' ')},4`)].join('\n');
}
