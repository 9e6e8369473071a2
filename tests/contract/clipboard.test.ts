import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseClipboard, writeClipboard } from '../../src/app/clipboard.ts';

describe('text from the clipboard', () => {
  it.each([
    ['one cell', 'M4', [['M4']]],
    [
      'cells and rows',
      'a\tb\nc\td',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'CRLF and a last line end',
      'a\tb\r\nc\td\r\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['CR alone', 'a\rb\r', [['a'], ['b']]],
    ['an empty row within', 'a\n\nb', [['a'], [''], ['b']]],
    ['an empty last row', 'a\n\n', [['a'], ['']]],
    ['empty cells at either end', '\ta\t\n', [['', 'a', '']]],
    ['a line break in a cell', '"two\nlines"\tb\n', [['two\nlines', 'b']]],
    ['a tab and CRLF in a cell', '"a\tb\r\nc"', [['a\tb\r\nc']]],
    ['doubled quotes', '"say ""no"""\tb', [['say "no"', 'b']]],
    ['an empty quoted cell', '""\tb', [['', 'b']]],
    ['inch marks', '1/4"\t3/8" nut', [['1/4"', '3/8" nut']]],
    ['a quote that never closes', '"half\tb\nc', [['"half', 'b'], ['c']]],
    ['text behind the quotes', '"short" nut\tb', [['"short" nut', 'b']]],
    ['rows of different length', 'a\nb\tc', [['a'], ['b', 'c']]],
  ])('%s', (_what, text, rows) => {
    expect(parseClipboard(text)).toEqual(rows);
  });
});

describe('text for the clipboard', () => {
  it('has quotes only where they are needed', () => {
    const rows = [
      ['M4', '1/4"', '"x"'],
      ['a\tb', 'two\nlines', ''],
    ];
    expect(writeClipboard(rows)).toBe('M4\t1/4"\t"""x"""\n"a\tb"\t"two\nlines"\t');
  });

  it('is read back as it was', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '"', '\t', '\n', '\r', ' ', '=', 'é') });
    const rows = fc
      .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }))
      .chain(([height, width]) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: height, maxLength: height }),
      );
    fc.assert(
      fc.property(rows, (all) => {
        expect(parseClipboard(writeClipboard(all))).toEqual(all);
      }),
    );
  });
});
