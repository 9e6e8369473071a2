import { describe, expect, it } from 'vitest';
import { buildList } from '../../src/core/intake/build-list.ts';
import { Unreadable } from '../../src/core/model/raw.ts';
import { readFile } from '../../src/io/read-file.ts';
import { encode } from './encode.ts';
import { oneSheet, row, utf8, workbook } from './make.ts';

const HEAD = 'Part number,Qty,Material,Thickness';

function listOf(bytes: Uint8Array, file = 'list.csv') {
  return buildList(readFile(bytes, file));
}

describe('readable files that are no list', () => {
  const NO_LIST: readonly (readonly [string, Uint8Array, string])[] = [
    ['one byte', utf8('x'), 'BOM.csv'],
    ['one byte beyond ASCII', Uint8Array.of(0xef), 'BOM.csv'],
    ['prose', utf8('Dear Mara,\nplease press the nuts before paint, not after.\nRegards'), 'notes.csv'],
    ['tabs that became letters', utf8('PartNumbertQuantitytNote\nNutt4tflush\nStudt2t'), 'list.tsv'],
    ['numbers only', utf8('1,2,3\n4,5,6\n'), 'list.csv'],
    ['a workbook of numbers', oneSheet(row(1, 1, 2) + row(2, 3, 4)), 'list.xlsx'],
  ];

  it.each(NO_LIST)('%s: says that no headings were found and in which file', (_, bytes, file) => {
    expect(() => listOf(bytes, file)).toThrow(Unreadable);
    expect(() => listOf(bytes, file)).toThrow(/^No row of column headings was found in .*: add one such as/);
    expect(() => listOf(bytes, file)).toThrow(file);
  });
});

describe('what the reader found out reaches the list', () => {
  it('names encoding and delimiter of a text file', () => {
    const list = listOf(encode('型番;数量;板厚\nN-M4;4;1,5\n', 'shift_jis'));
    expect(list.reading).toEqual({ encoding: 'shift_jis', delimiter: ';' });
  });

  it('has none for a workbook', () => {
    expect(listOf(oneSheet(row(1, 'Part number', 'Qty') + row(2, 'N-M4', 4)), 'list.xlsx')).not.toHaveProperty(
      'reading',
    );
  });

  it('says once which row has shifted cells', () => {
    const list = listOf(utf8(`${HEAD}\nN-4,4,Al 5052, H32,1.5\nN-5,4,steel,1.5`));
    expect(list.notices).toEqual([
      { sheet: '', row: 2, text: expect.stringMatching(/^Row 2 has 5 cells under 4 headings/) },
    ]);
    expect(list.lines[0]?.thickness.mm).toBeNull();
    expect(list.lines[1]?.thickness.mm).toBe(1.5);
  });

  it('says once and for all which rows have shifted cells', () => {
    const list = listOf(utf8(`${HEAD}\n${'N-5,4,steel,1.5\n'.repeat(70)}${'N-4,4,Al 5052, H32,1.5\n'.repeat(100)}`));
    const numbers = '72, 73, 74, 75, 76, 77, 78, 79, 80, 81 \\(and 90 more\\)';
    expect(list.notices.map(({ text }) => text)).toEqual([
      expect.stringMatching(`^Rows ${numbers} have more cells than the 4 headings, so their cells may have moved`),
    ]);
  });

  it('leaves out what concerns other sheets', () => {
    const parts = row(1, 'Part number', 'Qty') + row(2, 'N-M4', 4);
    const prices = `${row(1, 'Total')}<row r="2"><c r="A2"><f>SUM(A3:A9)</f></c></row>`;
    const bytes = workbook({
      sheets: [
        { name: 'Parts', data: parts },
        { name: 'Prices', data: prices },
      ],
    });
    expect(readFile(bytes, 'list.xlsx').notices).toHaveLength(1);
    expect(listOf(bytes, 'list.xlsx').notices).toEqual([]);
  });

  it('does not read a date where a size should be', () => {
    const bytes = oneSheet(
      `${row(1, 'Part number', 'Thread', 'Thickness')}<row r="2"><c r="A2" t="s"><v>0</v></c><c r="B2" s="1"><v>45413</v></c><c r="C2" s="1"><v>45413</v></c></row>`,
      { strings: ['N-M4'], builtIns: [16] },
    );
    const [line] = listOf(bytes, 'list.xlsx').lines;
    expect(line?.thickness.mm).toBeNull();
    expect(line?.flags).toEqual({ 1: 'date', 2: 'date' });
  });
});
