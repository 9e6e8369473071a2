import { describe, expect, it } from 'vitest';
import type { GridRow } from '../../src/app/state.ts';
import { changedRows } from '../../src/ui/grid/changed-rows.ts';
import { isFilteringRows, passesRow, type RowFilter } from '../../src/ui/grid/row-filter.ts';

const rowOf = (row: number, ...cells: string[]): GridRow => ({ row, cells, other: { row, cells, what: 'washer' } });
const NONE: RowFilter = { filter: new Set(), only: null, search: '' };

describe('which rows of a list are shown', () => {
  const row = rowOf(7, 'Clinch nut', '1.5');

  it('is all of them where nothing is asked for', () => {
    expect(isFilteringRows(NONE)).toBe(false);
    expect(passesRow(row, NONE)).toBe(true);
  });

  it.each([
    ['a text in any case', { search: 'CLINCH N' }, true],
    ['a text that no cell has', { search: 'stud' }, false],
    ['a text that runs from one cell into the next', { search: 'nut1' }, false],
    ['the row among others', { only: new Set([6, 7]) }, true],
    ['other rows', { only: new Set([8]) }, false],
    ['a verdict, of a row that has none', { filter: new Set(['fails'] as const) }, false],
  ])('is told by %s', (_, asked, passes) => {
    expect(isFilteringRows({ ...NONE, ...asked })).toBe(true);
    expect(passesRow(row, { ...NONE, ...asked })).toBe(passes);
  });
});

describe('rows that changed', () => {
  const before = [rowOf(2, 'a'), rowOf(3, 'b')];

  it('are those that are other objects', () => {
    const other = rowOf(3, 'c');
    expect(changedRows(before, [...before])).toEqual([]);
    expect(changedRows(before, [before[0] as GridRow, other])).toEqual([other]);
  });

  it('are not told where it is another list', () => {
    expect(changedRows(before, before.slice(1))).toBeNull();
    expect(changedRows(before, [rowOf(2, 'a'), rowOf(4, 'b')])).toBeNull();
  });
});
