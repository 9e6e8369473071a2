import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/io/read-file.ts';
import { safeCsvText, safeText } from '../../src/io/write/safe-text.ts';
import { oneSheet, utf8 } from './make.ts';

describe('text that comes alive when a list is opened again', () => {
  it.each(['=1+1\nnote', '+cmd', '-x', '@sum', '\tx', '\rx', '＝1', '＋1', '－1', '＠1'])(
    '%j gets an apostrophe',
    (text) => {
      expect(safeCsvText(text)).toBe(`'${text}`);
    },
  );

  it.each(['-0.5', '+3', '-1,5', '1/4', 'M4', '"=1"', ''])('%j is left as it is', (text) => {
    expect(safeCsvText(text)).toBe(text);
  });

  it('reads back from a text file as it was written', () => {
    const read = readFile(utf8(`Part,Note\nNut,"${safeCsvText('=1+1\nnote')}"`), 'list.csv');
    expect(read.tables[0]?.rows[1]?.cells).toEqual(['Nut', "'=1+1\nnote"]);
  });

  it('an escape in a text reads back from a workbook as that text', () => {
    const data = `<row><c t="inlineStr"><is><t>${safeText('_x0041_')}</t></is></c></row>`;
    expect(readFile(oneSheet(data), 'list.xlsx').tables[0]?.rows[0]?.cells).toEqual(['_x0041_']);
  });
});
