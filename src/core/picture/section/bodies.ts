import { type DrawnPart, hollow, shankShapes, threadLines, together } from './drawn-part.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';
import { outlineOf, type Step } from './outline.ts';

/** Sizes of dashed outlines, in hole diameters: they only say that something is there. */
const DASHED_WIDTH = 1.35;
const DASHED_HEIGHT = 0.6;

/** A nut: head on the seat, shank in the hole, one bore through both. A floating one has its nut loose inside. */
export function nutLike(numbers: SectionNumbers, frame: SectionFrame): DrawnPart {
  const floats = numbers.kind === 'floating nut';
  const bore = floats ? null : half(numbers.minorMm);
  const drawn = solid(numbers, frame, numbers.heightMm, 'height', bore);
  const topMm = -(numbers.heightMm ?? 0);
  const endMm = numbers.shankMm ?? 0;
  if (floats) return together(drawn, floating(numbers, topMm, endMm));
  return together(drawn, {
    shapes: endMm > topMm ? threadLines('thread', half(numbers.majorMm), topMm, endMm) : [],
    notKnown: numbers.minorMm === null ? ['thread'] : [],
    notes: [],
  });
}

/** A standoff: barrel on the seat, open through it, or closed at the sheet. */
export function standoff(numbers: SectionNumbers, frame: SectionFrame): DrawnPart {
  const lengthMm = numbers.lengthMm ?? numbers.heightMm;
  const isBlind = numbers.kind === 'blind standoff';
  const bore = isBlind ? null : half(numbers.minorMm);
  const drawn = solid(numbers, frame, lengthMm, 'length', bore);
  const topMm = -(lengthMm ?? 0);
  const thread = half(numbers.majorMm);
  const endMm = isBlind ? 0 : (numbers.shankMm ?? 0);
  const notKnown = [...(numbers.minorMm === null ? ['thread'] : []), ...(isBlind ? ['depth of the thread'] : [])];
  if (isBlind) return together(drawn, { shapes: blindBore(thread, topMm), notKnown, notes: [LENGTH_FROM_SEAT] });
  const shapes = endMm > topMm ? threadLines('thread', thread, topMm, endMm) : [];
  return together(drawn, { shapes, notKnown, notes: lengthMm === null ? [] : [LENGTH_FROM_SEAT] });
}

const LENGTH_FROM_SEAT = 'The length is taken from the seat.';

/** A dashed bore: nobody says how deep it goes. */
function blindBore(threadMm: number | null, topMm: number) {
  return threadMm === null || topMm >= 0 ? [] : hollow('bore', 'unknown', threadMm, null, topMm, 0);
}

/** Head or barrel with the shank under it, and one outline around what is known of both. */
function solid(
  numbers: SectionNumbers,
  frame: SectionFrame,
  highMm: number | null,
  highName: string,
  boreMm: number | null,
): DrawnPart {
  const above = body(numbers, frame, highMm, highName, boreMm);
  const { flangeMm, shankMm } = numbers;
  const steps: Step[] = [];
  if (flangeMm !== null && highMm !== null) steps.push({ halfMm: flangeMm / 2, fromMm: -highMm, toMm: 0 });
  if (shankMm !== null && frame.shankHalfMm !== null)
    steps.push({ halfMm: frame.shankHalfMm, fromMm: 0, toMm: shankMm });
  const outline = { shapes: outlineOf(steps, boreMm), notKnown: [], notes: [] };
  return together(above, shankShapes(numbers, frame, boreMm), outline);
}

/** Head or barrel above the seat. */
function body(
  { flangeMm }: SectionNumbers,
  { shankHalfMm, wallMm }: SectionFrame,
  highMm: number | null,
  highName: string,
  boreMm: number | null,
): DrawnPart {
  const notKnown = [...(flangeMm === null ? ['flange'] : []), ...(highMm === null ? [highName] : [])];
  const holeMm = 2 * (shankHalfMm ?? wallMm ?? 0);
  const widthMm = flangeMm ?? holeMm * DASHED_WIDTH;
  const drawnHighMm = highMm ?? (widthMm / DASHED_WIDTH) * DASHED_HEIGHT;
  if (widthMm <= 0) return { shapes: [], notKnown, notes: [] };
  const look = notKnown.length > 0 ? 'unknown' : 'part';
  return { shapes: hollow('body', look, widthMm / 2, boreMm, -drawnHighMm, 0), notKnown, notes: [] };
}

/** The loose nut inside its holder: how far it floats is not told. */
function floating({ majorMm, minorMm }: SectionNumbers, topMm: number, endMm: number): DrawnPart {
  const notKnown = [...(minorMm === null ? ['thread'] : []), 'float of the nut'];
  if (majorMm === null || endMm <= topMm) return { shapes: [], notKnown, notes: [] };
  return { shapes: hollow('nut-inside', 'unknown', majorMm / 2, null, topMm, endMm), notKnown, notes: [] };
}

function half(mm: number | null): number | null {
  return mm === null ? null : mm / 2;
}
