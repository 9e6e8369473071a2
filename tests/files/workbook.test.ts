import { describe, expect, it } from 'vitest';
import type { RawFile } from '../../src/core/model/raw.ts';
import { readFile } from '../../src/io/read-file.ts';
import { row, workbook } from './make.ts';
import { edit, LINKS, type Parts, WORKBOOK_CASES } from './workbook-cases.ts';

describe('odd workbooks', () => {
  it.each(WORKBOOK_CASES)('$trait', (odd) => {
    const read = readFile(odd.bytes, 'list.xlsx');
    const rows = read.tables[0]?.rows ?? [];
    expect(rows.map((found) => found.cells)).toEqual(odd.cells);
    expect(rows.map((found) => found.number)).toEqual(odd.numbers ?? odd.cells.map((_, at) => at + 1));
    expect(flagsOf(read)).toEqual(odd.flags ?? {});
    expect(rows.filter((found) => found.hidden).map((found) => found.number)).toEqual(odd.hidden ?? []);
    expect(read.notices.map((notice) => notice.text)).toEqual(
      (odd.notices ?? []).map((text) => expect.stringMatching(text)),
    );
  });

  it('gives all sheets in order, with names and hidden state', () => {
    const data = row(1, 'a');
    const sheets = [
      { name: 'Read &amp; me', data: '' },
      { name: 'Teile', data, state: 'veryHidden' },
      { name: '部品', data, state: 'hidden' },
    ];
    const { tables } = readFile(workbook({ sheets }), 'list.xlsx');
    expect(tables.map(({ name, hidden, rows }) => [name, hidden ?? false, rows.length])).toEqual([
      ['Read & me', false, 0],
      ['Teile', true, 1],
      ['部品', true, 1],
    ]);
  });

  it('reads on when one of several sheets is lost, and says which', () => {
    const sheets = ['A', 'B', 'C'].map((name) => ({ name, data: row(1, name) }));
    const change = ({ 'xl/worksheets/sheet2.xml': _, ...parts }: Parts) => parts;
    const read = readFile(workbook({ sheets, change }), 'list.xlsx');
    expect(read.tables.map((table) => table.name)).toEqual(['A', 'C']);
    expect(read.notices).toEqual([
      { sheet: 'B', text: expect.stringMatching(/^Sheet ‘B’ is named in the workbook but missing/) },
    ]);
  });

  it('skips chart sheets', () => {
    const sheets = ['A', 'Chart'].map((name) => ({ name, data: row(1, name) }));
    const change = (parts: Parts) =>
      edit(parts, LINKS, 'worksheet" Target="worksheets/sheet2', 'chartsheet" Target="worksheets/sheet2');
    expect(readFile(workbook({ sheets, change }), 'list.xlsx').tables.map((table) => table.name)).toEqual(['A']);
  });

  it('tells how far it is, and stops when told to', () => {
    const shares: number[] = [];
    const options = { onProgress: (share: number) => shares.push(share), isCancelled: () => shares.length > 2 };
    const sheets = ['A', 'B'].map((name) => ({ name, data: row(1, name) }));
    expect(() => readFile(workbook({ sheets }), 'list.xlsx', options)).toThrow('Reading ‘list.xlsx’ was stopped');
    expect(shares).toEqual([0, 0.5, 0.5]);
  });
});

function flagsOf(read: RawFile): Record<number, unknown> {
  const rows = read.tables[0]?.rows ?? [];
  return Object.fromEntries(
    rows.filter((found) => found.flags !== undefined).map((found) => [found.number, found.flags]),
  );
}
