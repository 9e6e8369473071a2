import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginningOf, shorten } from '../../src/core/say/shorten.ts';

const LONE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;

describe('a text that is too long', () => {
  it.each([
    ['short', 10, 'short'],
    ['ten signs.', 10, 'ten signs.'],
    ['eleven sign', 10, 'eleven si…'],
    ['two words here', 10, 'two words…'],
    ['1💥💥💥💥', 4, '1💥…'],
    ['💥💥', 2, '…'],
  ])('%s, at most %i: %s', (text, most, short) => {
    expect(shorten(text, most)).toBe(short);
  });

  it('is never cut within a character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 1, max: 20 }), (text, most) => {
        const short = shorten(text, most);
        expect(short.length).toBeLessThanOrEqual(most);
        expect(short).not.toMatch(LONE);
        expect(text.startsWith(beginningOf(text, most))).toBe(true);
        expect(beginningOf(text, most)).not.toMatch(LONE);
      }),
    );
  });
});
