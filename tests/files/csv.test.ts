import { describe, expect, it } from 'vitest';
import type { RawFile } from '../../src/core/model/raw.ts';
import { readFile } from '../../src/io/read-file.ts';
import { CSV_CASES } from './csv-cases.ts';
import { ENCODING_CASES } from './encoding-cases.ts';
import { utf8 } from './make.ts';

describe('odd text files', () => {
  it.each([...CSV_CASES, ...ENCODING_CASES])('$trait', (odd) => {
    const read = readFile(odd.bytes, 'list.csv', odd.options);
    expect(cellsOf(read)).toEqual(odd.cells);
    expect(read.tables[0]?.rows.map((row) => row.number)).toEqual(odd.numbers ?? odd.cells.map((_, at) => at + 1));
    expect(read.delimiter).toBe(odd.delimiter ?? ',');
    expect(read.encoding).toBe(odd.encoding ?? 'utf-8');
    const wanted = odd.notices ?? [];
    expect(read.notices.map((notice) => notice.text)).toEqual(wanted.map((text) => expect.stringMatching(text)));
  });

  it('names the row in a notice about a row', () => {
    const read = readFile(utf8('Part,Size,Qty\nPlate,"6 in,2\n'), 'list.csv');
    expect(read.notices.map((notice) => notice.row)).toEqual([2]);
  });

  it('stops when told to', () => {
    const shares: number[] = [];
    const stop = { onProgress: (share: number) => shares.push(share), isCancelled: () => true };
    expect(() => readFile(utf8('Part,Qty\nNut,4'), 'list.csv', stop)).toThrow('Reading ‘list.csv’ was stopped');
    expect(shares).toHaveLength(1);
  });

  it('reads many unclosed quotes in good time', () => {
    const read = readFile(utf8(`Part,Size,Qty\n${'Plate,"6 in,2\n'.repeat(20_000)}`), 'list.csv');
    expect(read.tables[0]?.rows).toHaveLength(20_001);
  });
});

function cellsOf(read: RawFile): (readonly string[])[] {
  return read.tables[0]?.rows.map((row) => row.cells) ?? [];
}
