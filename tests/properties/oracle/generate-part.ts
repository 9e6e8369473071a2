import fc from 'fast-check';
import type { FastenerClass, Stated } from './hardness.ts';
import type { Part } from './judge.ts';

/** A catalogued part together with the words in which its catalogue says it. */
export interface WrittenPart extends Part {
  readonly kind: string;
  readonly material: string;
}

const KINDS = ['clinch nut', 'clinch stud', 'through standoff', 'blind standoff', 'clinch pin', 'captive screw'];

const MATERIALS: readonly { readonly material: string; readonly classes: readonly FastenerClass[] }[] = [
  { material: 'carbon-steel-hardened', classes: ['hardened-steel'] },
  { material: 'stainless-300', classes: ['300'] },
  { material: 'stainless-400-hardened', classes: ['400'] },
  { material: 'stainless-ph', classes: ['ph'] },
  { material: '2024-T4', classes: ['aluminium'] },
  { material: 'brass', classes: ['brass'] },
  { material: 'stainless', classes: ['300', '400', 'ph'] },
  { material: '17-4PH', classes: ['ph'] },
  { material: '', classes: [] },
  { material: '', classes: [] },
];

const oftenNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { freq: 12, nil: null });
const hundredths = (from: number, to: number) => fc.integer({ min: from * 100, max: to * 100 }).map((n) => n / 100);
const lessOften = <T>(usual: fc.Arbitrary<T>, rare: fc.Arbitrary<T>) =>
  fc.oneof({ arbitrary: usual, weight: 3 }, { arbitrary: rare, weight: 1 });

const stated = (scale: Stated['scale'], min: number, max: number): fc.Arbitrary<Stated> =>
  fc.integer({ min, max }).map((value) => ({ scale, value }));
const hardOf = {
  hard: fc.oneof(stated('HRC', 23, 44), stated('HV', 254, 372), stated('HRB', 78, 100)),
  soft: stated('HRB', 36, 88),
};

const hole = fc.oneof(fc.constantFrom(5.6, 4.5, 3.25, 5.05, 4, 6.35), hundredths(3, 9));
const band = fc.record({
  plusMm: fc.constantFrom(0.05, 0.08, 0.1, 0.13),
  minusMm: fc.constantFrom(0, 0, 0.02),
});

const body = fc.record({
  made: fc.oneof({ arbitrary: fc.constantFrom(...MATERIALS.slice(0, 5)), weight: 3 }, fc.constantFrom(...MATERIALS)),
  hard: fc.option(hardOf.hard, { freq: 2, nil: null }),
  soft: fc.option(hardOf.soft, { freq: 2, nil: null }),
  sheetLimitHrb: fc.constantFrom(36, 58, 60, 66, 80, 86, 92),
  hasLimit: fc.nat(6).map((n) => n === 0),
  kind: fc.constantFrom(...KINDS),
  sheetMinMm: oftenNull(lessOften(fc.constantFrom(0.6, 0.8, 1, 1.2, 1.4, 1.5, 1.6, 2), hundredths(0.5, 2.4))),
  aboveMinMm: fc.option(hundredths(0.4, 2), { freq: 1, nil: null }),
  hasMax: fc.nat(7).map((n) => n === 0),
  holeMm: oftenNull(hole),
  band: fc.option(band, { freq: 1, nil: null }),
  edgeMm: oftenNull(lessOften(fc.constantFrom(4, 5.5, 6, 7.5, 9), hundredths(3, 12))),
});

/** One catalogued part, mostly complete; `number` makes its part number unique. */
export function anyPart(number: number): fc.Arbitrary<WrittenPart> {
  return body.map(({ made, hard, soft, hasLimit, hasMax, aboveMinMm, sheetLimitHrb, ...rest }) => {
    const isSoft = made.material === '2024-T4' || made.material === 'brass';
    const sheetMaxMm =
      hasMax && aboveMinMm !== null ? Math.round(((rest.sheetMinMm ?? 1) + aboveMinMm) * 100) / 100 : null;
    return {
      ...rest,
      ...made,
      partNumber: `QX-${100 + number}`,
      stated: isSoft ? soft : hard,
      sheetLimitHrb: hasLimit ? sheetLimitHrb : null,
      sheetMaxMm,
      band: rest.holeMm === null ? null : rest.band,
    };
  });
}

const HEADINGS =
  'partNumber,kind,material,hardnessMin,sheetMinMm,sheetMaxMm,holeMm,holePlusMm,holeMinusMm,edgeMm,sheetHardnessMax';

/** The catalogue as the CSV that a supplier would send. */
export function writeCatalogue(parts: readonly WrittenPart[]): string {
  const rows = parts.map((part) =>
    [
      part.partNumber,
      part.kind,
      part.material,
      part.stated ? `${part.stated.scale} ${part.stated.value}` : '',
      part.sheetMinMm ?? '',
      part.sheetMaxMm ?? '',
      part.holeMm ?? '',
      part.band?.plusMm ?? '',
      part.band?.minusMm ?? '',
      part.edgeMm ?? '',
      part.sheetLimitHrb === null ? '' : `HRB ${part.sheetLimitHrb}`,
    ].join(','),
  );
  return [HEADINGS, ...rows].join('\n');
}
