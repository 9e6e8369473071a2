import type { ThreadAndLength } from '../units/thread.ts';
import { isInSpan, type Span } from './size-spans.ts';

/** Lengths of studs, standoffs, pins and their screws, in mm: another is not believed. Common practice, no source. */
export const POSSIBLE_LENGTH_MM: Span = [1, 100];

/** Longest whole number that is believed to be inches behind an inch thread: in "8-32 x 12" the unit is anybody's guess. */
const WHOLE_INCHES_MM = 2 * 25.4;

/** The length written behind a thread, in mm; null where it is not one of a fastener or its unit is in doubt. */
export function believedLength({ thread, lengthMm }: ThreadAndLength): number | null {
  if (lengthMm === null || !isInSpan(lengthMm, POSSIBLE_LENGTH_MM)) return null;
  return thread.system === 'unified' && isDoubtfulInches(lengthMm) ? null : lengthMm;
}

function isDoubtfulInches(lengthMm: number): boolean {
  return lengthMm > WHOLE_INCHES_MM && Number.isInteger(Number((lengthMm / 25.4).toFixed(6)));
}
