import { describe, expect, it } from 'vitest';
import { type FindQuery, findCells, nameReplacement, replaceInCells } from '../../src/app/find-cells.ts';

const cells = ['DC01', 'dc01 zinc', 'X$1 (a+b)', ''].map((text, column) => ({ row: 2, column, text }));
const seek = (text: string, more: Partial<FindQuery> = {}): FindQuery => ({
  text,
  matchCase: false,
  wholeCell: false,
  ...more,
});
const found = (query: FindQuery) => findCells(cells, query).map(({ column }) => column);

describe('find and replace', () => {
  it('finds by case, by whole cell, and literally', () => {
    expect(found(seek('dc01'))).toEqual([0, 1]);
    expect(found(seek('dc01', { matchCase: true }))).toEqual([1]);
    expect(found(seek('dc01', { wholeCell: true }))).toEqual([0]);
    expect(found(seek('(a+b)'))).toEqual([2]);
    expect(found(seek('.'))).toEqual([]);
    expect(found(seek(''))).toEqual([]);
  });

  it('replaces every place and takes the new text as it stands', () => {
    const [one] = replaceInCells([{ row: 1, column: 0, text: 'aXbxc' }], seek('x'), '$&$1');
    expect(one?.text).toBe('a$&$1b$&$1c');
    expect(replaceInCells([cells[0]!], seek('DC01', { wholeCell: true }), '')[0]?.text).toBe('');
  });

  it('has a name that says what it did', () => {
    expect(nameReplacement(seek('x'), 'y', 12)).toBe('replace “x” by “y” in 12 cells');
    expect(nameReplacement(seek('x'), '', 1)).toBe('replace “x” by “” in 1 cell');
  });
});
