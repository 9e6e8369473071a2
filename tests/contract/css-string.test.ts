import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cssString } from '../../src/ui/css-string.ts';

describe('a text in a style sheet', () => {
  it('leaves words as they are', () => {
    expect(cssString('Press sheet: cabinet-2.xlsx')).toBe('"Press sheet: cabinet-2.xlsx"');
  });

  it('comes back as it was and holds no sign that could end it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const written = cssString(text);
        expect(written.slice(1, -1)).not.toMatch(/["{};<>\n]/);
        const read = written
          .slice(1, -1)
          .replace(/\\([0-9a-f]+) /g, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)));
        expect(read).toBe(text);
      }),
    );
  });
});
