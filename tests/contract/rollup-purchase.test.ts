import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOf, priceOf } from '../../src/core/rollup/order.ts';
import { sparesFor } from '../../src/core/rollup/pieces.ts';
import { rollUpPurchase } from '../../src/core/rollup/purchase.ts';
import { judged, NUT } from './rollup-list.ts';

const PARTS = [
  `NUT-A,${NUT},40,100,500,0.10,EUR,5,`,
  `NUT-B,${NUT},no,50,,0.25,usd,42,`,
  `NUT-C,${NUT},yes,,,,,,NUT-D`,
  `NUT-E,${NUT},1000,100,100,0.30,EUR,90,`,
];
const ROWS = [
  'NUT-A,P1,DC01,1.5,5.6,12', // row 2
  'NUT-B,P2,DC01,1.5,5.6,3',
  'nut-a,P2,DC01,1.5,5.6,8', // row 4
  'NUT-C,P1,DC01,1.5,5.6,5',
  'NUT-A,P1,DC01,1.5,6.5,7', // row 6: hole too large
  'NUT-B,P1,DC01,1.5,5.6,', // row 7: no quantity
  'NUT-X,P2,DC01,1.5,5.6,4', // row 8: not on file
  'NUT-E,P2,DC01,1.5,5.6,10',
  'NUT-B,P3,DC01,1.5,5.6 ±0.1,9', // row 10: marginal
];
const SHOP = { buildQuantity: 7, sparesPercent: 3 };

describe('a purchase list worked by hand: 7 builds, 3 % spares', () => {
  const { list, parts } = judged(ROWS, PARTS, SHOP);
  const purchase = rollUpPurchase(list, parts);
  const line = (partNumber: string) => purchase.lines.find((one) => one.partNumber === partNumber);

  it('NUT-A: (12 + 8) x 7 = 140, spares 4.2 -> 5, less 40 in stock = 105, at least 500 = 5 packs of 100, 50.00 EUR', () => {
    expect(line('NUT-A')).toMatchObject({
      rows: [2, 4],
      panels: [
        { panel: 'P1', pieces: 12 },
        { panel: 'P2', pieces: 8 },
      ],
      perBuild: 20,
      used: 140,
      spares: 5,
      need: 145,
      stock: 40,
      toOrder: 105,
      moq: 500,
      packs: 5,
      order: 500,
      price: 50,
      currency: 'EUR',
      flags: [],
    });
  });

  it('NUT-B: 3 x 7 = 21, spares 0.63 -> 1, none in stock, 22 = 1 pack of 50, 12.50 USD', () => {
    expect(line('NUT-B')).toMatchObject({
      rows: [3],
      perBuild: 3,
      need: 22,
      stock: 0,
      toOrder: 22,
      packs: 1,
      order: 50,
      price: 12.5,
      currency: 'USD',
      stocked: false,
      flags: ['Not stocked.'],
    });
  });

  it('NUT-C: 5 x 7 = 35, spares 1.05 -> 2, stock without a number takes nothing off, no pack: 37, no price, a successor', () => {
    expect(line('NUT-C')).toMatchObject({
      need: 37,
      stock: null,
      toOrder: 37,
      packs: null,
      order: 37,
      price: null,
      supersededBy: 'NUT-D',
    });
    expect(line('NUT-C')?.flags).toEqual([
      'Stocked, without a number: none taken off.',
      'Superseded by NUT-D (not on file): list that part and check it on these rows before ordering.',
    ]);
  });

  it('NUT-E: 73 needed, 1000 in stock: nothing to order, whatever the minimum', () => {
    expect(line('NUT-E')).toMatchObject({ need: 73, toOrder: 0, packs: 0, order: 0, price: 0 });
  });

  it('totals by currency, never added together; the longest lead time is that of what is ordered', () => {
    expect(purchase.totals).toEqual([
      { currency: 'EUR', price: 50 },
      { currency: 'USD', price: 12.5 },
    ]);
    expect(purchase.unpriced).toEqual(['NUT-C']);
    expect(purchase.lead).toEqual({ longestDays: 42, partNumbers: ['NUT-B'], unknown: ['NUT-C'] });
  });

  it('names apart what does not hold and what cannot be counted', () => {
    const rowsOf = (leftOut: typeof purchase.heldBack) =>
      leftOut.map(({ partNumber, onFile, rows }) => [partNumber, onFile, ...rows.map(({ row }) => row)]);
    expect(rowsOf(purchase.heldBack)).toEqual([
      ['NUT-A', true, 6],
      ['NUT-X', false, 8],
      ['NUT-B', true, 10],
    ]);
    expect(purchase.heldBack.flatMap(({ rows }) => rows.map(({ verdict, pieces }) => [verdict, pieces]))).toEqual([
      ['fails', 7],
      ['unknown', 4],
      ['marginal', 9],
    ]);
    for (const { rows } of purchase.heldBack) for (const { reason } of rows) expect(reason.length).toBeGreaterThan(5);
    expect(rowsOf(purchase.uncounted)).toEqual([['NUT-B', true, 7]]);
    expect(purchase.uncounted[0]?.rows[0]).toMatchObject({ pieces: null, reason: 'Quantity missing' });
  });
});

describe('spares, packs and prices', () => {
  it.each([
    [100, 10, 10],
    [100, 7, 7],
    [140, 3, 5],
    [1, 0.1, 1],
    [29, 0, 0],
    [1000, 7.1, 71],
  ])('%d pieces with %d %% spares: %d on top', (pieces, percent, spares) => {
    expect(sparesFor(pieces, percent)).toBe(spares);
  });

  it.each([
    [500, 0.1, 50],
    [3, 0.335, 1.01],
    [1, 1.005, 1.01],
    [7, null, null],
    [7, Number.NaN, null],
  ])('%d pieces at %s cost %s', (pieces, unitPrice, price) => {
    expect(priceOf(pieces, unitPrice)).toBe(price);
  });

  it('what is ordered covers the need, in whole packs, at least the minimum, and no more than one pack too many', () => {
    const [part] = judged([ROWS[0] ?? ''], PARTS).catalogue.fasteners;
    if (!part) throw new Error('no part');
    const count = fc.option(fc.integer({ min: 1, max: 5000 }));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), count, count, count, (used, packSize, moq, quantity) => {
        const stocked = { yes: true, quantity };
        const { need, stock, toOrder, order } = orderOf(used, 5, { ...part, packSize, moq, stocked });
        expect(need).toBeGreaterThanOrEqual(used * 1.05);
        expect(toOrder).toBe(Math.max(0, need - (stock ?? 0)));
        expect(order).toBeGreaterThanOrEqual(toOrder);
        if (toOrder === 0) expect(order).toBe(0);
        else expect(order).toBeGreaterThanOrEqual(moq ?? 0);
        expect(order % (packSize ?? 1)).toBe(0);
        expect(order).toBeLessThan(Math.max(toOrder, moq ?? 0) + (packSize ?? 1));
      }),
      { numRuns: 200 },
    );
  });
});
