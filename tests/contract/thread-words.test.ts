import { describe, expect, it } from 'vitest';
import { parseThread, parseThreadAndLength, showThread } from '../../src/core/units/thread.ts';

/** Spellings of one thread, by its short name. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  M4: [
    'M4',
    'm4',
    'M 4',
    'M4x0.7',
    'M4 X 0,7-6H',
    'M4-6H',
    'M4×0.7',
    'M4*0.7',
    'M4.',
    'clinch nut, M4, steel',
    'NUT-M4-10-CS',
    'M4x12',
    'M4-10',
  ],
  'M3.5': ['M3.5', 'M3,5', 'M 3,5', 'M3.5x0.6'],
  M3: ['M3', 'M3,12', 'M3 and M3.1', 'M3.0'],
  'M1.6': ['M1.6', 'M1,6x0.35'],
  M24: ['M24', 'M24x3'],
  M8: ['M8', 'M8-1.25', 'M8 x 1.25', 'M8x20'],
  M8x1: ['M8x1', 'M8 X 1', 'M8x1.0', 'M8-1.0', 'M8x1-6g'],
  '8-32': [
    '8-32',
    '#8-32',
    '#8-32 UNC-2B',
    '#8-32UNC',
    'NO. 8-32',
    'no 8-32',
    '.164-32',
    '8 - 32',
    'stud, 8-32 UNC, steel',
    '8‑32',
    '#8 - 32',
  ],
  '10-32': ['10-32', '#10-32UNF', '.190-32', '0.1900-32 UNF-2A', '10-32 UNC'],
  '10-24': ['10-24', '#10-24 THD'],
  '4-40': ['4-40', '#4-40', '.112-40', '#04-40'],
  '1/4-20': ['1/4-20', '1/4"-20', '1/4”-20', '1/4-20 UNC', '1/4 - 20 UNC', '0.250-20', '.250-20', '¼-20', '1/4 in-20'],
  '5/16-18': ['5/16-18', '5/16"-18', '.312-18', '.313-18', '.3125-18'],
  '#8': ['#8', '#8 clinch nut', 'NO 8', 'No. 8', '#8 x 3/8'],
};

describe('a thread in every usual spelling', () => {
  it.each(Object.entries(SPELLINGS).flatMap(([name, texts]) => texts.map((text) => ({ name, text }))))(
    '$text is $name',
    ({ name, text }) => {
      expect(parseThread(text)?.name).toBe(name);
    },
  );

  it.each(Object.keys(SPELLINGS))('%s reads back as it is shown', (name) => {
    const thread = parseThread(name);
    expect(thread && parseThread(showThread(thread))).toEqual(thread);
  });

  it('knows what belongs to a thread', () => {
    expect(parseThread('M4x0.7')).toEqual({
      name: 'M4',
      system: 'metric',
      majorMm: 4,
      pitchMm: 0.7,
      tpi: null,
      series: null,
      coarse: true,
    });
    expect(parseThread('M4')?.pitchMm).toBeNull();
    expect(parseThread('M8x1')).toMatchObject({ pitchMm: 1, coarse: false });
    expect(parseThread('#8-32')).toMatchObject({
      system: 'unified',
      majorMm: 4.1656,
      pitchMm: 0.79375,
      tpi: 32,
      series: 'UNC',
      coarse: true,
    });
    expect(parseThread('10-32')).toMatchObject({ series: 'UNF', coarse: false });
    expect(parseThread('#8')).toMatchObject({ majorMm: 4.1656, tpi: null, pitchMm: null, series: null, coarse: null });
  });
});

describe('what is no thread', () => {
  const NONE = [
    '',
    'M1',
    'M1.2',
    'M12A',
    'M25',
    'M0',
    'AM4',
    'M4B',
    '1/4',
    '8',
    '8-99',
    '7-32',
    '#38',
    'item #8',
    'POS. #4',
    'drill no 8',
    'quantity 8 - 32 pcs',
    '2023-10-24',
    '10-24-2023',
    'Bolts 5x20',
    '#00-90',
    'steel',
    '3 m 4 pcs',
    'A1-72B',
  ];
  it.each(NONE)('"%s"', (text) => {
    expect(parseThread(text)).toBeNull();
  });
});

describe('a thread and the length behind it', () => {
  it.each([
    ['M3x8', 'M3', 8],
    ['M3 x 8mm', 'M3', 8],
    ['M3*18', 'M3', 18],
    ['M4x0.7x12', 'M4', 12],
    ['M3x0.50 x 8', 'M3', 8],
    ['M2.5 x 0.45 - 6mm', 'M2.5', 6],
    ['DIN 912 M4x12-8.8', 'M4', 12],
    ['DIN912 M4x0.7x40-8.8', 'M4', 40],
    ['M4-6Hx12', 'M4', 12],
    ['M6-1.0x20', 'M6', 20],
    ['M5 x 45 screw', 'M5', 45],
    ['M4 x .5"', 'M4', 12.7],
    ['M4x0,5"', 'M4', 12.7],
    ['#6-32 x .375', '6-32', 9.525],
    ['#6-32 x 3/8', '6-32', 9.525],
    ['8-32 UNC-2A x 1/2"', '8-32', 12.7],
    ['8-32 x 10mm', '8-32', 10],
    ['1/4-20 x 1-1/4', '1/4-20', 31.75],
    ['1/4-20 x 1½', '1/4-20', 38.1],
    ['#10 x 1/2', '#10', 12.7],
    ['M8x1', 'M8x1', null],
    ['M4', 'M4', null],
    ['M3X12/14', 'M3', null],
    ['NUT-M4-10-CS', 'M4', null],
  ] as const)('%s', (text, name, lengthMm) => {
    const found = parseThreadAndLength(text);
    expect([found?.thread.name, found?.lengthMm]).toEqual([name, lengthMm]);
  });
});
