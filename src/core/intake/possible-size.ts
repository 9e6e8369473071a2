import type { LengthUnit } from '../model/list.ts';
import type { UnitFrom } from '../model/thickness.ts';
import { type Length, type LengthWord, mmOf } from '../units/length.ts';
import { isInSpan, type Span } from './size-spans.ts';
import type { AroundUnit } from './thickness.ts';

/** A written length in millimetres, or why it has none. */
export interface PlacedSize {
  readonly how: 'size' | 'ambiguous-unit' | 'impossible';
  readonly mm: number | null;
  /** Unit that applied. */
  readonly unit: LengthUnit | null;
  readonly unitFrom: UnitFrom | null;
  /** What the other unit would give, where that is possible. */
  readonly otherMm: number | null;
}

/**
 * Finds out what a length is in millimetres: by its own unit, as inches for a fraction, by the unit around it, or by what only one
 * unit allows (as a column of that one cell would). `possibleMm` bounds what is believed; a bare number possible in both units is
 * ambiguous, its `mm` null and its inch reading in `otherMm`.
 */
export function placeLength({ value, unit, fraction }: Length, around: AroundUnit, possibleMm: Span): PlacedSize {
  if (unit !== null) return inUnit(value, unit, 'cell', possibleMm);
  if (fraction) return inUnit(value, 'in', 'cell', possibleMm);
  if (around.unit !== null) return inUnit(value, around.unit, around.from ?? 'column', possibleMm);
  const asMm = isInSpan(value, possibleMm);
  const asInches = isInSpan(mmOf(value, 'in'), possibleMm);
  if (asMm && asInches)
    return { how: 'ambiguous-unit', mm: null, unit: null, unitFrom: null, otherMm: mmOf(value, 'in') };
  if (asMm || asInches) return inUnit(value, asMm ? 'mm' : 'in', 'column', possibleMm);
  return { how: 'impossible', mm: value, unit: null, unitFrom: null, otherMm: null };
}

function inUnit(value: number, written: LengthWord, unitFrom: UnitFrom, possibleMm: Span): PlacedSize {
  const mm = mmOf(value, written);
  const unit = written === 'in' || written === 'mil' ? 'in' : 'mm';
  if (isInSpan(mm, possibleMm)) return { how: 'size', mm, unit, unitFrom, otherMm: null };
  const otherMm = mmOf(value, unit === 'in' ? 'mm' : 'in');
  return { how: 'impossible', mm, unit, unitFrom, otherMm: isInSpan(otherMm, possibleMm) ? otherMm : null };
}
