import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/io/read-file.ts';
import { type Given, WRITERS } from './writers.ts';

const GIVEN: readonly Given[] = [
  {
    name: 'Parts & more',
    rows: [
      ['Cabinet “A”, revision 3', null, null, null, null],
      ['Part', 'Größe ⌀', 'Qty', '材質', 'Checked'],
      ['Nut <M4> & co', '1/4"', 4, 'SUS304 相当', true],
      ['007', ' two  blanks ', 0.1, 'первый\nsecond line', false],
      ['1/4', '=1+1', -1.25, '🔩 flush', new Date(Date.UTC(2024, 2, 5))],
      [null, null, null, null, null],
      ['4006381333931', '1E5', 4006381333931, 'a'.repeat(3000), null],
      ['Total', null, { formula: 'SUM(C3:C5)', result: 2.85 }, { formula: 'A3&"!"', result: 'Nut <M4> & co!' }, null],
      ['zero', null, 0],
    ],
    merge: { top: 0, left: 0, bottom: 0, right: 3 },
  },
  { name: 'Empty', rows: [] },
  {
    name: '価格 2',
    rows: [
      ['Part', 'Price'],
      ['Nut', 0.12],
    ],
    isHidden: true,
  },
];

const READ = [
  {
    name: 'Parts & more',
    rows: [
      {
        number: 1,
        cells: ['Cabinet “A”, revision 3'],
        flags: { 1: 'merged', 2: 'merged', 3: 'merged' },
      },
      { number: 2, cells: ['Part', 'Größe ⌀', 'Qty', '材質', 'Checked'] },
      { number: 3, cells: ['Nut <M4> & co', '1/4"', '4', 'SUS304 相当', 'TRUE'] },
      { number: 4, cells: ['007', ' two  blanks ', '0.1', 'первый\nsecond line', 'FALSE'] },
      { number: 5, cells: ['1/4', '=1+1', '-1.25', '🔩 flush', '2024-03-05'], flags: { 4: 'date' } },
      { number: 7, cells: ['4006381333931', '1E5', '4006381333931', 'a'.repeat(3000)] },
      { number: 8, cells: ['Total', '', '2.85', 'Nut <M4> & co!'] },
      { number: 9, cells: ['zero', '', '0'] },
    ],
  },
  { name: 'Empty', rows: [] },
  {
    name: '価格 2',
    hidden: true,
    rows: [
      { number: 1, cells: ['Part', 'Price'] },
      { number: 2, cells: ['Nut', '0.12'] },
    ],
  },
];

describe('the same data by independent writers', () => {
  it.each(Object.entries(WRITERS))('%s', async (_, write) => {
    const read = readFile(await write(GIVEN), 'list.xlsx');
    const tables = read.tables.map(({ rows, ...table }) => ({
      ...table,
      rows: rows.map(({ cells, ...row }) => ({ ...row, cells: trimmed(cells) })),
    }));
    expect(tables).toEqual(READ);
    expect(read.notices).toEqual([]);
  });
});

/** Writers differ in whether they write blank cells at the end of a row. */
function trimmed(cells: readonly string[]): readonly string[] {
  return cells.slice(0, cells.findLastIndex((cell) => cell !== '') + 1);
}
