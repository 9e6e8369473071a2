import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PressPanel, rollUpPress } from '../../src/core/rollup/press.ts';
import { forgetOrder, inSetOrder, moveStep } from '../../src/core/rollup/press-order.ts';
import { ORDER_SET } from '../../src/core/rollup/press-practice.ts';
import { pressReport } from '../../src/core/rollup/press-report.ts';
import { judged, NUT } from './rollup-list.ts';

const STOCK = ',,,,,,,';
const PARTS = [
  `NUT-A,${NUT}${STOCK}`,
  `NUT-HEAVY,clinch nut,M6,carbon-steel-hardened,HRC 32,1,8.1,0.08,0,13,20,11,900,600${STOCK}`,
  `STUD-B,clinch stud,M5,carbon-steel-hardened,HRC 32,1,5.2,0.08,0,9,10,6,450,250${STOCK}`,
];
const ROWS = [
  'NUT-HEAVY,Front,DC01,1.5,8.1,2', // row 2
  'NUT-A,Front,DC01,1.5,5.6,4',
  'NUT-A,Front,DC01,1.5,5.6,6', // row 4: pressed as one with row 3
  'STUD-B,Front,DC01,1.5,5.2,5',
  'NUT-A,Lid,DC01,1.5,5.6,4', // row 6
  'STUD-B,Lid,DC01,1.5,5.2,4',
];
const { list, parts } = judged(ROWS, PARTS);
const suggested = rollUpPress(list, parts);

function panel(order: readonly number[], name = 'Front'): PressPanel {
  const found = inSetOrder(suggested, order).panels.find((one) => one.panel === name);
  if (!found) throw new Error(`no panel ${name}`);
  return found;
}

function names(order: readonly number[], name = 'Front'): readonly string[] {
  return panel(order, name).steps.map(({ partNumber }) => partNumber);
}

describe('the order of pressing', () => {
  it('is the suggested one until the user sets another', () => {
    expect(inSetOrder(suggested, [])).toEqual(suggested);
    expect(names([])).toEqual(['STUD-B', 'NUT-A', 'NUT-HEAVY']);
    expect(panel([]).isOrderSet).toBeUndefined();
  });

  it('moves one step and numbers the panel anew', () => {
    const order = moveStep([], panel([]), 2, 0);
    expect(names(order)).toEqual(['NUT-HEAVY', 'STUD-B', 'NUT-A']);
    expect(panel(order).steps.map(({ order: place }) => place)).toEqual([1, 2, 3]);
    expect(panel(order).isOrderSet).toBe(true);
  });

  it('leaves other panels as suggested, and keeps what was set for one panel when another is set', () => {
    const front = moveStep([], panel([]), 2, 0);
    expect(names(front, 'Lid')).toEqual(['STUD-B', 'NUT-A']);
    expect(panel(front, 'Lid').isOrderSet).toBeUndefined();
    const both = moveStep(front, panel(front, 'Lid'), 0, 1);
    expect(names(both, 'Lid')).toEqual(['NUT-A', 'STUD-B']);
    expect(names(both)).toEqual(['NUT-HEAVY', 'STUD-B', 'NUT-A']);
  });

  it('goes back to the suggested order panel by panel', () => {
    const front = moveStep([], panel([]), 2, 0);
    const both = moveStep(front, panel(front, 'Lid'), 0, 1);
    const back = forgetOrder(both, panel(both));
    expect(names(back)).toEqual(['STUD-B', 'NUT-A', 'NUT-HEAVY']);
    expect(names(back, 'Lid')).toEqual(['NUT-A', 'STUD-B']);
  });

  it('puts a step that it does not know after the others', () => {
    expect(names([2, 3, 4])).toEqual(['NUT-HEAVY', 'NUT-A', 'STUD-B']);
    expect(names([4])).toEqual(['NUT-A', 'STUD-B', 'NUT-HEAVY']);
  });

  it('loses no step and no row, whatever rows it names', () => {
    const rowsOf = (steps: PressPanel['steps']) => steps.flatMap(({ rows }) => rows).sort((a, b) => a - b);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 })), (order) => {
        const after = inSetOrder(suggested, order).panels;
        expect(after.map(({ steps }) => rowsOf(steps))).toEqual(suggested.panels.map(({ steps }) => rowsOf(steps)));
      }),
    );
  });

  it('is said in the report of that panel only', () => {
    const order = moveStep([], panel([]), 2, 0);
    const blocks = pressReport(list, inSetOrder(suggested, order)).blocks;
    expect(blocks.find(({ title }) => title === 'Panel Front')?.notes).toContain(ORDER_SET);
    expect(blocks.find(({ title }) => title === 'Panel Lid')?.notes).not.toContain(ORDER_SET);
    expect(blocks[0]?.rows.map(([, place, , part]) => [place, part])).toEqual([
      [1, 'NUT-HEAVY'],
      [2, 'STUD-B'],
      [3, 'NUT-A'],
    ]);
  });
});
