import { gaugeTablesNamed } from '../calc/gauge-family.ts';
import type { LengthUnit } from '../model/list.ts';
import { mmOf, parseLength } from '../units/length.ts';
import { parseGauge } from './gauge-cell.ts';
import { isInSpan, POSSIBLE_SHEET_MM } from './size-spans.ts';

/** A length as one of its two spellings gives it. */
export interface LengthOfTwo {
  readonly mm: number;
  readonly writtenIn: LengthUnit;
}

// Metric sizes stand beside the inch or gauge that they replace: 1.5 mm beside 1/16 in, 2.5 mm beside 12 gauge.
const AGREEMENT = 0.07;

/**
 * Reads a size written twice: `1.5mm (16 ga)`, `16 ga (.0598)`, `.060" [1.5 mm]`, `16 GA / 1.5mm`. The length counts, of two lengths
 * the first. Units that are not written follow from the agreement. Null where there are not two spellings, or they disagree.
 */
export function readTwice(text: string, usual: LengthUnit | null): LengthOfTwo | null {
  const [first, second, ...more] = text.split(SEPARATOR).flatMap((piece) => piece?.trim() || []);
  if (first === undefined || second === undefined || more.length > 0) return null;
  const inOrder = lengthsOf(first, usual).find((length) => agrees(length, second, usual));
  if (inOrder) return inOrder;
  return parseGauge(first) ? (lengthsOf(second, usual).find((length) => agrees(length, first, usual)) ?? null) : null;
}

// Brackets, a semicolon, a comma before a space, a slash between spaces or behind a unit, an equals sign.
const SEPARATOR = /[()[\]{};]|,\s|\s[/=]\s|(?<=[a-z"”″])\s*[/=]\s*(?=[\d.#])/i;

function agrees(length: LengthOfTwo, other: string, usual: LengthUnit | null): boolean {
  const gauge = parseGauge(other);
  if (gauge) return gaugeSizes(gauge.gauge).some((mm) => isClose(length.mm, mm));
  return lengthsOf(other, usual).some(({ mm, writtenIn }) => writtenIn !== length.writtenIn && isClose(length.mm, mm));
}

function isClose(mm: number, otherMm: number): boolean {
  return Math.abs(mm / otherMm - 1) <= AGREEMENT;
}

// Every possible sheet that the words could mean; a bare number could be either unit, the usual one first.
function lengthsOf(text: string, usual: LengthUnit | null): LengthOfTwo[] {
  const length = parseLength(text);
  if (!length) return [];
  const { value, mm, unit, fraction } = length;
  const written: LengthOfTwo[] = mm !== null ? [{ mm, writtenIn: unit === 'in' || unit === 'mil' ? 'in' : 'mm' }] : [];
  const units: readonly LengthUnit[] = fraction || usual === 'in' ? ['in', 'mm'] : ['mm', 'in'];
  const bare = units.map((writtenIn) => ({ mm: mmOf(value, writtenIn), writtenIn }));
  return (mm !== null ? written : bare).filter((candidate) => isInSpan(candidate.mm, POSSIBLE_SHEET_MM));
}

function gaugeSizes(gauge: number): number[] {
  const systems = ['msg', 'galvanized', 'us-standard', 'brown-sharpe', 'birmingham', 'swg'] as const;
  const rows = systems.flatMap((name) => gaugeTablesNamed(name).flatMap((table) => table.rows));
  return rows.filter((row) => row.gauge === gauge).map(({ inch }) => mmOf(inch, 'in'));
}
