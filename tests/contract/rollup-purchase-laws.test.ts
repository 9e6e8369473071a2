import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rollUpPurchase } from '../../src/core/rollup/purchase.ts';
import { judged, NUT } from './rollup-list.ts';

const PARTS = [
  `NUT-A,${NUT},40,100,500,0.10,EUR,5,`,
  `NUT-B,${NUT},no,50,,0.25,usd,42,`,
  `NUT-C,${NUT},yes,,,,,,NUT-D`,
  `NUT-E,${NUT},1000,100,100,0.30,EUR,90,`,
];
const SHOP = { buildQuantity: 7, sparesPercent: 3 };

describe('laws of the purchase list', () => {
  const row = fc
    .tuple(
      fc.constantFrom('NUT-A', 'NUT-B', 'NUT-C', 'NUT-E', 'NUT-X'),
      fc.constantFrom('P1', 'P2', 'p 2', ''),
      fc.constantFrom('5.6', '5.6', '6.5', '5.6 ±0.1', 'as drawn'),
      fc.constantFrom('1', '4', '12', '', '0', '2.5', 'some'),
    )
    .map(([part, panel, hole, quantity]) => `${part},${panel},DC01,1.5,${hole},${quantity}`);
  const lists = fc.array(row, { minLength: 2, maxLength: 12 });

  it('the sum over panels is the roll-up before rounding', () => {
    fc.assert(
      fc.property(lists, (rows) => {
        const { list, parts } = judged(rows, PARTS);
        const whole = piecesByPart(rollUpPurchase(list, parts).lines);
        const panels = [...new Set(list.lines.map(({ line }) => line.panel))];
        const summed = new Map<string, number>();
        for (const panel of panels) {
          const lines = list.lines.filter(({ line }) => line.panel === panel);
          for (const [part, pieces] of piecesByPart(rollUpPurchase({ ...list, lines }, parts).lines))
            summed.set(part, (summed.get(part) ?? 0) + pieces);
        }
        expect(summed).toEqual(whole);
        for (const { panels: own, perBuild } of rollUpPurchase(list, parts).lines)
          expect(own.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(perBuild);
      }),
      { numRuns: 60 },
    );
  });

  it('every row stands in one place, and only rows that hold and can be counted are ordered', () => {
    fc.assert(
      fc.property(lists, (rows) => {
        const { list, parts } = judged(rows, PARTS, SHOP);
        const { lines, heldBack, uncounted } = rollUpPurchase(list, parts);
        const ordered = lines.flatMap((line) => line.rows);
        const others = [...heldBack, ...uncounted].flatMap((leftOut) => leftOut.rows.map(({ row }) => row));
        expect([...ordered, ...others].sort((a, b) => a - b)).toEqual(list.lines.map(({ row }) => row));
        for (const { row, verdict, quantity } of list.lines) {
          const isUsable = quantity !== null && Number.isInteger(quantity) && quantity > 0;
          expect(ordered.includes(row)).toBe(verdict === 'holds' && isUsable);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('the same list gives the same purchase list, in the order of its rows', () => {
    fc.assert(
      fc.property(lists, (rows) => {
        const one = judged(rows, PARTS, SHOP);
        const other = judged(rows, [...PARTS].reverse(), SHOP);
        const purchase = rollUpPurchase(one.list, one.parts);
        expect(rollUpPurchase(other.list, other.parts).lines).toEqual(purchase.lines);
        const first = purchase.lines.map((line) => line.rows[0] ?? 0);
        expect(first).toEqual([...first].sort((a, b) => a - b));
      }),
      { numRuns: 30 },
    );
  });
});

function piecesByPart(
  lines: readonly { readonly partNumber: string; readonly perBuild: number }[],
): Map<string, number> {
  return new Map(lines.map(({ partNumber, perBuild }) => [partNumber, perBuild]));
}
