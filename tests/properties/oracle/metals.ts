/**
 * Sheet metals as a person would jot them down: hardness as plain Rockwell B numbers, and how sure a number is. Typed from the
 * documents named in the outside checks, not from the program's tables. Used by the tests alone.
 */

/** Columns of the family table; `ferritic` also stands for martensitic sheet, `other` for what the table leaves out. */
export type SheetKind = 'carbon-steel' | 'coated-steel' | 'aluminium' | 'austenitic' | 'ferritic' | 'other';

/** Points of doubt in a stated hardness: Rockwell B itself, Vickers or Rockwell C, Brinell or tensile strength. */
export const DOUBT = { HRB: 2, HRC: 3, HV: 3, HB: 4, MPa: 4 } as const;
export type Scale = keyof typeof DOUBT;

export interface Metal {
  readonly kind: SheetKind;
  /** Typical hardness in HRB; `null` when it is below the foot of the scale, HRB 35. */
  readonly typical: number | null;
  readonly typicalScale: Scale;
  /** Highest hardness in HRB; `none` when nobody publishes one; `null` below the foot of the scale. */
  readonly max: number | null | 'none';
  readonly maxScale: Scale;
  /** Practice vouches for it: commercial quality in the condition in which it is sold; no structural or high-strength steel. */
  readonly commercial: boolean;
  /** Gauge table that a bare gauge number of this metal means. */
  readonly gauges: 'steel' | 'galvanized' | 'stainless' | 'aluminium' | null;
  /** Ways in which a list writes it, alloy and condition both told or, for `assumed`, the alloy alone. */
  readonly names: readonly string[];
  readonly assumed: readonly string[];
}

type Numbers = readonly [typical: number | null, typicalScale: Scale, max: number | null | 'none', maxScale: Scale];

function metal(
  kind: SheetKind,
  [typical, typicalScale, max, maxScale]: Numbers,
  gauges: Metal['gauges'],
  words: { names?: string; assumed?: string; commercial?: boolean },
): Metal {
  const list = (text = '') => text.split(';').filter((word) => word !== '');
  const { names, assumed, commercial = true } = words;
  return {
    kind,
    typical,
    typicalScale,
    max,
    maxScale,
    commercial,
    gauges,
    names: list(names),
    assumed: list(assumed),
  };
}

/** Below HRB 35, where Brinell of soft aluminium has no Rockwell B worth the name. */
const SOFT: Numbers = [null, 'HB', null, 'HB'];

export const METALS = {
  crs: metal('carbon-steel', [53, 'HRB', 60, 'HRB'], 'steel', { assumed: 'CRS;A1008 CS' }),
  dc01: metal('carbon-steel', [55, 'HRB', 64.5, 'HV'], 'steel', { assumed: 'DC01;1.0330;St12' }),
  dc04: metal('carbon-steel', [47, 'HRB', 59, 'HV'], 'steel', { assumed: 'DC04;1.0338' }),
  spcc: metal('carbon-steel', [55, 'HRB', 65, 'HRB'], 'steel', { assumed: 'SPCC' }),
  secc: metal('coated-steel', [55, 'HRB', 65, 'HRB'], 'steel', { assumed: 'SECC' }),
  hrpo: metal('carbon-steel', [60, 'MPa', 72, 'MPa'], 'steel', { assumed: 'HRPO;A1011 CS' }),
  a36: metal('carbon-steel', [73, 'MPa', 85.3, 'MPa'], 'steel', { assumed: 'A36' }),
  s355mc: metal('carbon-steel', [79, 'MPa', 85.3, 'MPa'], 'steel', { assumed: 'S355MC', commercial: false }),
  s420mc: metal('carbon-steel', [84, 'MPa', 90.2, 'MPa'], 'steel', { assumed: 'S420MC;1.0980', commercial: false }),
  sphc: metal('carbon-steel', [60, 'MPa', 'none', 'MPa'], 'steel', { assumed: 'SPHC' }),
  halfHard: metal('carbon-steel', [78, 'HRB', 85, 'HRB'], 'steel', {
    names: 'A109 No.2;A109 half hard',
    commercial: false,
  }),
  dc01c490: metal('carbon-steel', [88, 'HRB', 93, 'HV'], 'steel', { names: 'DC01 C490', commercial: false }),
  galvanized: metal('coated-steel', [58, 'HRB', 70, 'HRB'], 'galvanized', { assumed: 'A653 CS G90' }),
  dx51d: metal('coated-steel', [58, 'MPa', 80.7, 'MPa'], 'galvanized', { assumed: 'DX51D+Z275;DX51D' }),
  galvannealed: metal('coated-steel', [58, 'HRB', 70, 'HRB'], 'galvanized', {
    assumed: 'GALVANNEAL;GA;A653 CS A40',
  }),
  ss304: metal('austenitic', [80, 'HRB', 92, 'HRB'], 'stainless', {
    names: '304 annealed',
    assumed: '304;SS304;1.4301;SUS304;AISI 304 2B',
  }),
  ss301: metal('austenitic', [85, 'HRB', 95, 'HRB'], 'stainless', { names: '301 annealed' }),
  ss304l: metal('austenitic', [78, 'HRB', 92, 'HRB'], 'stainless', { assumed: '304L;1.4307' }),
  ss409: metal('ferritic', [75, 'HRB', 88, 'HRB'], 'stainless', { assumed: '409' }),
  ss316: metal('austenitic', [80, 'HRB', 95, 'HRB'], 'stainless', {
    names: '316 annealed',
    assumed: '316;1.4401;SS316',
  }),
  ss430: metal('ferritic', [82, 'HRB', 89, 'HRB'], 'stainless', { names: '430 annealed', assumed: '430;1.4016' }),
  ss410: metal('ferritic', [82, 'HRB', 96, 'HRB'], 'stainless', { names: '410 annealed', assumed: '410' }),
  al3003: metal('aluminium', SOFT, 'aluminium', { names: '3003-H14' }),
  al5052: metal('aluminium', SOFT, 'aluminium', { names: '5052-H32;5052 H32;AL5052-H32;5052H32' }),
  al5754: metal('aluminium', SOFT, 'aluminium', { names: '5754-H22;AlMg3 H22' }),
  al6061t4: metal('aluminium', SOFT, 'aluminium', { names: '6061-T4', commercial: false }),
  al6061t6: metal('aluminium', [56, 'HB', 60, 'HRB'], 'aluminium', { names: '6061-T6;6061T6;AL 6061 T6' }),
  al7075t6: metal('aluminium', [89, 'HB', 91, 'HB'], 'aluminium', { names: '7075-T6;AL7075-T6' }),
  copper: metal('other', [40, 'HRB', 'none', 'HRB'], 'aluminium', { names: 'C110 H02' }),
  brass: metal('other', [70, 'HRB', 74, 'HRB'], 'aluminium', { names: 'C260 H02' }),
  titanium: metal('other', [80, 'HRB', 98, 'HRB'], null, { names: 'Ti grade 2 annealed' }),
} as const satisfies Record<string, Metal>;

export type MetalId = keyof typeof METALS;

const SOME_ALUMINIUM: readonly MetalId[] = ['al3003', 'al5052', 'al5754', 'al6061t4', 'al6061t6', 'al7075t6'];

/** Words that name several metals: what the trade says each could be, by metals of this table. */
export const VAGUE_WORDS: readonly { readonly text: string; readonly couldBe: readonly MetalId[] }[] = [
  { text: 'STEEL', couldBe: ['crs', 'hrpo', 'a36', 'galvanized'] },
  { text: 'MS', couldBe: ['crs', 'hrpo', 'a36', 'galvanized'] },
  { text: 'GALV', couldBe: ['galvanized', 'dx51d'] },
  { text: 'GI', couldBe: ['galvanized', 'dx51d'] },
  { text: 'STAINLESS', couldBe: ['ss301', 'ss304', 'ss304l', 'ss316', 'ss430', 'ss410'] },
  { text: 'ALUM', couldBe: SOME_ALUMINIUM },
  { text: 'AL', couldBe: SOME_ALUMINIUM },
  { text: '6061', couldBe: ['al6061t4', 'al6061t6'] },
];

/** Words that say nothing about the metal. */
export const NO_METAL: readonly string[] = ['see drawing', 'zorbium', 'RAL 7035', 'powder coat black', 'TBD'];
