import { polyline, rectangle, type Shape } from '../drawing.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';

/** A fastener as drawn, and what could not be. */
export interface DrawnPart {
  readonly shapes: readonly Shape[];
  readonly notKnown: readonly string[];
  readonly notes: readonly string[];
}

/** A shank from the seat into the hole, or for parts pressed from below from the lower face upwards. */
export function shankShapes(numbers: SectionNumbers, frame: SectionFrame, hollowMm: number | null): DrawnPart {
  const { shankMm, sheetMinMm, kind } = numbers;
  const half = frame.shankHalfMm;
  if (half === null) return { shapes: [], notKnown: ['mounting hole of the part'], notes: [] };
  const lengthMm = shankMm ?? sheetMinMm ?? frame.bottomMm;
  const notKnown = shankMm === null ? ['shank length'] : [];
  if (lengthMm === null) return { shapes: [], notKnown, notes: [] };
  const isFromBelow = kind === 'clinch stud' || kind === 'clinch pin';
  const fromMm = isFromBelow ? (frame.bottomMm ?? 0) : 0;
  const toMm = isFromBelow ? fromMm - lengthMm : lengthMm;
  const look = shankMm === null ? 'unknown' : 'part';
  return { shapes: hollow('shank', look, half, hollowMm, fromMm, toMm), notKnown, notes: [] };
}

/** A cut ring: two areas beside a bore, or one where there is no bore. Dashed ones are drawn as one outline. */
export function hollow(
  name: string,
  look: 'part' | 'unknown',
  halfMm: number,
  boreMm: number | null,
  fromMm: number,
  toMm: number,
): readonly Shape[] {
  if (look === 'unknown' || boreMm === null || boreMm >= halfMm)
    return [rectangle(name, look, { x: -halfMm, y: fromMm }, { x: halfMm, y: toMm })];
  return [
    rectangle(`${name}-left`, look, { x: -halfMm, y: fromMm }, { x: -boreMm, y: toMm }),
    rectangle(`${name}-right`, look, { x: boreMm, y: fromMm }, { x: halfMm, y: toMm }),
  ];
}

/** The two thin lines of a thread, and none where the thread is not known. */
export function threadLines(name: string, halfMm: number | null, fromMm: number, toMm: number): readonly Shape[] {
  if (halfMm === null) return [];
  return [-halfMm, halfMm].map((x, at) =>
    polyline(`${name}-${at === 0 ? 'left' : 'right'}`, 'thread', [
      { x, y: fromMm },
      { x, y: toMm },
    ]),
  );
}

/** Several drawn things as one. */
export function together(...parts: readonly DrawnPart[]): DrawnPart {
  return {
    shapes: parts.flatMap(({ shapes }) => shapes),
    notKnown: [...new Set(parts.flatMap(({ notKnown }) => notKnown))],
    notes: parts.flatMap(({ notes }) => notes),
  };
}
