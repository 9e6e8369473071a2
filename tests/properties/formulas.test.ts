import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bakingHoursByHrc, bakingHoursByStrength } from '../../src/core/calc/baking-hours.ts';
import { clearOfBend, outsideSetbackMm } from '../../src/core/calc/bend-tangent.ts';
import { closedHoleMm, pitchDiameterChangeMm } from '../../src/core/calc/coating-closing.ts';
import { embrittlementCare } from '../../src/core/calc/embrittlement.ts';
import { engagedThreads } from '../../src/core/calc/engaged-threads.ts';
import { engagementToBreakMm } from '../../src/core/calc/engagement-to-break.ts';
import { galvanicPair } from '../../src/core/calc/galvanic-pair.ts';
import { holeGradeLimits } from '../../src/core/calc/hole-grade.ts';
import { proofLoadN } from '../../src/core/calc/proof-load.ts';
import { metricStressAreaMm2, unifiedStressAreaIn2 } from '../../src/core/calc/stress-area.ts';
import { findThreadLimits } from '../../src/core/calc/thread-limits.ts';
import { externalStripAreaMm2, internalStripAreaMm2 } from '../../src/core/calc/thread-stripping.ts';
import { tighteningTorque } from '../../src/core/calc/tightening-torque.ts';
import { zeroAcceptanceSample } from '../../src/core/calc/zero-acceptance-sample.ts';
import { parseDistance } from '../../src/core/intake/distance.ts';
import { parseHole } from '../../src/core/intake/hole.ts';
import { metricCoarse } from '../../src/core/reference/threads/metric-coarse.ts';
import { unifiedThreads } from '../../src/core/reference/threads/unified.ts';
import { parseThread, parseThreadAndLength, showThread } from '../../src/core/units/thread.ts';

/** Any number that could reach a formula, the bad ones included. */
const anyNumber = fc.oneof(
  fc.double({ min: -10, max: 5000 }),
  fc.double(),
  fc.constantFrom(0, -0, Number.NaN, Number.POSITIVE_INFINITY),
);
const positive = (max: number) => fc.double({ min: 0.01, max, noNaN: true });
const threadName = fc.constantFrom(
  ...metricCoarse.rows.map(({ thread }) => thread),
  ...unifiedThreads.rows.map(({ thread }) => thread),
);

/** Numbers in a result, however deep it is. */
function numbersIn(result: unknown): readonly number[] {
  if (typeof result === 'number') return [result];
  return result && typeof result === 'object' ? Object.values(result).flatMap(numbersIn) : [];
}

const limits = findThreadLimits('M4');
if (!limits) throw new Error('M4 has no limits');

const FORMULAS: Readonly<Record<string, (a: number, b: number, c: number, d: number) => unknown>> = {
  metricStressAreaMm2,
  unifiedStressAreaIn2,
  externalStripAreaMm2: (a) => externalStripAreaMm2(limits, a),
  internalStripAreaMm2: (a, b) => internalStripAreaMm2({ ...limits, pitchMm: b }, a),
  engagementToBreakMm: (a, b) => engagementToBreakMm({ ...limits, internalMinorMaxMm: b }, a),
  engagedThreads,
  proofLoadN,
  tighteningTorque,
  holeGradeLimits: (a, b) => holeGradeLimits(a, 'H', b),
  closedHoleMm,
  pitchDiameterChangeMm,
  outsideSetbackMm: (a, b, c) => outsideSetbackMm({ radiusMm: a, thicknessMm: b, angleDeg: c }),
  clearOfBend: (a, b, c, d) => clearOfBend(a, b, { radiusMm: c, thicknessMm: d, angleDeg: 90 }),
  galvanicPair,
  embrittlementCare: (a) => embrittlementCare(a, 'zinc'),
  bakingHoursByStrength,
  bakingHoursByHrc,
  zeroAcceptanceSample,
};

describe('every formula', () => {
  it.each(Object.entries(FORMULAS))('%s gives a finite number or null', (_, formula) => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, anyNumber, (a, b, c, d) => {
        expect(numbersIn(formula(a, b, c, d)).every(Number.isFinite)).toBe(true);
      }),
    );
  });
});

describe('what must rise, rises', () => {
  it('stress area with the diameter, and falls with the pitch', () => {
    fc.assert(
      fc.property(positive(20), positive(1), positive(1), (d, pitch, more) => {
        const area = metricStressAreaMm2(d + 2, pitch) ?? Number.NaN;
        expect(metricStressAreaMm2(d + 2 + more, pitch)).toBeGreaterThan(area);
        expect(metricStressAreaMm2(d + 2, pitch + more / 2)).toBeLessThan(area);
      }),
    );
  });

  it('strip areas with the engagement, in proportion', () => {
    fc.assert(
      fc.property(threadName, positive(30), (name, engaged) => {
        const thread = findThreadLimits(name) ?? limits;
        for (const area of [externalStripAreaMm2, internalStripAreaMm2]) {
          const single = area(thread, engaged) ?? Number.NaN;
          expect((area(thread, 2 * engaged) ?? Number.NaN) / single).toBeCloseTo(2, 9);
        }
      }),
    );
  });

  it('the engagement that breaks the screw with the weakness of the nut, never below that of an even pair', () => {
    fc.assert(
      fc.property(threadName, positive(5), positive(5), (name, ratio, more) => {
        const thread = findThreadLimits(name) ?? limits;
        const engagement = engagementToBreakMm(thread, ratio) ?? Number.NaN;
        expect(engagementToBreakMm(thread, ratio + more)).toBeGreaterThanOrEqual(engagement);
        expect(engagement).toBeGreaterThanOrEqual(engagementToBreakMm(thread, 0.01) ?? Number.NaN);
      }),
    );
  });

  it('torque with preload, inside its band', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        positive(24),
        positive(50_000),
        positive(1000),
        (k, d, preload, more) => {
          const torque = tighteningTorque(k, d, preload);
          expect(tighteningTorque(k, d, preload + more)?.nominalNm).toBeGreaterThan(torque?.nominalNm ?? Number.NaN);
          expect(torque && torque.lowNm < torque.nominalNm && torque.nominalNm < torque.highNm).toBe(true);
        },
      ),
    );
  });

  it('a coated hole falls with the build and never grows', () => {
    fc.assert(
      fc.property(positive(20), fc.double({ min: 0, max: 200, noNaN: true }), (hole, build) => {
        const closed = closedHoleMm(hole + 1, build) ?? Number.NaN;
        expect(closed).toBeLessThanOrEqual(hole + 1);
        expect(closedHoleMm(hole + 1, build + 10)).toBeLessThan(closed);
      }),
    );
  });

  it('setback with angle and radius; clearance of a bend with the distance, and falls with the hole', () => {
    fc.assert(
      fc.property(
        positive(10),
        positive(6),
        fc.double({ min: 1, max: 170, noNaN: true }),
        positive(5),
        (radiusMm, thicknessMm, angleDeg, more) => {
          const bend = { radiusMm, thicknessMm, angleDeg };
          const setback = outsideSetbackMm(bend) ?? Number.NaN;
          expect(outsideSetbackMm({ ...bend, angleDeg: angleDeg + more })).toBeGreaterThan(setback);
          expect(outsideSetbackMm({ ...bend, radiusMm: radiusMm + more })).toBeGreaterThan(setback);
          const clear = clearOfBend(20, 5, bend) ?? Number.NaN;
          expect(clearOfBend(20 + more, 5, bend)).toBeGreaterThan(clear);
          expect(clearOfBend(20, 5 + more, bend)).toBeLessThan(clear);
        },
      ),
    );
  });

  it('care and baking with hardness', () => {
    const order = ['none', 'note', 'bake', 'do-not-plate'];
    fc.assert(
      fc.property(
        positive(700),
        positive(100),
        fc.constantFrom('zinc' as const, 'cadmium' as const),
        (hv, more, plating) => {
          const rank = (value: number) => order.indexOf(embrittlementCare(value, plating) ?? '');
          expect(rank(hv + more)).toBeGreaterThanOrEqual(rank(hv));
          expect(rank(hv)).toBeGreaterThanOrEqual(0);
        },
      ),
    );
    fc.assert(
      fc.property(fc.double({ min: 1000.5, max: 1700, noNaN: true }), positive(100), (strength, more) => {
        expect(bakingHoursByStrength(strength + more)).toBeGreaterThanOrEqual(
          bakingHoursByStrength(strength) ?? Number.NaN,
        );
      }),
    );
  });

  it('tolerance widths with grade and size', () => {
    const width = (mm: number, grade: number) => (holeGradeLimits(mm, 'H', grade)?.highMm ?? Number.NaN) - mm;
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.integer({ min: 5, max: 13 }),
        (mm, more, grade) => {
          expect(width(mm, grade + 1)).toBeGreaterThan(width(mm, grade));
          expect(width(mm + more, grade)).toBeGreaterThanOrEqual(width(mm, grade) - 1e-9);
        },
      ),
    );
  });

  it('a galvanic pair is the same either way round but for its anode', () => {
    const volts = fc.double({ min: 0, max: 2, noNaN: true });
    const swapped = { fastener: 'sheet', sheet: 'fastener' } as const;
    fc.assert(
      fc.property(volts, volts, fc.constantFrom(0.15, 0.25, 0.5), (a, b, limit) => {
        const pair = galvanicPair(a, b, limit);
        expect(galvanicPair(b, a, limit)).toEqual(pair && { ...pair, anode: pair.anode && swapped[pair.anode] });
      }),
    );
  });
});

describe('cells of any text', () => {
  const scraps = fc.array(
    fc.constantFrom(
      'M',
      '4',
      '0.7',
      'x',
      ' ',
      '-',
      '/',
      '#',
      '8',
      '32',
      '⌀',
      '±',
      '+0.08',
      '(',
      ')',
      'H11',
      '"',
      'mm',
      ',',
      'F',
      '1/4',
      'UNC',
      'PL',
    ),
    { maxLength: 8 },
  );
  const text = fc.oneof(
    fc.string({ maxLength: 30 }),
    scraps.map((pieces) => pieces.join('')),
  );

  it('are read or refused, never thrown at, and give no bad number', () => {
    fc.assert(
      fc.property(text, fc.constantFrom('mm' as const, 'in' as const, null), (cell, unit) => {
        const around = { unit, from: unit && ('column' as const) };
        const hole = parseHole(cell, around);
        const found = [hole, parseDistance(cell, around), parseThreadAndLength(cell)];
        expect(found.flatMap(numbersIn).every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
        if (hole.how !== 'size') expect([hole.lowMm, hole.highMm]).toEqual([null, null]);
        if (hole.how === 'size') expect(hole.mm !== null && hole.mm >= 0.8 && hole.mm <= 40).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('threads read back as they are shown', () => {
    fc.assert(
      fc.property(text, (cell) => {
        const thread = parseThread(cell);
        if (thread) expect(parseThread(showThread(thread))?.name).toBe(thread.name);
      }),
      { numRuns: 1000 },
    );
  });

  it('a hole reads the same in millimetres and in inches', () => {
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 1574 }), (hundredths) => {
        const inches = (hundredths / 1000).toFixed(3);
        const mm = (Number(inches) * 25.4).toFixed(4);
        expect(parseHole(`${inches} in`, { unit: null, from: null }).mm).toBeCloseTo(
          parseHole(`${mm} mm`, { unit: null, from: null }).mm ?? Number.NaN,
          4,
        );
      }),
    );
  });
});
