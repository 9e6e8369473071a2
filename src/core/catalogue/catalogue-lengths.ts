import { parseHole } from '../intake/hole.ts';
import { isInSpan, POSSIBLE_SHEET_MM } from '../intake/size-spans.ts';
import { mmOf, parseLength } from '../units/length.ts';
import { type CellResult, isBlank } from './catalogue-cells.ts';
import type { CatalogueColumn } from './catalogue-columns.ts';

/** A hole with the tolerance that may stand behind it: "4.20 +0.08/-0". */
export interface CatalogueHole {
  readonly mm: number;
  readonly plusMm: number | null;
  readonly minusMm: number | null;
}

/** Millimetres of a length cell: its own unit counts, else the column's. */
export function readLength(text: string, column: CatalogueColumn): CellResult<number> {
  if (isBlank(text)) return { value: null };
  const length = parseLength(withoutLimit(text));
  if (!length) return { problem: 'cannot be read as a length' };
  // The lower side of a tolerance is often written with its sign.
  const isSigned = column.field === 'holeMinusMm';
  if (length.value < 0 && !isSigned) return { problem: 'is negative' };
  const mm = length.mm ?? (column.unit ? mmOf(length.value, column.unit) : null);
  if (mm === null && length.value !== 0)
    return { problem: 'could be millimetres or inches: write the unit into the heading' };
  const size = Math.abs(mm ?? 0);
  const isSheet = column.field === 'sheetMinMm' || column.field === 'sheetMaxMm';
  if (isSheet && !isInSpan(size, POSSIBLE_SHEET_MM))
    return { problem: `would be a sheet of ${size.toFixed(2)} mm, which is not possible` };
  return { value: size };
}

/** "1.0 min", "≥ 1.0": the word repeats the heading. */
function withoutLimit(text: string): string {
  return text.replace(/\b(?:min|max)(?:imum)?\b\.?|^\s*[≥≤<>]=?/gi, '').trim();
}

/** A mounting hole, which may be written as a drill, a fraction, or with its tolerance. */
export function readHole(text: string, { unit }: CatalogueColumn): CellResult<CatalogueHole> {
  if (isBlank(text)) return { value: null };
  if (/^[-‐-―−]\s*[.\d]/.test(text.trim())) return { problem: 'is negative' };
  const { how, mm, lowMm, highMm } = parseHole(text, { unit, from: unit && 'heading' });
  if (how === 'ambiguous-unit') return { problem: 'could be millimetres or inches: write the unit into the heading' };
  if (how === 'impossible') return { problem: 'is not possible as a hole in the unit of its column' };
  if (how !== 'size' || mm === null) return { problem: 'cannot be read as a hole' };
  return { value: { mm, plusMm: difference(highMm, mm), minusMm: difference(mm, lowMm) } };
}

function difference(high: number | null, low: number | null): number | null {
  return high === null || low === null ? null : Number((high - low).toFixed(6));
}
