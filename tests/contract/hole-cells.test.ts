import { describe, expect, it } from 'vitest';
import { parseDistance } from '../../src/core/intake/distance.ts';
import { parseHole } from '../../src/core/intake/hole.ts';

const NO_UNIT = { unit: null, from: null } as const;
const MM = { unit: 'mm', from: 'column' } as const;
const INCHES = { unit: 'in', from: 'heading' } as const;

describe('hole sizes', () => {
  it.each([
    ['5.6', 5.6, 'mm', 'column'],
    ['⌀5.6', 5.6, 'mm', 'column'],
    ['Ø 5,6 mm', 5.6, 'mm', 'cell'],
    ['5.6 DIA', 5.6, 'mm', 'column'],
    ['DIA. 5.6', 5.6, 'mm', 'column'],
    ['D=5.6', 5.6, 'mm', 'column'],
    ['⌀5.6 THRU', 5.6, 'mm', 'column'],
    ['4x ⌀5.6', 5.6, 'mm', 'column'],
    ['4X 5.6', 5.6, 'mm', 'column'],
    ['(4) ⌀5.6', 5.6, 'mm', 'column'],
    ['5.6 2 PL', 5.6, 'mm', 'column'],
    ['5.6 (4x)', 5.6, 'mm', 'column'],
    ['5.6 deburr', 5.6, 'mm', 'column'],
    ['.221', 5.6134, 'in', 'column'],
    ['.221"', 5.6134, 'in', 'cell'],
    ['0.221 in', 5.6134, 'in', 'cell'],
    ['221 mil', 5.6134, 'in', 'cell'],
    ['7/32', 5.55625, 'fraction', 'cell'],
    ['7/32"', 5.55625, 'fraction', 'cell'],
    ['1-1/4', 31.75, 'fraction', 'cell'],
    ['#8', 5.0546, 'number-drill', 'cell'],
    ['NO 8', 5.0546, 'number-drill', 'cell'],
    ['NO. 8 DRILL', 5.0546, 'number-drill', 'cell'],
    ['#8 DRILL', 5.0546, 'number-drill', 'cell'],
    ['F', 6.5278, 'letter-drill', 'cell'],
    ['LTR F', 6.5278, 'letter-drill', 'cell'],
    ['F DRILL', 6.5278, 'letter-drill', 'cell'],
    ['letter x', 10.0838, 'letter-drill', 'cell'],
    ['5.60 (.220)', 5.6, 'mm', 'cell'],
    ['.2205 [5.60]', 5.6007, 'in', 'cell'],
    ['#8 (.199)', 5.0546, 'number-drill', 'cell'],
  ] as const)('%s', (text, mm, writtenIn, unitFrom) => {
    const nothing = { lowMm: null, highMm: null, otherMm: null };
    expect(parseHole(text, NO_UNIT)).toEqual({ text, how: 'size', mm, writtenIn, unitFrom, ...nothing });
  });

  it.each([
    ['5.60 +0.08/-0', 5.6, 5.6, 5.68],
    ['5.6 +0.08 -0.00', 5.6, 5.6, 5.68],
    ['5.60 +0.08/0', 5.6, 5.6, 5.68],
    ['5.60 0/+0.08', 5.6, 5.6, 5.68],
    ['5.6 -0/+0.08', 5.6, 5.6, 5.68],
    ['5.6 + 0.08 / - 0', 5.6, 5.6, 5.68],
    ['5,60 +0,08/-0', 5.6, 5.6, 5.68],
    ['5.6 +0.08', 5.6, 5.6, 5.68],
    ['5.6 −0.08', 5.6, 5.52, 5.6],
    ['5.6+0.08-0', 5.6, 5.6, 5.68],
    ['5.6 +0.05 +0.02', 5.6, 5.62, 5.65],
    ['⌀5.6±0.1', 5.6, 5.5, 5.7],
    ['5.6 +/- 0.1 mm', 5.6, 5.5, 5.7],
    ['5.60-5.68', 5.6, 5.6, 5.68],
    ['5.68–5.60', 5.6, 5.6, 5.68],
    ['5.60/5.68 mm', 5.6, 5.6, 5.68],
    ['5.60 to 5.68', 5.6, 5.6, 5.68],
    ['5.6 H11', 5.6, 5.6, 5.675],
    ['⌀5.6H11', 5.6, 5.6, 5.675],
    ['5.6 JS12', 5.6, 5.54, 5.66],
    ['.221 +.003 -.000', 5.6134, 5.6134, 5.6896],
    ['.221" +.003"/-.000"', 5.6134, 5.6134, 5.6896],
    ['.221 +.003/-.000 in', 5.6134, 5.6134, 5.6896],
    ['7/32 +.003/-.000', 5.55625, 5.55625, 5.63245],
    ['#8 +.003/-.000', 5.0546, 5.0546, 5.1308],
    ['5.60 +0.08/-0 (.220 +.003/-.000)', 5.6, 5.6, 5.68],
    ['⌀5.6 ±0.05 4 PLCS', 5.6, 5.55, 5.65],
  ] as const)('tolerance: %s', (text, mm, lowMm, highMm) => {
    expect(parseHole(text, NO_UNIT)).toMatchObject({ text, how: 'size', mm, lowMm, highMm });
  });

  it.each([
    ['1.2', NO_UNIT, 'ambiguous-unit', null, 30.48],
    ['1.2 ±0.05', NO_UNIT, 'ambiguous-unit', null, 30.48],
    ['5.6 in', NO_UNIT, 'impossible', 142.24, 5.6],
    ['5.6', INCHES, 'impossible', 142.24, 5.6],
    ['5.60-5.68', INCHES, 'impossible', 142.24, 5.6],
    ['5.6 H11', INCHES, 'impossible', 142.24, 5.6],
    ['.221', MM, 'impossible', 0.221, 5.6134],
    ['60', NO_UNIT, 'impossible', 60, null],
    ['60', MM, 'impossible', 60, null],
    ['0.02', NO_UNIT, 'impossible', 0.02, null],
    ['#80', NO_UNIT, 'impossible', 0.3429, null],
    ['1.2', MM, 'size', 1.2, null],
    ['1.2', INCHES, 'size', 30.48, null],
  ] as const)('%s with %o: %s', (text, around, how, mm, otherMm) => {
    expect(parseHole(text, around)).toMatchObject({ how, mm, otherMm, lowMm: null, highMm: null });
  });

  it.each(['', ' ', '-', '—', 'n/a'])('"%s" is blank', (text) => {
    expect(parseHole(text, MM)).toMatchObject({ how: 'blank', mm: null, unitFrom: null });
  });

  // a hole beside something not understood is not judged by what was understood of it
  const UNREADABLE = [
    'as drawn',
    'TBD',
    '2 PL',
    'M4',
    '#8-32',
    '1/4-20',
    '4x5.6',
    '5.6 x 8',
    'X',
    'N',
    'x',
    '#81',
    '#0',
    '5.6 F7',
    '5.6 h11',
    '35 H11',
    '5.6 ±6',
    '5.6 ±10%',
    '5.6 (0.08)',
    '5.60 (.250)',
    '4-12',
    '12-4',
    '0',
    '-5',
    'R2.8',
    '5.6 +0.08/-0 CSK 82°',
    '5.6 or 5.8',
  ];
  it.each(UNREADABLE)('"%s" is unreadable', (text) => {
    expect(parseHole(text, MM)).toMatchObject({ text, how: 'unreadable', mm: null, lowMm: null, highMm: null });
  });
});

describe('distances', () => {
  it.each([
    ['9', MM, 'size', 9, 'column', null],
    ['9 mm', NO_UNIT, 'size', 9, 'cell', null],
    ['9,5 mm', INCHES, 'size', 9.5, 'cell', null],
    ['.375', INCHES, 'size', 9.525, 'heading', null],
    ['.312', NO_UNIT, 'size', 7.9248, 'column', null],
    ['5/16', MM, 'size', 7.9375, 'cell', null],
    ['8 MIN', MM, 'size', 8, 'column', null],
    ['≥ 8', MM, 'size', 8, 'column', null],
    ['8 ±0.2', MM, 'size', 7.8, 'column', null],
    ['8 +0.2/-0', MM, 'size', 8, 'column', null],
    ['9', NO_UNIT, 'ambiguous-unit', null, null, 228.6],
    ['900 in', MM, 'impossible', 22860, 'cell', 900],
    ['0.1', MM, 'impossible', 0.1, 'column', 2.54],
    ['', MM, 'blank', null, null, null],
    ['-', MM, 'blank', null, null, null],
    ['as drawn', MM, 'unreadable', null, null, null],
    ['8-10', MM, 'unreadable', null, null, null],
    ['0', MM, 'unreadable', null, null, null],
    ['-3', MM, 'unreadable', null, null, null],
  ] as const)('%s with %o: %s', (text, around, how, mm, unitFrom, otherMm) => {
    expect(parseDistance(text, around)).toEqual({ text, how, mm, unitFrom, otherMm });
  });
});
