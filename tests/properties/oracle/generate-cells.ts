import fc from 'fast-check';
import type { Size, Thickness } from './judge.ts';
import { type GaugeNumber, hasTolerance, INCH, STOCK_MM } from './lengths.ts';
import { METALS, type MetalId, NO_METAL, VAGUE_WORDS } from './metals.ts';

/** A cell's text and what it means, known because the meaning came first. */
export interface Cell<Meaning> {
  readonly text: string;
  readonly means: Meaning;
}

/** How a column of sizes tells its unit: by its heading, or in every cell. */
export type UnitMode = 'mm' | 'in' | 'cells';
/** A thickness column may also leave its unit to be seen from all its numbers. */
export type ThicknessMode = UnitMode | 'bare mm' | 'bare in';

const cell = <M>(text: string, means: M): Cell<M> => ({ text, means });
const BLANK = ['', '', '-'];
const NONSENSE = ['abc', '??', 'as shown'];
const unsaid = fc.oneof(
  { arbitrary: fc.constantFrom(...BLANK).map((text) => cell(text, { says: 'blank' as const })), weight: 2 },
  fc.constantFrom(...NONSENSE).map((text) => cell(text, { says: 'nonsense' as const })),
);
const mostly = <T>(usual: fc.Arbitrary<T>, weight: number, ...rest: fc.Arbitrary<T>[]) =>
  fc.oneof({ arbitrary: usual, weight }, ...rest);

/** Text of a length whose unit stands in the heading, or in the cell. */
function lengthTexts(mode: UnitMode, mm: number): readonly string[] {
  const metric = String(Math.round(mm * 1000) / 1000);
  const inches = (mm / INCH).toFixed(4);
  const written = {
    mm: [`${metric} mm`, `${metric}mm`, `${metric.replace('.', ',')} mm`],
    in: [`${inches} in`, `${inches.replace(/^0/, '')}"`, `${inches}in.`],
  };
  if (mode === 'mm') return [metric, metric, ...written.mm];
  return mode === 'in' ? [inches, inches.replace(/^0/, ''), ...written.in] : [...written.mm, ...written.in];
}

/** What such a text says: inches were rounded to four decimals. */
function meantMm(mode: UnitMode, text: string, mm: number): number {
  const isInch = /in|"/.test(text) || (mode === 'in' && !text.includes('mm'));
  return isInch ? Number((mm / INCH).toFixed(4)) * INCH : Math.round(mm * 1000) / 1000;
}

export const GAUGE_NUMBERS: readonly GaugeNumber[] = [11, 12, 14, 16, 18, 20, 22, 24];
const STOCK_IN = [0.03, 0.036, 0.048, 0.06, 0.063, 0.075, 0.09, 0.125];
const FRACTIONS: readonly (readonly [text: string, inch: number])[] = [
  ['1/16', 1 / 16],
  ['1/8', 1 / 8],
  ['3/32', 3 / 32],
  ['1/32', 1 / 32],
];
const IMPOSSIBLE: Readonly<Record<ThicknessMode, readonly string[]>> = {
  mm: ['60', '0.06', '25'],
  in: ['1.5', '2', '16'],
  cells: ['60 mm', '2 in'],
  'bare mm': ['60 mm'],
  'bare in': ['2 in'],
};

/** A sheet's thickness; `onlyMm` leaves inches out, where the mill tolerance of an inch size is not the oracle's to know. */
export function thicknessCell(mode: ThicknessMode, onlyMm: boolean): fc.Arbitrary<Cell<Thickness>> {
  const gauge = fc
    .tuple(fc.constantFrom(...GAUGE_NUMBERS), fc.constantFrom(' ga', 'ga', ' GA.', ' gauge', ' Ga'))
    .map(([number, word]) => cell<Thickness>(`${number}${word}`, { says: 'gauge', gauge: number }));
  const impossible = fc.constantFrom(...IMPOSSIBLE[mode]).map((text) => cell<Thickness>(text, { says: 'nonsense' }));
  const others = [gauge, gauge, gauge, unsaid, impossible];
  if (mode === 'bare in') return mostly<Cell<Thickness>>(bareInches, 10, ...others);
  const length = fc.tuple(nominalMm, fc.nat(9)).map(([mm, pick]) => {
    const texts = onlyMm || mode === 'bare mm' ? [metricText(mode, mm)] : lengthTexts(mode, mm);
    return lengthCell(texts[pick % texts.length]!, mode === 'bare mm' ? 'mm' : mode, mm);
  });
  return mostly<Cell<Thickness>>(length, 10, ...(onlyMm || mode === 'bare mm' ? others : [fraction, ...others]));
}

const nominalMm = fc.oneof(
  fc.constantFrom(...STOCK_MM),
  fc.constantFrom(...STOCK_IN.map((inch) => inch * INCH)),
  fc.integer({ min: 52, max: 300 }).map((n) => n / 100),
);
const fraction = fc
  .constantFrom(...FRACTIONS)
  .map(([text, inch]) => cell<Thickness>(`${text}"`, { says: 'length', mm: inch * INCH }));
/** Three places and no unit, as in .060 and .125: no sheet is that thin in mm. */
const bareInches = fc
  .integer({ min: 20, max: 125 })
  .map((mils) => cell<Thickness>(`.${String(mils).padStart(3, '0')}`, { says: 'length', mm: (mils / 1000) * INCH }));

function metricText(mode: ThicknessMode, mm: number): string {
  return `${Math.round(mm * 1000) / 1000}${mode === 'bare mm' ? '' : ' mm'}`;
}

function lengthCell(text: string, mode: UnitMode, mm: number): Cell<Thickness> {
  return cell<Thickness>(text, { says: 'length', mm: meantMm(mode, text, mm) });
}

const DRILLS: readonly (readonly [text: string, inch: number])[] = [
  ['#1', 0.228],
  ['#2', 0.221],
  ['#8', 0.199],
  ['#16', 0.177],
  ['#22', 0.157],
  ['#30', 0.1285],
  ['#2 drill', 0.221],
  ['No. 8 drill', 0.199],
];
const HOLE_FRACTIONS: readonly (readonly [text: string, inch: number])[] = [
  ['7/32', 7 / 32],
  ['1/4', 1 / 4],
  ['1/8', 1 / 8],
  ['11/64', 11 / 64],
];
const OFFSETS_MM = [-0.2, -0.05, -0.02, -0.01, 0, 0, 0, 0.01, 0.04, 0.08, 0.08, 0.09, 0.11, 0.3];
const TOLERANCES: readonly (readonly [text: string, plus: number, minus: number])[] = [
  ['+0.08/-0', 0.08, 0],
  ['+0.05/-0.00', 0.05, 0],
  ['+0.1/-0', 0.1, 0],
  ['±0.05', 0.05, 0.05],
  ['+/-0.1', 0.1, 0.1],
  ['±0.02', 0.02, 0.02],
];

/** A hole near the one the part wants, in any notation. */
export function holeCell(mode: UnitMode, wantedMm: number): fc.Arbitrary<Cell<Size>> {
  const size = (mm: number, lowMm: number | null = null, highMm: number | null = null): Size => ({
    says: 'size',
    mm,
    lowMm,
    highMm,
  });
  const near = fc.constantFrom(...OFFSETS_MM).map((offset) => Math.round((wantedMm + offset) * 1000) / 1000);
  const plain = fc.tuple(near, fc.nat(9), fc.constantFrom('', '', 'Ø', 'dia ')).map(([mm, pick, sign]) => {
    const texts = lengthTexts(mode, mm);
    const text = texts[pick % texts.length]!;
    return cell(`${sign}${text}`, size(meantMm(mode, text, mm)));
  });
  const toleranced = fc.tuple(near, fc.constantFrom(...TOLERANCES)).map(([mm, [tolerance, plus, minus]]) => {
    const text = mode === 'mm' ? `${mm} ${tolerance}` : `${mm} ${tolerance} mm`;
    return cell(text, size(mm, mm - minus, mm + plus));
  });
  const inches = fc.tuple(near, fc.constantFrom(0.001, 0.003, 0.004)).map(([mm, plus]) => {
    const inch = (mm / INCH).toFixed(4);
    const nominal = Number(inch) * INCH;
    const text = `${inch} +${plus.toFixed(3)}/-0.000${mode === 'in' ? '' : ' in'}`;
    return cell(text, size(nominal, nominal, nominal + plus * INCH));
  });
  const drill = fc.constantFrom(...DRILLS).map(([text, inch]) => cell(text, size(inch * INCH)));
  const fraction = fc.constantFrom(...HOLE_FRACTIONS).map(([text, inch]) => cell(`${text}"`, size(inch * INCH)));
  return mostly<Cell<Size>>(plain, 6, toleranced, toleranced, inches, drill, fraction, unsaid);
}

export function edgeCell(mode: UnitMode, wantedMm: number): fc.Arbitrary<Cell<Size>> {
  const near = fc.constantFrom(-2, -0.5, -0.1, -0.01, 0, 0, 0.01, 0.2, 1, 5, 12);
  const plain = fc.tuple(near, fc.nat(9)).map(([offset, pick]) => {
    const mm = Math.round((wantedMm + offset) * 1000) / 1000;
    const texts = lengthTexts(mode, mm);
    const text = texts[pick % texts.length]!;
    return cell<Size>(text, { says: 'size', mm: meantMm(mode, text, mm), lowMm: null, highMm: null });
  });
  return mostly<Cell<Size>>(plain, 4, unsaid);
}

type Named = Cell<readonly MetalId[]>;

/** Every way to name a metal; with `onlyWithTolerance` the metals whose mill tolerance the oracle knows. */
export function materialCell(onlyWithTolerance: boolean): fc.Arbitrary<Named> {
  const ids = Object.keys(METALS) as MetalId[];
  const named = ids
    .filter((id) => !onlyWithTolerance || hasTolerance(id))
    .flatMap((id) => [...METALS[id].names, ...METALS[id].assumed].map((text): Named => cell(text, [id])));
  const vague = VAGUE_WORDS.map(({ text, couldBe }): Named => cell(text, couldBe));
  const none = [...NO_METAL, ...BLANK].map((text): Named => cell(text, []));
  if (onlyWithTolerance) return mostly(fc.constantFrom(...named), 12, fc.constantFrom(...none));
  return mostly(
    fc.constantFrom(...named),
    14,
    fc.constantFrom(...vague),
    fc.constantFrom(...vague),
    fc.constantFrom(...none),
  );
}

export const quantityCell: fc.Arbitrary<Cell<boolean>> = fc.oneof(
  { arbitrary: fc.integer({ min: 1, max: 500 }).map((n) => cell(String(n), true)), weight: 5 },
  fc.constantFrom('', '0', '2.5', 'TBD', 'x', '-').map((text) => cell(text, false)),
  fc.constantFrom('4.0', ' 12 ', '1 000'.replace(' ', '')).map((text) => cell(text, true)),
);
