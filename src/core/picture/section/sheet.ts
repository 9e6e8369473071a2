import { polyline, rectangle, type Shape } from '../drawing.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';

/** The cut sheet with its hole: hatched metal where the thickness is known, a dashed outline where it is not. */
export function sheetShapes(numbers: SectionNumbers, frame: SectionFrame): readonly Shape[] {
  const { bottomMm, leftMm, rightMm } = frame;
  if (bottomMm === null)
    return [
      polyline('seat', 'unknown', [
        { x: leftMm, y: 0 },
        { x: rightMm, y: 0 },
      ]),
    ];
  const halves = halvesOf(frame);
  if (numbers.thicknessMm === null)
    return halves.map(({ side, fromMm, toMm }) =>
      rectangle(`sheet-${side}`, 'unknown', { x: fromMm, y: 0 }, { x: toMm, y: bottomMm }),
    );
  return halves.flatMap((half) => [
    rectangle(`sheet-${half.side}`, 'metal', { x: half.fromMm, y: 0 }, { x: half.toMm, y: bottomMm }),
    ...faces(half, bottomMm),
    ...wall(half, bottomMm, numbers, frame),
    ...ending(half, bottomMm, frame),
    ...levels(half, numbers),
  ]);
}

interface Half {
  readonly side: 'left' | 'right' | 'whole';
  /** From the hole outwards, of a whole sheet from left to right. */
  readonly fromMm: number;
  readonly toMm: number;
}

/** The parts of the sheet beside the hole; one whole where no hole is known. */
export function halvesOf({ leftMm, rightMm, wallMm }: SectionFrame): readonly Half[] {
  if (wallMm === null) return [{ side: 'whole', fromMm: leftMm, toMm: rightMm }];
  return [
    { side: 'left', fromMm: -wallMm, toMm: leftMm },
    { side: 'right', fromMm: wallMm, toMm: Math.max(rightMm, wallMm) },
  ];
}

function faces({ side, fromMm, toMm }: Half, bottomMm: number): readonly Shape[] {
  return [0, bottomMm].map((y, at) =>
    polyline(`${at === 0 ? 'top' : 'bottom'}-${side}`, 'outline', [
      { x: fromMm, y },
      { x: toMm, y },
    ]),
  );
}

/** The wall of the hole: solid as given, blue where only the catalogue tells it. */
function wall(half: Half, bottomMm: number, { givenHoleMm }: SectionNumbers, { wallMm }: SectionFrame) {
  if (wallMm === null) return [];
  const look = givenHoleMm === null ? 'asked' : 'outline';
  return [
    polyline(`wall-${half.side}`, look, [
      { x: half.fromMm, y: 0 },
      { x: half.fromMm, y: bottomMm },
    ]),
  ];
}

function ending({ side, fromMm, toMm }: Half, bottomMm: number, { edgeIsDrawn }: SectionFrame): readonly Shape[] {
  const ends = side === 'whole' ? [fromMm, toMm] : [toMm];
  return ends.map((x, at) => {
    if (edgeIsDrawn && x > 0)
      return polyline('edge', 'outline', [
        { x, y: 0 },
        { x, y: bottomMm },
      ]);
    const notch = bottomMm * 0.12;
    return polyline(`break-${side}-${at}`, 'break', [
      { x, y: 0 },
      { x, y: bottomMm * 0.38 },
      { x: x - notch, y: bottomMm * 0.44 },
      { x: x + notch, y: bottomMm * 0.56 },
      { x, y: bottomMm * 0.62 },
      { x, y: bottomMm },
    ]);
  });
}

/** Lines at the thinnest sheet that the mill may deliver and at the least that the part needs. */
function levels({ side, fromMm, toMm }: Half, numbers: SectionNumbers): readonly Shape[] {
  const { thinnestMm, sheetMinMm, thicknessMm } = numbers;
  const level = (name: string, look: 'thinnest' | 'asked', y: number) =>
    polyline(`${name}-${side}`, look, [
      { x: fromMm, y },
      { x: toMm, y },
    ]);
  return [
    ...(thinnestMm === null || thicknessMm === null || thinnestMm >= thicknessMm
      ? []
      : [level('thinnest', 'thinnest', thinnestMm)]),
    ...(sheetMinMm === null ? [] : [level('needed', 'asked', sheetMinMm)]),
  ];
}
