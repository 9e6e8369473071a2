import { gaugeOfOtherMetal, gaugeThickness } from '../../calc/gauge.ts';
import { gaugeTablesOf } from '../../calc/gauge-family.ts';
import type { Judgement } from '../../model/finding.ts';
import type { AlloyEntry, SheetFamily } from '../../model/sheet.ts';
import type { ThicknessReading } from '../../model/thickness.ts';
import type { Rule, Subject } from '../rule.ts';

/**
 * Is a thickness the gauge of another metal? Then either the metal or the thickness was copied from elsewhere. In millimetres only three
 * decimals or more betray a gauge: 1.519 mm is 0.0598 in, while 1.52 mm may be 0.060 in.
 */
export const gaugeMetal: Rule = {
  id: 'sheet/gauge-metal',
  title: 'Gauge of the right metal',
  summary: 'A thickness in inches, or in mm to three decimals, is not the gauge thickness of another metal.',
  reason:
    'One gauge number stands for another thickness in each metal: 16 gauge is 0.0598 in of steel and 0.0508 in of aluminium.',
  reads: ['thickness', 'material'],
  needs: [
    'msg',
    'galvanized-gauge',
    'us-standard-gauge',
    'brown-sharpe',
    'aluminium-stocked-gauge',
    'stainless-stocked-gauge',
  ],
  texts: {
    own: { brief: 'No gauge of another metal', full: '“{text}” is not the gauge thickness of another metal.' },
    other: {
      brief: '“{text}” is {gauge} ga of {other}',
      full: '“{text}” in {metal} equals {gauge} gauge of {other}; {gauge} gauge of {metal} is {inch} in ({gaugeMm:unit}). Which is wrong, the metal or the thickness? A measured thickness would settle this.',
    },
    'other-only': {
      brief: '“{text}” is {gauge} ga of {other}',
      full: '“{text}” in {metal} equals {gauge} gauge of {other}, and {metal} has no such gauge. Which is wrong, the metal or the thickness? A measured thickness would settle this.',
    },
  },
  examples: [
    { cells: { material: 'CRS', thickness: '0.0598 in' }, outcome: 'holds', says: 'own' },
    { cells: { material: '5052-H32', thickness: '0.0598 in' }, outcome: 'marginal', says: 'other' },
    { cells: { material: '5052-H32', thickness: '1.519 mm' }, outcome: 'marginal', says: 'other' },
    { cells: { material: 'titanium grade 2', thickness: '0.0598 in' }, outcome: 'marginal', says: 'other-only' },
  ],
  check({ line, sheets }: Subject): Judgement | null {
    const { how, mm, text } = line.thickness;
    const families = sheets.flatMap(({ entry }) => (entry ? [gaugeFamily(entry)] : []));
    const [family] = families;
    if (how !== 'length' || mm === null || !isPrecise(line.thickness) || !family) return null;
    const suspects = families.flatMap((one) => gaugeOfOtherMetal(mm, one) ?? []);
    const [suspect] = suspects;
    // A thickness that suits one of several possible metals is no cause for doubt.
    if (!suspect || suspects.length < families.length)
      return { outcome: 'holds', says: 'own', words: { text: text.trim() } };
    return toldApart(mm, text.trim(), family, suspect);
  },
};

/** Written closely enough to tell a gauge from an ordinary size. */
function isPrecise({ writtenIn, text }: ThicknessReading): boolean {
  return writtenIn === 'in' || (writtenIn === 'mm' && /^\D*\d*[.,]\d{3}/.test(text));
}

function toldApart(
  thicknessMm: number,
  text: string,
  family: SheetFamily,
  suspect: { gauge: number; family: SheetFamily },
): Judgement {
  const words = { text, gauge: String(suspect.gauge), other: NAMES[suspect.family], metal: NAMES[family] };
  const tables = gaugeTablesOf(suspect.family).map(({ id }) => id);
  const own = gaugeThickness(suspect.gauge, family);
  if (!own) return { outcome: 'marginal', says: 'other-only', values: { thicknessMm }, words, cites: tables };
  return {
    outcome: 'marginal',
    says: 'other',
    values: { thicknessMm, gaugeMm: own.mm },
    words: { ...words, inch: own.inch.toFixed(4) },
    cites: [...tables, own.table],
  };
}

/** Electro-galvanized sheet goes by the uncoated gauge: its coating is a few micrometres. */
function gaugeFamily({ family, temper }: AlloyEntry): SheetFamily {
  return family === 'galvanized-steel' && temper.includes('electro') ? 'carbon-steel' : family;
}

const NAMES: Readonly<Record<SheetFamily, string>> = {
  'carbon-steel': 'uncoated steel',
  'galvanized-steel': 'galvanized steel',
  'galvannealed-steel': 'galvannealed steel',
  'stainless-austenitic': 'stainless steel',
  'stainless-ferritic': 'stainless steel',
  'stainless-martensitic': 'stainless steel',
  aluminium: 'aluminium',
  copper: 'copper',
  brass: 'brass',
  bronze: 'bronze',
  titanium: 'titanium',
};
