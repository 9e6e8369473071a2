import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TextEncoding } from '../../src/core/model/raw.ts';
import { readFile } from '../../src/io/read-file.ts';
import { utf8, utf8WithMark, utf16, western } from '../files/make.ts';

type Grid = readonly (readonly string[])[];

interface Dialect {
  readonly delimiter: string;
  readonly newline: string;
  /** Quotes every cell, or only those that need it. */
  readonly quotesAll: boolean;
}

const DIALECTS: readonly Dialect[] = [',', ';', '\t', '|', '，'].flatMap((delimiter) =>
  ['\n', '\r\n', '\r'].flatMap((newline) => [true, false].map((quotesAll) => ({ delimiter, newline, quotesAll }))),
);
const UNICODE: readonly { name: string; encoding: TextEncoding; encode: (text: string) => Uint8Array }[] = [
  { name: 'UTF-8', encoding: 'utf-8', encode: utf8 },
  { name: 'UTF-8 with mark', encoding: 'utf-8', encode: utf8WithMark },
  { name: 'UTF-16LE', encoding: 'utf-16le', encode: (text) => utf16(`\ufeff${text}`, 'le') },
  { name: 'UTF-16BE', encoding: 'utf-16be', encode: (text) => utf16(`\ufeff${text}`, 'be') },
];

const awkward = fc.constantFrom(
  '"',
  '""',
  ',',
  ';',
  '\t',
  '|',
  '，',
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
const latinCell = fc.array(fc.constantFrom(...'aZ09 "\n,;|\t-éØß€”…'), { maxLength: 6 }).map((bits) => bits.join(''));
const dialect = fc.constantFrom(...DIALECTS);

describe('delimited text reads back cell for cell', () => {
  it.each(UNICODE)('$name, in every dialect', ({ encoding, encode }) => {
    fc.assert(
      fc.property(gridOf(anyCell), dialect, (grid, how) => {
        expectSame(grid, encode(write(grid, how)), how, encoding);
      }),
      { numRuns: 300 },
    );
  });

  it('Windows-1252, in every Western dialect', () => {
    const westernDialect = dialect.filter(({ delimiter }) => delimiter !== '，');
    fc.assert(
      fc.property(gridOf(latinCell), westernDialect, (grid, how) => {
        expectSame(grid, western(write(grid, how)), how, 'windows-1252');
      }),
      { numRuns: 300 },
    );
  });

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
