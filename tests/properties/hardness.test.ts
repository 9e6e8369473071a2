import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combineScatter } from '../../src/core/calc/hardness-scatter.ts';
import { interpolate } from '../../src/core/calc/interpolate.ts';
import { type MetalClass, toRockwellB } from '../../src/core/calc/rockwell-b.ts';
import { canBeMeasuredHrb } from '../../src/core/calc/thin-sheet-hardness.ts';
import {
  type Hardness,
  type HardnessScale,
  parseHardness,
  parseHardnessMax,
  parseHardnessMin,
  showHardness,
} from '../../src/core/units/hardness.ts';

const SCALES: readonly HardnessScale[] = ['HRB', 'HRC', 'HV', 'HB3000', 'HB500', 'HRF', 'HRE', 'HR30T', 'MPa'];
const METALS: readonly MetalClass[] = ['steel', 'austenitic', 'aluminium', 'brass', 'copper', 'titanium'];

const scale = fc.constantFrom(...SCALES);
const metal = fc.constantFrom(...METALS);
const anyNumber = fc.oneof(fc.double(), fc.double({ min: 0, max: 1500, noNaN: true }));
/** One decimal, as hardness is written. */
const written = fc.integer({ min: 1, max: 12_000 }).map((tenths) => tenths / 10);

/** Where each scale of each metal has a conversion: from just above nothing to the end of its table. */
const SPANS: readonly (readonly [MetalClass, HardnessScale, number, number])[] = [
  ['steel', 'HRB', 0, 130],
  ['steel', 'HRC', 20, 68],
  ['steel', 'HV', 1, 940],
  ['steel', 'HB3000', 1, 739],
  ['steel', 'HR30T', 69.7, 83.1],
  ['steel', 'MPa', 1, 2180],
  ['austenitic', 'HB3000', 1, 256],
  ['austenitic', 'HV', 1, 940],
  ['austenitic', 'HRC', 20, 68],
  ['aluminium', 'HB500', 1, 160],
  ['aluminium', 'HV', 1, 189],
  ['aluminium', 'HRE', 1, 101],
  ['brass', 'HV', 1, 196],
  ['brass', 'HB500', 1, 169],
  ['brass', 'HRF', 1, 110],
  ['copper', 'HRF', 1, 95],
  ['copper', 'HR30T', 1, 64],
  ['copper', 'MPa', 1, 393],
];

describe('Rockwell B of anything', () => {
  it('is null or a number from 0 to 110, whatever comes in', () => {
    fc.assert(
      fc.property(scale, anyNumber, metal, (ofScale, value, ofMetal) => {
        const read = toRockwellB({ scale: ofScale, value }, ofMetal);
        if (read === null) return;
        expect(Number.isFinite(read.hrb) && read.hrb >= 0 && read.hrb <= 110).toBe(true);
        expect(read.equivalent).toBe(read.hrb > 100);
        if (read.other) expect(Number.isFinite(read.other.hrb)).toBe(true);
        expect(read.tables.length > 0).toBe(ofScale !== 'HRB');
      }),
    );
  });

  it('is null for what is not a positive number', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1]) {
      for (const ofScale of SCALES)
        for (const ofMetal of METALS) expect(toRockwellB({ scale: ofScale, value }, ofMetal)).toBeNull();
    }
  });

  it.each(SPANS)('%s in %s is read from %d to %d, and beyond the end not at all', (ofMetal, ofScale, from, to) => {
    fc.assert(
      fc.property(fc.double({ min: from, max: to, noNaN: true }), (value) => {
        expect(toRockwellB({ scale: ofScale, value }, ofMetal)).not.toBeNull();
      }),
    );
    expect(toRockwellB({ scale: ofScale, value: to * 1.01 }, ofMetal)).toBeNull();
  });

  it.each(SPANS)(
    '%s in %s never falls as the hardness rises, and is above the foot only above it',
    (ofMetal, ofScale, from, to) => {
      const value = fc.double({ min: from, max: to, noNaN: true });
      fc.assert(
        fc.property(value, value, (a, b) => {
          const [softer, harder] = [Math.min(a, b), Math.max(a, b)].map(
            (one) => toRockwellB({ scale: ofScale, value: one }, ofMetal)!,
          );
          expect(softer!.hrb).toBeLessThanOrEqual(harder!.hrb + 1e-9);
          if (harder!.below) expect(softer!.below).toBe(true);
        }),
        { numRuns: 300 },
      );
    },
  );

  it.each(SPANS)(
    '%s in %s has no step: a thousandth of the scale moves it by less than a point',
    (ofMetal, ofScale, from, to) => {
      const step = (to - from) / 1000;
      const read = (value: number) => toRockwellB({ scale: ofScale, value }, ofMetal)!.hrb;
      for (let value = from; value + step <= to; value += step)
        expect(read(value + step) - read(value)).toBeLessThan(1.5);
    },
  );

  it.each(METALS)('%s has no conversion from any other scale', (ofMetal) => {
    const known = new Set(SPANS.filter(([one]) => one === ofMetal).map(([, ofScale]) => ofScale));
    for (const ofScale of SCALES) {
      if (ofScale === 'HRB' || known.has(ofScale)) continue;
      for (const value of [5, 30, 60, 95, 150, 300]) expect(toRockwellB({ scale: ofScale, value }, ofMetal)).toBeNull();
    }
  });

  it('is the value itself when given in Rockwell B, in every metal', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 110, noNaN: true }), metal, (value, ofMetal) => {
        expect(toRockwellB({ scale: 'HRB', value }, ofMetal)).toMatchObject({ hrb: value, below: false, scatter: 2 });
      }),
    );
  });
});

describe('scatter', () => {
  it('is at least 2, at least either part, and the same whichever comes first', () => {
    const part = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(part, part, (a, b) => {
        expect(combineScatter(a, b)).toBeGreaterThanOrEqual(Math.max(2, a, b));
        expect(combineScatter(a, b)).toBe(combineScatter(b, a));
      }),
    );
  });
});

describe('thin sheet', () => {
  it('what can be measured on a sheet can be measured on a thicker or a harder one', () => {
    const thickness = fc.double({ min: 0.3, max: 2, noNaN: true });
    const hrb = fc.double({ min: 0, max: 110, noNaN: true });
    fc.assert(
      fc.property(thickness, hrb, thickness, hrb, (thicknessMm, ofHrb, thicker, harder) => {
        if (!canBeMeasuredHrb(thicknessMm, ofHrb)) return;
        expect(canBeMeasuredHrb(thicknessMm + thicker, ofHrb + harder)).toBe(true);
      }),
    );
  });
});

describe('interpolation', () => {
  it('stays between the ends of a rising curve and says nothing outside it', () => {
    const curve = [
      [1, 10],
      [2, 14],
      [5, 20],
    ] as const;
    fc.assert(
      fc.property(fc.double(), (x) => {
        const y = interpolate(curve, x);
        expect(y !== null).toBe(x >= 1 && x <= 5);
        if (y !== null) expect(y >= 10 && y <= 20).toBe(true);
      }),
    );
  });
});

describe('hardness as text', () => {
  it('what is shown is read back as it was', () => {
    fc.assert(
      fc.property(scale, written, (ofScale, value) => {
        const given: Hardness = { scale: ofScale, value };
        expect(parseHardness(showHardness(given))).toEqual(given);
      }),
    );
  });

  it('a range gives its lower end as the minimum and its upper end as the maximum, and is no single value', () => {
    fc.assert(
      fc.property(fc.constantFrom('HRB', 'HRC', 'HV'), written, written, (ofScale, a, b) => {
        fc.pre(a !== b);
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        for (const text of [
          `${ofScale} ${low}-${high}`,
          `${low} – ${high} ${ofScale}`,
          `${low} to ${high} ${ofScale}`,
        ]) {
          expect(parseHardnessMin(text)).toEqual({ scale: ofScale, value: low });
          expect(parseHardnessMax(text)).toEqual({ scale: ofScale, value: high });
          expect(parseHardness(text)).toBeNull();
        }
      }),
    );
  });

  it('a limit never passes for the other one', () => {
    fc.assert(
      fc.property(written, (value) => {
        expect(parseHardnessMin(`HRC ${value} max`)).toBeNull();
        expect(parseHardnessMax(`HRC ${value} min`)).toBeNull();
        expect(parseHardnessMin(`≥ ${value} HRC`)).toEqual({ scale: 'HRC', value });
        expect(parseHardnessMax(`up to ${value} HRC`)).toEqual({ scale: 'HRC', value });
      }),
    );
  });

  it('no text whatever gives anything but null or a positive number', () => {
    const pieces = fc.constantFrom(
      'HRC',
      'HRB',
      'HV10',
      'HB',
      '10/500',
      '38',
      '-',
      '±',
      'min',
      'max',
      '500 kgf',
      '(',
      ')',
      'MPa',
      ',',
      '0',
      '/',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 6 }).map((words) => words.join(' ')),
    );
    fc.assert(
      fc.property(text, (any) => {
        for (const parse of [parseHardness, parseHardnessMin, parseHardnessMax]) {
          const read = parse(any);
          if (read !== null) expect(Number.isFinite(read.value) && read.value > 0).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  it.each([
    ['HRC 38', 'HRC 38'],
    ['38 HRC', 'HRC 38'],
    ['HRB95', 'HRB 95'],
    ['90 HRBW', 'HRB 90'],
    ['HV 300', 'HV 300'],
    ['300 HV10', 'HV 300'],
    ['300 HV 10', 'HV 300'],
    ['HV10 300', 'HV 300'],
    ['HB 150', 'HB 150'],
    ['150 HBW 10/3000', 'HB 150'],
    ['150 BHN', 'HB 150'],
    ['95 HB 10/500', 'HB 95 (500 kgf)'],
    ['95 HB 500 kgf', 'HB 95 (500 kgf)'],
    ['95 HB 10/500 / 500 kgf', 'HB 95 (500 kgf)'],
    ['94 HBW 2.5/62.5', 'HB 94 (500 kgf)'],
    ['HRC 38 min', 'HRC 38'],
    ['RC 38', 'HRC 38'],
    ['Rb 80', 'HRB 80'],
    ['Rockwell C: 38', 'HRC 38'],
    ['99,5 HRB', 'HRB 99.5'],
    ['310 MPa tensile', '310 MPa tensile'],
    ['Rm 1,030 N/mm²', '1030 MPa tensile'],
    ['45 ksi', '310 MPa tensile'],
  ])('"%s" is %s', (text, shown) => {
    expect(showHardness(parseHardness(text)!)).toBe(shown);
  });

  it.each([
    '',
    '38',
    'HRC',
    'HV10',
    'HRC 34-45',
    'HRA 60',
    'HRC 38 case',
    'yield 310 MPa',
    '150 HB 10/1500',
    'HB 375 / HRC 40',
    '-5 HRB',
    'HRC 45-34 min',
  ])('"%s" is no single hardness', (text) => {
    expect(parseHardness(text)).toBeNull();
  });

  it('Brinell without a load takes the load it is told, and keeps a written one', () => {
    expect(parseHardness('95 HB', 'HB500')).toEqual({ scale: 'HB500', value: 95 });
    expect(parseHardness('95 HB 10/3000', 'HB500')).toEqual({ scale: 'HB3000', value: 95 });
  });

  it('a range may run from Rockwell B into Rockwell C', () => {
    expect(parseHardnessMin('HRB 95 - HRC 32')).toEqual({ scale: 'HRB', value: 95 });
    expect(parseHardnessMax('HRB 95 - HRC 32')).toEqual({ scale: 'HRC', value: 32 });
    expect(parseHardnessMin('HRC 32 - HRB 95')).toBeNull();
  });
});
