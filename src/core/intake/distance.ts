import type { DistanceReading } from '../model/line.ts';
import { mmOf, parseLength } from '../units/length.ts';
import { splitDeviations } from './deviations.ts';
import { type PlacedSize, placeLength } from './possible-size.ts';
import type { Span } from './size-spans.ts';
import { isBlankCell, plainCell, withoutDistanceWords } from './size-words.ts';
import type { AroundUnit } from './thickness.ts';

/** Distances on a panel, in mm. Common practice, no source. */
const POSSIBLE_DISTANCE_MM: Span = [0.5, 5000];

/**
 * Reads an edge, spacing or bend distance: `9`, `9 mm`, `.312`, `5/16`, `8 MIN`. Of a toleranced distance the smallest counts, since
 * less metal is worse. What is not wholly understood is `unreadable`; a bare number without a unit around it is asked
 * (`ambiguous-unit`), its inch reading in `otherMm`.
 */
export function parseDistance(text: string, around: AroundUnit): DistanceReading {
  const plain = plainCell(text);
  if (isBlankCell(plain)) return { text, how: 'blank', mm: null, unitFrom: null, otherMm: null };
  const cell = withoutDistanceWords(plain);
  const placed = readPlain(cell, around) ?? readSmallest(cell, around);
  if (!placed) return { text, how: 'unreadable', mm: null, unitFrom: null, otherMm: null };
  const { unit: _unit, ...known } = placed;
  return { text, ...known };
}

function readPlain(cell: string, around: AroundUnit): PlacedSize | null {
  const length = parseLength(cell);
  return length && length.value > 0 ? placeLength(length, around, POSSIBLE_DISTANCE_MM) : null;
}

function readSmallest(cell: string, around: AroundUnit): PlacedSize | null {
  const found = splitDeviations(cell);
  if (!found) return null;
  const { nominal, lower, unit } = found;
  const placed = readPlain(
    unit !== null && parseLength(nominal)?.unit === null ? `${nominal} ${unit}` : nominal,
    around,
  );
  if (placed?.how !== 'size' || placed.mm === null) return placed;
  const mm = Number((placed.mm + mmOf(lower, unit ?? placed.unit ?? 'mm')).toPrecision(12));
  return mm > 0 ? { ...placed, mm } : null;
}
