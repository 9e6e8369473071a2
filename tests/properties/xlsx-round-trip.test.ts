import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/io/read-file.ts';
import { oneSheet, textRows, type WorkbookSpec } from '../files/make.ts';

type Grid = readonly (readonly string[])[];

const awkward = fc.constantFrom(
  '<',
  '&',
  '&amp;',
  ']]>',
  '_x000D_',
  '_x005F_',
  '\r\n',
  '\n',
  '\u0001',
  '"',
  ' ',
  '=',
  '007',
  'Ø',
  '螺母',
  '🔩',
);
const cell = fc.oneof(
  fc.array(awkward, { maxLength: 6 }).map((bits) => bits.join('')),
  fc.string({ unit: 'grapheme', maxLength: 8 }),
);
const grids = fc.array(fc.array(cell, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 6 });
const dresses = fc.constantFrom<Partial<WorkbookSpec>>({}, { prefix: 'x' }, { isStrict: true });

describe('workbooks read back cell for cell', () => {
  it.each(['inline', 'shared'])('%s texts', (how) => {
    fc.assert(
      fc.property(grids, dresses, (grid, dress) => {
        const strings: string[] | undefined = how === 'shared' ? [] : undefined;
        const data = textRows([['Part'], ...grid], strings);
        const read = readFile(oneSheet(data, { ...dress, ...(strings && { strings }) }), 'list.xlsx');
        expect(read.tables[0]!.rows.map(({ number, cells }) => ({ number, cells }))).toEqual(
          filledRows([['Part'], ...grid]),
        );
        expect(read.notices).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});

/** Blank rows are left out, and empty cells at the end of a row. */
function filledRows(grid: Grid) {
  return grid
    .map((cells, index) => ({
      number: index + 1,
      cells: cells.slice(0, cells.findLastIndex((text) => text !== '') + 1),
    }))
    .filter(({ cells }) => cells.some((text) => text.trim() !== ''));
}
