import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/io/read-file.ts';
import { safeCsvText } from '../../src/io/write/safe-csv-text.ts';
import { safeText } from '../../src/io/write/safe-text.ts';
import { oneSheet, utf8 } from './make.ts';

describe('text that comes alive when a list is opened again', () => {
  it.each(['=1+1\nnote', '+cmd', '-x', '@sum', '\tx', '\rx', '＝1', '＋1', '－1', '＠1'])(
    '%j gets an apostrophe',
    (text) => {
      expect(safeCsvText(text)).toBe(`'${text}`);
    },
  );

  it.each([
    '-0.5',
    '+3',
    '-1,5',
    '- 5',
    '-1e-3',
    '-',
    '−5',
    '−1+1',
    '1/4',
    'M4',
    '"=1"',
    'a - b',
    'M4;M5',
    'x\n-5',
    '',
  ])('%j is left as it is', (text) => {
    expect(safeCsvText(text)).toBe(text);
  });

  it.each([
    [' =1+1', "' =1+1"],
    ['\ufeff=1+1', "'\ufeff=1+1"],
    ['\u200b-1+1', "'\u200b-1+1"],
    ['\0=1+1', "'=1+1"],
    ['-0.5 mm', "'-0.5 mm"],
    ['+49 170 123', "'+49 170 123"],
    ['M4;=1+1', "M4;'=1+1"],
    ['M4\n=1+1\n- note', "M4\n'=1+1\n'- note"],
    ['M4; "@SUM(1)', 'M4;\' "@SUM(1)'],
  ])('%j becomes %j', (text, wanted) => expect(safeCsvText(text)).toBe(wanted));

  it('reads back from a text file as it was written', () => {
    const read = readFile(utf8(`Part,Note\nNut,"${safeCsvText('=1+1\nnote')}"`), 'list.csv');
    expect(read.tables[0]?.rows[1]?.cells).toEqual(['Nut', "'=1+1\nnote"]);
  });

  it.each(['_x0041_', '_x0041_x0042_', '_x005F_x0041_', '__x0041__'])(
    'an escape in a text reads back from a workbook as that text: %j',
    (text) => {
      const data = `<row><c t="inlineStr"><is><t>${safeText(text)}</t></is></c></row>`;
      expect(readFile(oneSheet(data), 'list.xlsx').tables[0]?.rows[0]?.cells).toEqual([text]);
    },
  );
});
