import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TextEncoding } from '../../src/core/model/raw.ts';
import { readFile } from '../../src/io/read-file.ts';
import { charactersOf, encode, encodeWithMark } from '../files/encode.ts';
import { utf8 } from '../files/make.ts';

type Grid = readonly (readonly string[])[];

interface Dialect {
  readonly delimiter: string;
  readonly newline: string;
  /** Quotes every cell, or only those that need it. */
  readonly quotesAll: boolean;
}

const DIALECTS: readonly Dialect[] = [',', ';', '\t', '|', '，', '、'].flatMap((delimiter) =>
  ['\n', '\r\n', '\r'].flatMap((newline) => [true, false].map((quotesAll) => ({ delimiter, newline, quotesAll }))),
);
const UNICODE = ['utf-8', 'utf-16le', 'utf-16be'] as const;
/** Encodings of one region with the characters that the law tries: all of them, or all that the test can write. */
const REGIONAL = {
  'windows-1252': [...'éØß€”…×ñãœ'],
  'windows-1250': charactersOf('windows-1250'),
  'windows-1251': charactersOf('windows-1251'),
  shift_jis: charactersOf('shift_jis'),
  gb18030: charactersOf('gb18030'),
} as const;

const awkward = fc.constantFrom(
  '"',
  '""',
  ',',
  ';',
  '\t',
  '|',
  '，',
  '、',
  '\n',
  '\r\n',
  ' ',
  '1/4"',
  '#',
  '=',
  '-',
  'sep=;',
  'Ø',
  '螺母',
  '0',
);
const anyCell = fc.oneof(
  fc.array(awkward, { maxLength: 6 }).map((bits) => bits.join('')),
  fc.string({ unit: 'grapheme', maxLength: 8 }),
);
const dialect = fc.constantFrom(...DIALECTS);

describe('delimited text reads back cell for cell', () => {
  it.each(UNICODE)('%s, with and without mark, in every dialect', (encoding) => {
    fc.assert(
      fc.property(gridOf(anyCell), dialect, fc.boolean(), (grid, how, hasMark) => {
        const text = write(grid, how);
        expectSame(grid, hasMark ? encodeWithMark(text, encoding) : encode(text, encoding), how, encoding);
      }),
      { numRuns: 300 },
    );
  });

  it.each(Object.keys(REGIONAL) as readonly (keyof typeof REGIONAL)[])(
    '%s, in every dialect it can write',
    (encoding) => {
      const known = REGIONAL[encoding];
      const dialects = dialect.filter(({ delimiter }) => delimiter < '\u0080' || known.includes(delimiter));
      const cell = fc
        .array(fc.oneof(fc.constantFrom(...known), fc.constantFrom(...'aZ09 "\n,;|\t-')), { maxLength: 6 })
        .map((bits) => bits.join(''));
      fc.assert(
        fc.property(gridOf(cell), dialects, (grid, how) => {
          expectSame(grid, encode(write(grid, how), encoding), how, encoding);
        }),
        { numRuns: 300 },
      );
    },
  );

  it('finds the delimiter itself when headings are words and cells hold none of the candidates', () => {
    const plainCell = fc.stringMatching(/^[a-zA-Z0-9 .-]{1,8}$/).filter((cell) => cell.trim() !== '');
    const list = fc
      .integer({ min: 2, max: 6 })
      .chain((width) => fc.array(rowOf(plainCell, width), { minLength: 1, maxLength: 6 }));
    fc.assert(
      fc.property(list, dialect, (rows, how) => {
        const headings = ['Part', 'Size', 'Qty', 'Panel', 'Finish', 'Note'].slice(0, rows[0]!.length);
        const read = readFile(utf8(write([headings, ...rows], how)), 'list.csv');
        expect(read.delimiter).toBe(how.delimiter);
        expect(read.tables[0]!.rows.map((row) => row.cells)).toEqual([headings, ...rows]);
      }),
      { numRuns: 300 },
    );
  });
});

function expectSame(grid: Grid, bytes: Uint8Array, { delimiter }: Dialect, encoding: TextEncoding): void {
  const read = readFile(bytes, 'list.csv', { delimiter, encoding });
  const wanted = grid
    .map((cells, index) => ({ number: index + 1, cells }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  expect(read.tables[0]!.rows).toEqual(wanted);
}

/** Tables of one width whose first cell is a word, so that no case is blank or looks like another kind of file. */
function gridOf(cell: fc.Arbitrary<string>): fc.Arbitrary<string[][]> {
  const rows = fc
    .integer({ min: 1, max: 5 })
    .chain((width) => fc.array(rowOf(cell, width), { minLength: 1, maxLength: 6 }));
  return rows.map(([first, ...rest]) => [['Part', ...first!.slice(1)], ...rest]);
}

function rowOf(cell: fc.Arbitrary<string>, width: number): fc.Arbitrary<string[]> {
  return fc.array(cell, { minLength: width, maxLength: width });
}

/** A writer of our own for the test, by RFC 4180: quotes are doubled, what holds a delimiter or line end is quoted. */
function write(grid: Grid, { delimiter, newline, quotesAll }: Dialect): string {
  const writeCell = (cell: string) => {
    const needsQuotes = quotesAll || cell.includes(delimiter) || /["\r\n]/.test(cell);
    return needsQuotes ? `"${cell.replaceAll('"', '""')}"` : cell;
  };
  return grid.map((cells) => cells.map(writeCell).join(delimiter)).join(newline);
}
