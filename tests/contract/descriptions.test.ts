import { describe, expect, it } from 'vitest';
import { type DescriptionCells, describe as describeCells } from '../../src/core/intake/description.ts';
import { findKinds } from '../../src/core/intake/description-kind.ts';
import { type DescribedFastener, NOT_DESCRIBED } from '../../src/core/model/facts.ts';

const BLANK: DescriptionCells = { description: '', thread: '', length: '', finish: '', fastenerMaterial: '' };
const STAINLESS = ['stainless-300', 'stainless-400-hardened', 'stainless-ph'];
const STEEL = ['carbon-steel-hardened', 'iso-898-1-4-8', 'iso-898-1-5-8'];
const HARDENED = ['carbon-steel-hardened'];
const ALUMINIUM = ['aluminium-2024-t4', '6061-t6', '7075-t73'];
const ZINC = 'zinc-electroplate';

type Case = readonly [text: string, described: Partial<DescribedFastener>];

const nut = (thread: string | null, more: Partial<DescribedFastener> = {}) =>
  ({ kind: 'clinch nut', thread, ...more }) as const;
const stud = (thread: string | null, lengthMm: number | null, more: Partial<DescribedFastener> = {}) =>
  ({ kind: 'clinch stud', thread, lengthMm, ...more }) as const;

describe('a description alone', () => {
  it.each<Case>([
    ['NUT CLINCH M4 SST MIN SHT 1.0', nut('M4', { materials: STAINLESS, sheetMinMm: 1 })],
    ['Clinch nut, M4, hardened steel', nut('M4', { materials: HARDENED })],
    ['Clinch nut, 1/4-20, hardened 400-series stainless', nut('1/4-20', { materials: ['stainless-400-hardened'] })],
    ['SELF CLINCHING NUT #8-32 STL ZP', nut('8-32', { materials: STEEL, finish: ZINC })],
    ['NUT, SELF CLINCHING, M4X0.7, CL 8, ZINC', nut('M4', { materials: ['iso-898-2-8'], finish: ZINC })],
    ['CLINCH NUT M4 SS304', nut('M4', { materials: ['stainless-300'] })],
    ['Clinch nut M4 for M4x12 screw', nut('M4')],
    ['Clinch nut M4 (replaces 8-32)', nut(null)],
    ['Clinch nut M4, for stainless panel', nut('M4')],
    ['Clinch nut M4 zinc plated for 5052 sheet', nut('M4', { finish: ZINC })],
    ['Clinch nut M4, aluminium, anodised', nut('M4', { materials: ALUMINIUM, finish: 'anodised' })],
    ['clinch nut M4 steel, powder coat after pressing', nut('M4', { materials: STEEL })],
    ['clinch nut M4 brass nickel plated', nut('M4', { materials: ['brass'], finish: 'nickel-plate' })],
    ['nut clinch M4 min sheet .040 in', nut('M4', { sheetMinMm: 1.016 })],
    ['clinch nut, sheet 0.8 mm min', nut(null, { sheetMinMm: 0.8 })],
    ['Clinch nut M4, min. 1.0 mm', nut('M4')],
    ['Clinch nut, non-floating, M4', nut('M4')],
    ['lock nut self-clinching M4', nut('M4')],
    ['Einpressmutter M4 Stahl gehärtet', nut('M4', { materials: HARDENED })],
    ['Écrou à sertir M4 inox', nut('M4', { materials: STAINLESS })],
    ['Clinch nut M3.5', nut('M3.5')],
    ['Clinch nut 2-56', nut('2-56')],
    ['Self-clinching stud M5x16 hardened steel', stud('M5', 16, { materials: HARDENED })],
    ['Clinch stud, M4 x 12, 300-series stainless', stud('M4', 12, { materials: ['stainless-300'] })],
    ['STUD, 8-32 X .416, SS', stud('8-32', 10.5664, { materials: STAINLESS })],
    ['1/4-20 x 3/4 clinch stud 316', stud('1/4-20', 19.05, { materials: ['stainless-300'] })],
    ['Stud M5x16-8.8', stud('M5', 16, { materials: ['iso-898-1-8-8'] })],
    ['Stud M5 x 8.8', stud('M5', 8.8)],
    ['Clinch stud M8x1 x 20', stud('M8x1', 20)],
    ['Press-in stud M4, 12 mm long', stud('M4', 12)],
    ['Stud M4 L=12mm', stud('M4', 12)],
    ['Clinch stud 10-32 x 1.00 in long', stud('10-32', 25.4)],
    ['stud M4x10 6061-T6', stud('M4', 10, { materials: ['6061-t6'] })],
    ['Stud M4 x 12 mild steel', stud('M4', 12, { materials: STEEL.slice(1) })],
    ['stud m4x12 titanium', stud('M4', 12)],
    ['Einpressbolzen M5x16 A2', stud('M5', 16, { materials: ['stainless-300'] })],
    ['Goujon à sertir M5x20', stud('M5', 20)],
    [
      'Standoff, thru, #6-32 x .375, stl zinc',
      { kind: 'through standoff', thread: '6-32', lengthMm: 9.525, materials: STEEL, finish: ZINC },
    ],
    ['Blind standoff 4-40 x 1/4 al', { kind: 'blind standoff', thread: '4-40', lengthMm: 6.35, materials: ALUMINIUM }],
    ['Blind standoff, 6-32 x 12', { kind: 'blind standoff', thread: '6-32' }],
    ['Standoff 4-40 x 1', { thread: '4-40', lengthMm: 25.4 }],
    ['standoff 2024-T4 4-40 x 1/2"', { thread: '4-40', lengthMm: 12.7, materials: ['aluminium-2024-t4'] }],
    ['Abstandsbolzen M3x10 Stahl verzinkt', { thread: 'M3', lengthMm: 10, materials: STEEL, finish: ZINC }],
    [
      'Abstandsbolzen M3x10 mit Sackloch, Edelstahl',
      { kind: 'blind standoff', thread: 'M3', lengthMm: 10, materials: STAINLESS },
    ],
    ['Entretoise borgne M3x12', { kind: 'blind standoff', thread: 'M3', lengthMm: 12 }],
    ['Standoff, M3, through hole, closed end', { thread: 'M3' }],
    ['Clinch pin, 4 x 12, hardened steel', { kind: 'clinch pin', lengthMm: 12, materials: HARDENED }],
    ['pin 3x8 stainless', { kind: 'clinch pin', lengthMm: 8, materials: STAINLESS }],
    [
      'Captive screw, M5 x 20, PH stainless',
      { kind: 'captive screw', thread: 'M5', lengthMm: 20, materials: ['stainless-ph'] },
    ],
    ['Captive panel screw M4x16 PH zinc', { kind: 'captive screw', thread: 'M4', lengthMm: 16, finish: ZINC }],
    ['panel screw 6-32 x 5/8', { kind: 'captive screw', thread: '6-32', lengthMm: 15.875 }],
    ['Floating nut, M4, hardened steel', { kind: 'floating nut', thread: 'M4', materials: HARDENED }],
    ['Nut 10-32 CRES passivated', { thread: '10-32', materials: STAINLESS, finish: 'passivated' }],
    ['Nut M4', { thread: 'M4' }],
    ['captive nut M4', { thread: 'M4' }],
    ['weld nut M5', { thread: 'M5' }],
    ['M4, front panel', { thread: 'M4' }],
    ['', {}],
    ['see drawing', {}],
    ['4-pin header', {}],
    ['hardware', {}],
  ])('%s', (description, described) => {
    expect(describeCells({ ...BLANK, description })).toEqual({ ...NOT_DESCRIBED, ...described });
  });
});

describe('cells of their own', () => {
  it.each<[cells: Partial<DescriptionCells>, described: Partial<DescribedFastener>]>([
    [{ description: 'Clinch nut M5', thread: 'M4' }, nut('M4')],
    [{ description: 'Clinch nut M5', thread: 'TBD' }, nut('M5')],
    [{ description: 'Clinch stud', thread: 'M4', length: '12' }, stud('M4', 12)],
    [{ description: 'Clinch stud', thread: '6-32', length: '.375' }, stud('6-32', 9.525)],
    [{ description: 'Clinch stud', thread: '6-32', length: '12' }, stud('6-32', null)],
    [{ description: 'Clinch stud', thread: '6-32', length: '12', lengthUnit: 'mm' }, stud('6-32', 12)],
    [{ description: 'Clinch stud', thread: 'M4', length: '.5', lengthUnit: 'in' }, stud('M4', 12.7)],
    [{ description: 'Clinch stud M4x12', length: '16' }, stud('M4', 16)],
    [{ description: 'Clinch stud', thread: 'M4x12' }, stud('M4', 12)],
    [{ description: 'Clinch stud', thread: 'M4', length: '-' }, stud('M4', null)],
    [
      { description: 'Clinch stud steel', fastenerMaterial: '17-4 PH' },
      stud(null, null, { materials: ['stainless-ph'] }),
    ],
    [{ description: 'Clinch stud zinc', finish: 'nickel plated' }, stud(null, null, { finish: 'nickel-plate' })],
    [{ description: 'Clinch stud zinc', finish: 'powder coat' }, stud(null, null, { finish: ZINC })],
  ])('%j', (cells, described) => {
    expect(describeCells({ ...BLANK, ...cells })).toEqual({ ...NOT_DESCRIBED, ...described });
  });
});

describe('kinds that words could mean', () => {
  it.each([
    ['standoff M4', ['through standoff', 'blind standoff']],
    ['spacer', ['through standoff', 'blind standoff']],
    ['nut', ['clinch nut', 'floating nut']],
    ['captive nut', ['clinch nut', 'floating nut']],
    ['Muttern', ['clinch nut', 'floating nut']],
    ['stud for standoff', ['through standoff', 'blind standoff', 'clinch stud']],
    ['hex nut M4', []],
    ['rivet nut', []],
    ['dowel pin 3x10', []],
    ['washer', []],
    ['label', []],
  ])('%s', (text, kinds) => {
    expect([...findKinds(text)].sort()).toEqual([...kinds].sort());
  });
});
