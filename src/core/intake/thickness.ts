import type { LengthUnit } from '../model/list.ts';
import type { ThicknessReading, UnitFrom } from '../model/thickness.ts';
import { type Length, type LengthWord, mmOf, parseLength } from '../units/length.ts';
import { parseGauge, parseOunces } from './gauge-cell.ts';
import { isInSpan, POSSIBLE_SHEET_MM, WRITTEN_SPANS } from './size-spans.ts';
import { readTwice } from './thickness-twice.ts';
import { splitTolerance, type ToleranceCell } from './written-tolerance.ts';

/** The unit of bare numbers around a cell, and where it comes from. `heading` without a unit: the heading names gauges or the like. */
export interface AroundUnit {
  readonly unit: LengthUnit | null;
  readonly from: UnitFrom | null;
}

/**
 * Reads a thickness cell: a length with or without its unit, a gauge number, ounces of copper, a tolerance behind it, the same size
 * written twice (`1.5mm (16 ga)`: the length counts). Never a guess: ranges and contradictions are `unreadable`; a bare number that
 * could be either unit is `ambiguous-unit`, its `mm` null, its inch reading in `otherMm` and its millimetre reading the number itself.
 */
export function parseThickness(text: string, around: AroundUnit): ThicknessReading {
  if (/^[-–—]*$/.test(text.trim())) return reading(text, { how: 'blank' });
  const cell = withoutLabel(text);
  const tolerance = splitTolerance(cell);
  const found = readNominal(text, tolerance?.nominal ?? cell, around);
  return tolerance ? { ...found, toleranceMm: toleranceMm(tolerance, found) } : found;
}

/** A reading of which only some facts are known. */
function reading(text: string, known: Partial<ThicknessReading> & Pick<ThicknessReading, 'how'>): ThicknessReading {
  const nothing = { mm: null, number: null, gaugeSystem: null, writtenIn: null, unitFrom: null, otherMm: null };
  return { text, toleranceMm: null, ...nothing, ...known };
}

function readNominal(text: string, cell: string, around: AroundUnit): ThicknessReading {
  const gauge = parseGauge(cell);
  if (gauge) {
    const { gauge: number, system: gaugeSystem } = gauge;
    return reading(text, { how: 'gauge', number, gaugeSystem, writtenIn: 'gauge', unitFrom: 'cell' });
  }
  const ounces = parseOunces(cell);
  if (ounces !== null) return reading(text, { how: 'ounces', number: ounces, writtenIn: 'ounces', unitFrom: 'cell' });
  const length = parseLength(cell);
  if (length) return reading(text, readLength(length, around));
  const twice = readTwice(cell, around.unit);
  return reading(text, twice ? { how: 'length', ...twice, unitFrom: 'cell' } : { how: 'unreadable' });
}

type Known = Partial<ThicknessReading> & Pick<ThicknessReading, 'how'>;

function readLength(length: Length, around: AroundUnit): Known {
  const { value, unit, fraction } = length;
  if (value < 0) return { how: 'unreadable' };
  if (unit !== null) return inUnit(value, unit, 'cell');
  if (fraction) return readFraction(value, around);
  if (around.unit !== null) return inUnit(value, around.unit, around.from ?? 'column');
  return around.from === 'heading' ? underOtherHeading(value) : readBare(value);
}

function inUnit(value: number, unit: LengthWord, unitFrom: UnitFrom): Known {
  const mm = mmOf(value, unit);
  const facts = { mm, writtenIn: unit === 'in' || unit === 'mil' ? 'in' : 'mm', unitFrom } as const;
  return isPossible(mm)
    ? { how: 'length', ...facts }
    : { how: 'impossible', ...facts, otherMm: otherReading(value, unit) };
}

// A fraction is inches, unless its column is in mm and both readings are possible.
function readFraction(value: number, around: AroundUnit): Known {
  const both = isPossible(value) && isPossible(mmOf(value, 'in'));
  return around.unit === 'mm' && both ? ambiguous(value) : inUnit(value, 'in', 'cell');
}

// A bare number below a heading such as "Gauge": whole numbers are gauges, anything else is asked.
function underOtherHeading(value: number): Known {
  const isGauge = Number.isInteger(value) && isInSpan(value, [7, 38]);
  return isGauge ? { how: 'gauge', number: value, writtenIn: 'gauge', unitFrom: 'heading' } : ambiguous(value);
}

// Nothing around it tells the unit: what only one unit allows is taken, as a column of that one cell would be.
function readBare(value: number): Known {
  const couldBeMm = isInSpan(value, WRITTEN_SPANS.thickness.mm);
  const couldBeInches = isInSpan(value, WRITTEN_SPANS.thickness.in);
  if (couldBeMm && couldBeInches) return ambiguous(value);
  const known = inUnit(value, couldBeInches ? 'in' : 'mm', 'column');
  return known.how === 'impossible' ? { ...known, unitFrom: null, otherMm: otherReading(value, 'in') } : known;
}

function ambiguous(value: number): Known {
  return { how: 'ambiguous-unit', otherMm: mmOf(value, 'in') };
}

function isPossible(mm: number): boolean {
  return isInSpan(mm, POSSIBLE_SHEET_MM);
}

// "60 in" was meant as 60 thousandths; lower numbers may as well be gauges, so nothing is offered for them.
function otherReading(value: number, unit: LengthWord): number | null {
  const units: readonly LengthWord[] =
    unit === 'in' ? ['mm', ...(value > 38 ? (['mil'] as const) : [])] : unit === 'mm' ? ['in'] : ['mm', 'in'];
  return units.map((other) => mmOf(value, other)).find(isPossible) ?? null;
}

function toleranceMm({ plus, minus }: ToleranceCell, { writtenIn }: ThicknessReading): ThicknessReading['toleranceMm'] {
  if (writtenIn === null || writtenIn === 'ounces') return null;
  const unit = writtenIn === 'mm' ? 'mm' : 'in';
  return { plus: plus.mm ?? mmOf(plus.value, unit), minus: minus.mm ?? mmOf(minus.value, unit) };
}

const LABEL =
  /^(?:(?:sheet\s+)?(?:thickness|thick|thk|blechdicke|blechstärke|dicke|stärke|[ée]paisseur|espesor|spessore|dikte|板厚|厚さ|厚度)(?:\.(?!\d))?|[ts](?=\s*[=:])|t(?=\s*\d*[.,]\d|\s*\d+\s*mm))\s*[:=]?\s*/i;
const TRAILING = /(?:\s*\b(?:thickness|thick|thk|nominal|nom|minimum|min|sheet|plate|stock)\b\.?|(?<=[.,]\d+)\s*t)$/i;

// `t2` without decimals or unit stays unread: in capitals it is an aluminium temper.
function withoutLabel(text: string): string {
  return text.trim().replace(LABEL, '').replace(TRAILING, '').trim();
}
