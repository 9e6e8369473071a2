import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareLists } from '../../src/core/compare/compare-lists.ts';
import type { Comparison } from '../../src/core/compare/comparison.ts';
import { HEADINGS, judge, type Listed, type ListedRow, makeList, mixed, NOTHING, told } from './compare-list.ts';

const RUNS = { seed: 20_250_314, numRuns: 15, endOnFailure: true };
const LIST = makeList(60, 7);

/** A list of a few parts, panels and texts, so that rows are often alike. */
const anyRow = fc.record({
  Item: fc.constantFrom('', '1', '2', '3', '10', '1.1'),
  'Part number': fc.constantFrom('NUT-M4-10-CS', 'NUT-M3-10-CS', 'STUD-M4-10-12-CS', 'SCREW-M4x10', 'NEW-1', ''),
  Description: fc.constantFrom('Clinch nut, M4', 'Clinch nut', 'Pan head machine screw', ''),
  Panel: fc.constantFrom('P1', 'P2', 'P3', ''),
  Material: fc.constantFrom('DC01', '5052-H32', '304', ''),
  'Thickness (mm)': fc.constantFrom('1.5', '1.50', '2', ''),
  Qty: fc.constantFrom('2', '4', ''),
  Remark: fc.constantFrom('', 'hinge side', 'Hinge  side'),
});
const anyList = fc.array(anyRow, { minLength: 3, maxLength: 14 }).map(
  (rows): Listed => ({
    headings: HEADINGS,
    rows: [...LIST.rows.slice(0, 4), ...rows.map((cells, at): ListedRow => ({ id: `n${at}`, cells }))],
    titles: [],
  }),
);

const rowsOf = (rows: Comparison['added']) => rows.map(({ row }) => row).sort((a, b) => a - b);
const both = (comparison: Comparison) => comparison.pairs.map(({ before, after }) => `${before} ${after}`).sort();

describe('a list and itself', () => {
  it('in any order of rows and columns do not differ', () => {
    const before = judge(LIST);
    fc.assert(
      fc.property(fc.nat(), fc.nat(), (rows, columns) => {
        const after = { ...LIST, headings: mixed(LIST.headings, columns), rows: mixed(LIST.rows, rows) };
        const comparison = compareLists(before, judge(after));
        expect(told(comparison, LIST, after)).toEqual(NOTHING);
        expect([comparison.verdicts, comparison.quantities, comparison.sheets]).toEqual([[], [], []]);
      }),
      RUNS,
    );
  });

  it('do not differ however alike their rows are', () => {
    fc.assert(
      fc.property(anyList, (list) => {
        const [before, after] = [judge(list), judge(list)];
        const comparison = compareLists(before, after);
        expect(told(comparison, list, list)).toEqual(NOTHING);
        expect([comparison.verdicts, comparison.orderChanged, comparison.columnsMoved]).toEqual([[], false, false]);
        expect(comparison.pairs.every((pair) => pair.before === pair.after)).toBe(true);
      }),
      RUNS,
    );
  });
});

describe('nothing is hidden', () => {
  it('whatever cell is given whatever text', () => {
    const before = judge(LIST);
    const anyText = fc.constantFrom('', '7', '1.6', 'x', '.060 in', 'NUT-M3-10-CS', 'P02', '304', 'X1 Y1', '-');
    fc.assert(
      fc.property(fc.nat(LIST.rows.length - 1), fc.constantFrom(...HEADINGS), anyText, (at, heading, text) => {
        const row = LIST.rows[at];
        if (!row || (row.cells[heading] ?? '') === text) return;
        const rows = LIST.rows.with(at, { ...row, cells: { ...row.cells, [heading]: text } });
        const after = { ...LIST, rows };
        const found = told(compareLists(before, judge(after)), LIST, after);
        expect(Object.values(found).flat().join('\n')).toContain(row.id);
      }),
      { ...RUNS, numRuns: 80 },
    );
  });
});

describe('the other way round', () => {
  it('what was added is removed, and the same rows are found again', () => {
    fc.assert(
      fc.property(anyList, anyList, (one, other) => {
        const [before, after] = [judge(one), judge(other)];
        const [there, back] = [compareLists(before, after), compareLists(after, before)];
        expect(rowsOf(back.added)).toEqual(rowsOf(there.removed));
        expect(rowsOf(back.removed)).toEqual(rowsOf(there.added));
        const turned = back.pairs.map((pair) => ({ before: pair.after, after: pair.before }));
        expect(both({ ...back, pairs: turned })).toEqual(both(there));
        expect(back.changed.length).toBe(there.changed.length);
        expect(back.moved.length).toBe(there.moved.length);
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  it('every row of either list is in both, added or removed', () => {
    fc.assert(
      fc.property(anyList, anyList, (one, other) => {
        const [before, after] = [judge(one), judge(other)];
        const { pairs, added, removed } = compareLists(before, after);
        const all = ({ lines, others }: typeof before) =>
          [...lines, ...others.filter(({ what }) => what !== 'empty row' && what !== 'heading')].map(({ row }) => row);
        const sorted = (rows: readonly number[]) => [...rows].sort((a, b) => a - b);
        expect(sorted([...pairs.map((pair) => pair.before), ...removed.map(({ row }) => row)])).toEqual(
          sorted(all(before)),
        );
        expect(sorted([...pairs.map((pair) => pair.after), ...added.map(({ row }) => row)])).toEqual(
          sorted(all(after)),
        );
      }),
      RUNS,
    );
  });
});
