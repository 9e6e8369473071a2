import { polyline, rectangle, type Shape } from '../drawing.ts';
import { type DrawnPart, hollow, shankShapes, threadLines, together } from './drawn-part.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';
import { outlineOf, rimOf, type Step } from './outline.ts';

/** Length of a dashed rod above the sheet, in its widths. */
const DASHED_ROD = 1.5;
const NOTHING: DrawnPart = { shapes: [], notKnown: [], notes: [] };

/** A stud or pin, pressed from below: head in or under the sheet, rod standing up through the hole. */
export function rod(numbers: SectionNumbers, frame: SectionFrame): DrawnPart {
  const isPin = numbers.kind === 'clinch pin';
  const shank = rimmed(isPin || numbers.shankMm !== null ? shankShapes(numbers, frame, null) : NOTHING);
  const steps = isPin ? null : stepsOf(numbers, frame);
  const stem = rodShapes(numbers, frame, isPin);
  if (steps)
    return together(shank, whole(steps), { ...stem, shapes: stem.shapes.filter(({ look }) => look !== 'part') });
  return together(shank, isPin ? NOTHING : rimmed(head(numbers, frame)), rimmed(stem));
}

/** The height to which the holder of a captive screw is drawn; a guess that is drawn dashed where it is not known. */
export function holderHighMm({ heightMm, flangeMm }: SectionNumbers, { shankHalfMm }: SectionFrame): number {
  return heightMm ?? (flangeMm === null ? (shankHalfMm ?? 0) : flangeMm / 2);
}

/** A captive screw: its holder on the seat, and the screw dashed, because it moves. */
export function captiveScrew(numbers: SectionNumbers, frame: SectionFrame): DrawnPart {
  const { majorMm, lengthMm, flangeMm, heightMm } = numbers;
  const holderHalf = (flangeMm ?? 2 * (frame.shankHalfMm ?? 0)) / 2;
  const highMm = holderHighMm(numbers, frame);
  const look = flangeMm !== null && heightMm !== null ? 'part' : 'unknown';
  const bore = majorMm === null ? null : majorMm / 2;
  const notKnown = [
    ...(flangeMm === null ? ['flange'] : []),
    ...(heightMm === null ? ['height'] : []),
    ...(majorMm === null ? ['thread'] : []),
    ...(lengthMm === null ? ['length'] : []),
    'where the screw rests',
  ];
  const shapes: Shape[] = [];
  if (holderHalf > 0) shapes.push(...hollow('body', look, holderHalf, bore, -highMm, 0));
  if (majorMm !== null && lengthMm !== null)
    shapes.push(
      rectangle('screw', 'unknown', { x: -majorMm / 2, y: -highMm }, { x: majorMm / 2, y: lengthMm - highMm }),
    );
  return rimmed(together(shankShapes(numbers, frame, bore), { shapes, notKnown, notes: [] }));
}

/** Rod and head where both are known in full, from the top; else null. */
function stepsOf({ majorMm, lengthMm, flangeMm, heightMm, flush }: SectionNumbers, frame: SectionFrame) {
  if (majorMm === null || lengthMm === null || flangeMm === null || heightMm === null || flush === null) return null;
  const footMm = frame.bottomMm ?? 0;
  const [headTopMm, headEndMm] = flush ? [footMm - heightMm, footMm] : [footMm, footMm + heightMm];
  if (headTopMm <= footMm - lengthMm) return null;
  const stem: Step = { halfMm: majorMm / 2, fromMm: footMm - lengthMm, toMm: headTopMm };
  return { stem, head: { halfMm: flangeMm / 2, fromMm: headTopMm, toMm: headEndMm } };
}

/** Rod and head as one body. */
function whole({ stem, head }: NonNullable<ReturnType<typeof stepsOf>>): DrawnPart {
  const areas = [
    ...hollow('rod', 'part', stem.halfMm, null, stem.fromMm, stem.toMm),
    ...hollow('head', 'part', head.halfMm, null, head.fromMm, head.toMm),
  ];
  return { shapes: [...areas, ...outlineOf([stem, head], null)], notKnown: [], notes: [] };
}

/** The rod alone, from its end down to the outer face. */
function rodShapes(numbers: SectionNumbers, frame: SectionFrame, isPin: boolean): DrawnPart {
  const { majorMm, minorMm, lengthMm } = numbers;
  const half = isPin || majorMm === null ? frame.shankHalfMm : majorMm / 2;
  const diameterIsKnown = !isPin && majorMm !== null;
  const notKnown = [
    ...(diameterIsKnown ? [] : [isPin ? 'diameter of the pin' : 'thread']),
    ...(lengthMm === null ? ['length'] : []),
  ];
  if (half === null) return { shapes: [], notKnown, notes: [] };
  const footMm = frame.bottomMm ?? 0;
  const topMm = lengthMm === null ? -DASHED_ROD * 2 * half : footMm - lengthMm;
  const look = diameterIsKnown && lengthMm !== null ? 'part' : 'unknown';
  const threads = minorMm === null || look === 'unknown' ? [] : threadLines('thread', minorMm / 2, topMm, 0);
  return {
    shapes: [...hollow('rod', look, half, null, topMm, footMm), ...threads],
    notKnown,
    notes: lengthMm === null ? [] : ['The length is taken from the outer face of the sheet.'],
  };
}

/** Every known area gets its own outline. */
function rimmed(drawn: DrawnPart): DrawnPart {
  const rims = drawn.shapes.filter(({ look }) => look === 'part').map(rimOf);
  return { ...drawn, shapes: [...drawn.shapes, ...rims] };
}

/** A flush head lies in the sheet, any other under it; dashed where its size or its place is not known. */
function head({ flangeMm, heightMm, flush }: SectionNumbers, frame: SectionFrame): DrawnPart {
  const notKnown = [
    ...(flangeMm === null ? ['width of the head'] : []),
    ...(heightMm === null ? ['height of the head'] : []),
    ...(flush === null ? ['whether the head is flush'] : []),
  ];
  const footMm = frame.bottomMm ?? 0;
  const half = (flangeMm ?? 2 * (frame.shankHalfMm ?? 0)) / 2;
  const highMm = heightMm ?? footMm / 2;
  if (half <= 0 || highMm <= 0) return { shapes: [], notKnown, notes: [] };
  const farMm = flush === false ? footMm + highMm : footMm - highMm;
  if (notKnown.length === 0) return { shapes: hollow('head', 'part', half, null, footMm, farMm), notKnown, notes: [] };
  return { shapes: [headOutline(half, footMm, farMm)], notKnown, notes: [] };
}

/** The dashed outline leaves the known face of the sheet to the sheet. */
function headOutline(half: number, footMm: number, farMm: number): Shape {
  return polyline('head', 'unknown', [
    { x: -half, y: footMm },
    { x: -half, y: farMm },
    { x: half, y: farMm },
    { x: half, y: footMm },
  ]);
}
