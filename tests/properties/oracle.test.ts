import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareList } from './oracle/compare.ts';
import { gaugesAtTheEdge, thinEndsAtTheEdge } from './oracle/edge-cases.ts';
import { anyList } from './oracle/generate-list.ts';

const SEED = 20_250_115;
const LISTS = 80;
const ROWS = 250;

describe('the core checks agree with a plain restatement of the trade', () => {
  it(`on ${LISTS * ROWS} rows`, () => {
    const lists = fc.sample(anyList(ROWS), { seed: SEED, numRuns: LISTS });
    const disagreements = lists.flatMap(compareList);
    expect(disagreements.slice(0, 10), `seed ${SEED}, ${disagreements.length} disagreements`).toEqual([]);
  }, 60_000);

  it.each([
    ['every gauge of every metal', gaugesAtTheEdge()],
    ['the thinnest delivery of every stock thickness', thinEndsAtTheEdge()],
  ])('on %s, at the edge of a minimum', (_, list) => {
    expect(list.rows.length).toBeGreaterThan(200);
    expect(compareList(list)).toEqual([]);
  });
});
