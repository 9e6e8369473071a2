import { describe, expect, it } from 'vitest';
import { nextSorting, type SortKey, sortOrder } from '../../src/app/sort-order.ts';
import { rollUpPurchase } from '../../src/core/rollup/purchase.ts';
import { showPrice } from '../../src/ui/purchasing/money.ts';
import { judged, NUT } from './rollup-list.ts';

/** Columns after the nut: stocked, pack, minimum order, price, currency, lead days, superseded by. */
const PARTS = [
  `NUT-10,${NUT},0,,,0.50,EUR,10,`,
  `NUT-2,${NUT},0,,,0.10,USD,30,`,
  `NUT-3,${NUT},0,,,0.20,EUR,,`,
  `NUT-4,${NUT},0,,,,EUR,5,`,
];
const { list, parts } = judged(
  ['NUT-10', 'NUT-2', 'NUT-3', 'NUT-4'].map((part) => `${part},Front,DC01,1.5,5.6,10`),
  PARTS,
);
const { lines } = rollUpPurchase(list, parts);

function sorted(by: SortKey, isDescending = false): readonly string[] {
  return sortOrder(lines, { by, isDescending }).map(({ partNumber }) => partNumber);
}

describe('sorting the order', () => {
  it('counts the numbers in part numbers', () => {
    expect(sorted('part')).toEqual(['NUT-2', 'NUT-3', 'NUT-4', 'NUT-10']);
    expect(sorted('part', true)).toEqual(['NUT-10', 'NUT-4', 'NUT-3', 'NUT-2']);
  });

  it('compares prices inside one currency only; what has no price comes last whichever way', () => {
    expect(sorted('price')).toEqual(['NUT-3', 'NUT-10', 'NUT-4', 'NUT-2']);
    expect(sorted('price', true)).toEqual(['NUT-10', 'NUT-3', 'NUT-4', 'NUT-2']);
  });

  it('puts a lead time that is not known last whichever way', () => {
    expect(sorted('lead')).toEqual(['NUT-4', 'NUT-10', 'NUT-2', 'NUT-3']);
    expect(sorted('lead', true)).toEqual(['NUT-2', 'NUT-10', 'NUT-4', 'NUT-3']);
  });

  it('keeps the order of the list without a sorting, and among equals', () => {
    expect(sortOrder(lines, null)).toBe(lines);
    expect(sorted('supplier')).toEqual(['NUT-10', 'NUT-2', 'NUT-3', 'NUT-4']);
  });

  it('goes upwards, downwards, and back to the list', () => {
    const up = nextSorting(null, 'price');
    const down = nextSorting(up, 'price');
    expect([up, down, nextSorting(down, 'price')]).toEqual([
      { by: 'price', isDescending: false },
      { by: 'price', isDescending: true },
      null,
    ]);
    expect(nextSorting(down, 'lead')).toEqual({ by: 'lead', isDescending: false });
  });
});

describe('prices as shown', () => {
  it.each([
    [0.1, '0.10'],
    [1112, '1112.00'],
    [0.0375, '0.0375'],
    [0.1 + 0.2, '0.30'],
    [null, '–'],
    [Number.NaN, '–'],
  ])('%s is %s', (price, text) => {
    expect(showPrice(price)).toBe(text);
  });
});
