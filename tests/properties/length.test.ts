import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseThickness } from '../../src/core/intake/thickness.ts';
import { inchesOf, type LengthWord, mmOf, parseLength, parseNumber, showLength } from '../../src/core/units/length.ts';

const thousandths = fc.integer({ min: 1, max: 9_999_999 });
const units: readonly LengthWord[] = ['mm', 'cm', 'm', 'um', 'in', 'mil'];

describe('numbers', () => {
  it('come back from a decimal point and from a decimal comma', () => {
    fc.assert(
      fc.property(thousandths, (n) => {
        const text = (n / 1000).toFixed(3);
        expect(parseNumber(text)).toBe(Number(text));
        expect(parseNumber(text.replace('.', ','))).toBe(Number(text));
        expect(parseNumber(`−${text}`)).toBe(-Number(text));
      }),
    );
  });

  it('come back from thousands separators where these cannot be mistaken', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1_000_000, max: 999_999_999 }), fc.integer({ min: 0, max: 99 }), (whole, cents) => {
        const grouped = whole.toLocaleString('en-US');
        const decimals = String(cents).padStart(2, '0');
        const value = Number(`${whole}.${decimals}`);
        expect(parseNumber(grouped)).toBe(whole);
        expect(parseNumber(`${grouped}.${decimals}`)).toBe(value);
        expect(parseNumber(`${grouped.replaceAll(',', '.')},${decimals}`)).toBe(value);
        expect(parseNumber(grouped.replaceAll(',', "'"))).toBe(whole);
        expect(parseNumber(`${grouped.replaceAll(',', '\u202f')},${decimals}`)).toBe(value);
      }),
    );
  });

  it('come back from fractions in every spelling', () => {
    const parts = fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 63 }));
    fc.assert(
      fc.property(parts, ([whole, over]) => {
        expect(parseNumber(`${over}/64`)).toBe(over / 64);
        for (const gap of [' ', '-']) expect(parseNumber(`${whole}${gap}${over}/64`)).toBe(whole + over / 64);
      }),
    );
    for (const text of ['1½', '1 ½', '1-½', '1 1/2', '1-1/2', '1 1⁄2', '3/2']) expect(parseNumber(text)).toBe(1.5);
    expect(parseNumber('⅛')).toBe(0.125);
  });

  it.each([
    ['1,234', 1.234],
    ['1.234', 1.234],
    ['.060', 0.06],
    [',5', 0.5],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['+0.08', 0.08],
    ['-1-1/4', -1.25],
    ['１．５', 1.5],
    [' 5. ', 5],
  ])('%s is %d', (text, value) => {
    expect(parseNumber(text)).toBe(value);
  });

  it.each([
    '',
    ' ',
    '.',
    ',',
    '-',
    '1.2.3',
    '1,2,3',
    '1 234',
    '1.5x',
    '1e3',
    '0x10',
    'NaN',
    'Infinity',
    '1/0',
    '1 5/4',
    '1 - 1/4',
    '12,34,567',
    '0,123,456',
  ])('“%s” is no number', (text) => {
    expect(parseNumber(text)).toBeNull();
  });

  it('are never NaN or infinite, whatever the text', () => {
    const signs = fc.string({ unit: fc.constantFrom(...'0123456789.,/-−+½⅛ \'’"″mincµu'), maxLength: 12 });
    fc.assert(
      fc.property(fc.oneof(signs, fc.string()), (text) => {
        const number = parseNumber(text);
        if (number !== null) expect(Number.isFinite(number)).toBe(true);
        const length = parseLength(text);
        if (length) expect(Number.isFinite(length.value) && (length.mm === null) === (length.unit === null)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('units', () => {
  it('round trip: what is shown reads back as the same length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000 }), (hundredths) => {
        const mm = hundredths / 100;
        expect(parseLength(`${showLength(mm, 'mm')} mm`)?.mm).toBe(mm);
        expect(Math.abs((parseLength(`${showLength(mm, 'in')}"`)?.mm ?? Number.NaN) - mm)).toBeLessThanOrEqual(
          0.00005 * 25.4 + 1e-9,
        );
        expect(mmOf(inchesOf(mm), 'in')).toBeCloseTo(mm, 9);
      }),
    );
  });

  it('agree with each other', () => {
    fc.assert(
      fc.property(thousandths, fc.constantFrom(...units), (n, unit) => {
        const mm = mmOf(n / 1000, unit);
        expect(mmOf(mm, 'mm')).toBe(mm);
        expect(parseLength(`${n / 1000} ${unit}`)?.mm).toBe(mm);
      }),
    );
    expect([mmOf(1, 'in'), mmOf(1, 'mil'), mmOf(1, 'cm'), mmOf(1, 'm'), mmOf(1, 'um')]).toEqual([
      25.4, 0.0254, 10, 1000, 0.001,
    ]);
  });

  it.each([
    [0.8, 'mm', '0.80'],
    [0.8, 'in', '0.0315'],
    [Number.NaN, 'mm', '?'],
    [-0.001, 'mm', '0.00'],
  ] as const)('%d mm in %s shows as %s', (mm, system, shown) => {
    expect(showLength(mm, system)).toBe(shown);
  });

  it.each([
    ['1/8', null, null, true],
    ['1/8"', 'in', 3.175, true],
    ["1'", 'in', 304.8, false],
    ['１．５ｍｍ', 'mm', 1.5, false],
    ['1.5 MM', 'mm', 1.5, false],
    ['1.5 ㎜', 'mm', 1.5, false],
  ] as const)('%s is read as %s, %d mm', (text, unit, mm, fraction) => {
    expect(parseLength(text)).toMatchObject({ unit, mm, fraction });
  });

  it.each(['mm', '1.5 mm 2', '1.5 kg', '1.2-1.5 mm', 'M4', '1.5 mm x 2'])('“%s” is no length', (text) => {
    expect(parseLength(text)).toBeNull();
  });
});

describe('one thickness', () => {
  it('written in many ways gives the same millimetres to the last bit', () => {
    const spellings = (thou: number): readonly string[] => {
      const decimal = (thou / 1000).toFixed(3);
      const bare = decimal.replace(/^0/, '');
      const mm = String(mmOf(thou, 'mil'));
      return [
        `${decimal}"`,
        `${bare}"`,
        `${decimal} in`,
        `${bare} in.`,
        `${decimal}”`,
        `${decimal.replace('.', ',')} Zoll`,
        `${thou} mil`,
        `${thou} thou`,
        `${mm} mm`,
        `${mm.replace('.', ',')}mm`,
        `THK ${bare}"`,
        `t = ${mm} mm`,
        `${String(mmOf(thou, 'mil') / 10)} cm`,
      ];
    };
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 500 }), (thou) => {
        const read = spellings(thou).map((text) => parseThickness(text, { unit: null, from: null }));
        expect(new Set(read.map(({ how }) => how))).toEqual(new Set(['length']));
        expect(new Set(read.map(({ mm }) => mm))).toEqual(new Set([mmOf(thou, 'mil')]));
      }),
    );
  });

  it('never reads as NaN, and has millimetres exactly when it is a length or an impossible one', () => {
    const cell = fc.string({ unit: fc.constantFrom(...'0123456789.,/-±+#() gaozminTHK"\'=½'), maxLength: 14 });
    const around = fc.constantFrom<'mm' | 'in' | null>('mm', 'in', null);
    fc.assert(
      fc.property(cell, around, (text, unit) => {
        const reading = parseThickness(text, { unit, from: unit ? 'column' : null });
        const numbers = [
          reading.mm,
          reading.otherMm,
          reading.number,
          reading.toleranceMm?.plus,
          reading.toleranceMm?.minus,
        ];
        for (const number of numbers) if (typeof number === 'number') expect(Number.isFinite(number)).toBe(true);
        expect(reading.mm !== null).toBe(reading.how === 'length' || reading.how === 'impossible');
        if (reading.how === 'length') expect(reading.mm).toSatisfy((mm: number) => mm >= 0.2 && mm <= 12.7);
      }),
      { numRuns: 2000 },
    );
  });
});
