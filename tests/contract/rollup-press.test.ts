import { describe, expect, it } from 'vitest';
import { FASTENER_KINDS } from '../../src/core/model/fastener.ts';
import { rollUpPress } from '../../src/core/rollup/press.ts';
import { FIXTURES, pushOutSample } from '../../src/core/rollup/press-practice.ts';
import { pressReport } from '../../src/core/rollup/press-report.ts';
import { SAFETY_WORDS } from '../../src/core/say/safety.ts';
import { judged, NUT } from './rollup-list.ts';

const STOCK = ',,,,,,,';
const PARTS = [
  `NUT-A,${NUT}${STOCK}`,
  `NUT-HEAVY,clinch nut,M6,carbon-steel-hardened,HRC 32,1,8.1,0.08,0,13,20,11,900,600${STOCK}`,
  `STUD-B,clinch stud,8-32,carbon-steel-hardened,HRC 32,1,5.5,,,9,10,6,450,250${STOCK}`,
  `PIN-C,clinch pin,,carbon-steel-hardened,HRC 32,1,3.5,0.08,0,6,,,,${STOCK}`,
];
const ROWS = [
  'NUT-HEAVY,Front,DC01,1.5,8.1,2', // row 2
  'PIN-C,Front,DC01,1.5,3.5,3',
  'NUT-A,Front,DC01,1.5,5.6,4', // row 4
  'NUT-A,front ,DC01,1.5,5.6,6',
  'STUD-B,Front,DC01,1.5,5.5 ±0.1,5', // row 6: marginal
  'NUT-A,Front,DC01,1.5,6.5,1', // row 7: hole too large
  'NUT-A,Lid,5052-H32,1.5,5.6,4', // row 8
  'NUT-X,Lid,5052-H32,1.5,5.6,4',
  'NUT-A,Back,DC01,0.8,5.6,4', // row 10: too thin
];

describe('the press sheet', () => {
  const { list, parts } = judged(ROWS, PARTS, { buildQuantity: 3 });
  const { panels, builds } = rollUpPress(list, parts);
  const [front, lid, back] = panels;

  it('goes panel by panel in the order of the list, whatever the spelling', () => {
    expect(panels.map(({ panel }) => panel)).toEqual(['Front', 'Lid', 'Back']);
    expect(builds).toBe(3);
  });

  it('suggests the largest force last, and a force that nobody gives after it', () => {
    expect(front?.steps.map(({ order, partNumber, forceKn }) => [order, partNumber, forceKn])).toEqual([
      [1, 'STUD-B', 10],
      [2, 'NUT-A', 12],
      [3, 'NUT-HEAVY', 20],
      [4, 'PIN-C', null],
    ]);
  });

  it('takes hole, force, rating and count of the row’s own sheet', () => {
    expect(front?.steps[1]).toMatchObject({
      rows: [4, 5],
      hole: '5.60 +0.08/-0 mm',
      holeLowMm: 5.6,
      side: 'Punch side; never the painted face',
      forceBasis: 'in steel',
      fixture: FIXTURES['clinch nut'],
      pieces: 10,
      lot: 30,
      ratedPushOutN: 500,
      pushOutSample: 22,
      verdict: 'holds',
      settle: '',
    });
    expect(lid?.steps).toMatchObject([
      { rows: [8], forceKn: 7, forceBasis: 'in aluminium', ratedPushOutN: 300, lot: 12 },
    ]);
  });

  it('takes the usual band where the catalogue gives none, and shows it in the unit of the shop', () => {
    expect(front?.steps[0]?.hole).toBe('5.50 +0.08/-0 mm');
    const inches = judged(ROWS, PARTS, { units: 'in' });
    expect(rollUpPress(inches.list, inches.parts).panels[0]?.steps[1]?.hole).toBe('0.2205 +0.0031/-0 in');
  });

  it('marks what is marginal with what is to be settled first', () => {
    expect(front?.steps[0]).toMatchObject({ verdict: 'marginal', settle: 'Hole tolerance leaves the band' });
  });

  it('names what is not to be pressed yet, and presses none of it', () => {
    expect(panels.flatMap(({ notYet }) => notYet.map(({ row, verdict }) => [row, verdict]))).toEqual([
      [7, 'fails'],
      [9, 'unknown'],
      [10, 'fails'],
    ]);
    expect(back).toMatchObject({ steps: [], firstPiece: [], warnings: [] });
  });

  it('warns of look-alikes as the checks found them', () => {
    const text = front?.warnings.join('\n') ?? '';
    expect(text).toContain('8-32 is easily taken for the M4');
    expect(text).toContain('parts can be swapped');
    expect(new Set(front?.warnings).size).toBe(front?.warnings.length);
    expect(lid?.warnings).toEqual([]);
  });

  it('asks for the thread gauge only where there is a thread', () => {
    const pins = judged(['PIN-C,P1,DC01,1.5,3.5,3'], PARTS);
    const gauge = (checks: readonly string[] = []) => checks.some((check) => check.includes('gauge'));
    expect(gauge(front?.firstPiece)).toBe(true);
    expect(gauge(rollUpPress(pins.list, pins.parts).panels[0]?.firstPiece)).toBe(false);
  });

  it('has the safety words at its foot, and says what is practice without a source', () => {
    const { foot, blocks } = pressReport(list, { builds, panels });
    expect(foot).toEqual(SAFETY_WORDS);
    expect(blocks.flatMap(({ notes }) => notes).join('\n')).toContain('common practice, no source');
  });
});

it('every kind of fastener has its punch and anvil', () => {
  expect(Object.keys(FIXTURES)).toEqual([...FASTENER_KINDS]);
});

// binomial law: 22 pieces without a failure, 90 % confidence of at most 10 % bad
it.each([
  [1000, 22],
  [22, 22],
  [5, 5],
  [null, 22],
])('of a lot of %s, %d are pushed out', (lot, sample) => {
  expect(pushOutSample(lot)).toBe(sample);
});
