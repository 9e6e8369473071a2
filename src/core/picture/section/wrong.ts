import type { Outcome } from '../../model/outcome.ts';
import { drawable, polyline, rectangle, type Shape } from '../drawing.ts';
import { findingOf, type PicturedRow } from '../pictured-row.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';
import { halvesOf } from './sheet.ts';

/** What is wrong, marked where it is wrong, in the colour of its outcome; every length is that of the finding. */
export function wrongShapes(row: PicturedRow, numbers: SectionNumbers, frame: SectionFrame): readonly Shape[] {
  return [
    ...wrongThickness(row, numbers, frame),
    ...proudShank(row, numbers, frame),
    ...wrongHole(row, frame),
    ...coating(row, frame),
    ...missingEdge(numbers, frame),
  ];
}

/** Span of heights that the sheet lacks or has too much, and how bad that is; null where its thickness will do. */
export function thicknessOff(row: PicturedRow): { fromMm: number; toMm: number; outcome: Outcome; what: Off } | null {
  const finding = findingOf(row, 'clinch/sheet-thickness');
  if (!finding) return null;
  const { thicknessMm, thinnestMm, sheetMinMm, sheetMaxMm } = finding.values;
  const { outcome, says } = finding;
  const span = (from: number | undefined, to: number | undefined, what: Off) => {
    const [fromMm, toMm] = [drawable(from), drawable(to)];
    return fromMm === null || toMm === null || toMm <= fromMm ? null : { fromMm, toMm, outcome, what };
  };
  if (says === 'thin') return span(thicknessMm, sheetMinMm, 'too thin');
  if (says === 'thinnest') return span(thinnestMm, sheetMinMm, 'may lack');
  if (says === 'thick') return span(sheetMaxMm, thicknessMm, 'too thick');
  return null;
}
type Off = 'too thin' | 'may lack' | 'too thick';

function wrongThickness(row: PicturedRow, numbers: SectionNumbers, frame: SectionFrame): readonly Shape[] {
  const off = thicknessOff(row);
  if (!off || numbers.thicknessMm === null) return [];
  const name = off.what === 'too thick' ? 'excess' : 'shortfall';
  return halvesOf(frame).map(({ side, fromMm, toMm }) =>
    rectangle(`${name}-${side}`, 'wrong', { x: fromMm, y: off.fromMm }, { x: toMm, y: off.toMm }, off.outcome),
  );
}

/** Span by which a shank stands out of the far side of the sheet; null where it does not. */
export function shankProud(
  row: PicturedRow,
  { kind, shankMm }: SectionNumbers,
  { bottomMm }: SectionFrame,
): { fromMm: number; toMm: number; outcome: Outcome } | null {
  const finding = findingOf(row, 'clinch/shank');
  const proudMm = drawable(finding?.values.proudMm);
  if (!finding || proudMm === null || shankMm === null || bottomMm === null) return null;
  const isFromBelow = kind === 'clinch stud' || kind === 'clinch pin';
  const endMm = isFromBelow ? bottomMm - shankMm : shankMm;
  const fromMm = isFromBelow ? endMm + proudMm : endMm - proudMm;
  return { fromMm, toMm: endMm, outcome: finding.outcome };
}

function proudShank(row: PicturedRow, numbers: SectionNumbers, frame: SectionFrame): readonly Shape[] {
  const proud = shankProud(row, numbers, frame);
  const half = frame.shankHalfMm;
  if (!proud || half === null) return [];
  return [rectangle('proud', 'wrong', { x: -half, y: proud.fromMm }, { x: half, y: proud.toMm }, proud.outcome)];
}

/** What lies between the hole and the band that the part needs, and the band itself in blue. */
function wrongHole(row: PicturedRow, { bottomMm }: SectionFrame): readonly Shape[] {
  const finding = findingOf(row, 'clinch/hole');
  if (!finding || bottomMm === null || (finding.outcome !== 'fails' && finding.outcome !== 'marginal')) return [];
  const { holeMm, holeLowMm, holeHighMm, smallestMm = holeMm, largestMm = holeMm } = finding.values;
  const spans = [
    { name: 'hole-over', from: holeHighMm, to: largestMm },
    { name: 'hole-under', from: smallestMm, to: holeLowMm },
  ].filter(({ from, to }) => drawable(from) !== null && drawable(to) !== null && Number(from) < Number(to));
  return [
    ...spans.flatMap(({ name, from, to }) =>
      bothSides(name, 'wrong', Number(from) / 2, Number(to) / 2, bottomMm, finding.outcome),
    ),
    ...bandLines(holeLowMm, holeHighMm, bottomMm),
  ];
}

function bandLines(lowMm: number | undefined, highMm: number | undefined, bottomMm: number): readonly Shape[] {
  const ends = [
    ['low', drawable(lowMm)],
    ['high', drawable(highMm)],
  ] as const;
  return ends.flatMap(([name, mm]) =>
    mm === null
      ? []
      : [-1, 1].map((sign) =>
          polyline(`band-${name}-${sign < 0 ? 'left' : 'right'}`, 'asked', [
            { x: (sign * mm) / 2, y: 0 },
            { x: (sign * mm) / 2, y: bottomMm },
          ]),
        ),
  );
}

/** The coating on the wall; in the colour of its outcome where it closes the hole too far, or not far enough. */
function coating(row: PicturedRow, { bottomMm, wallMm }: SectionFrame): readonly Shape[] {
  const finding = findingOf(row, 'finish/hole-closing');
  const closedMm = finding?.values.closedHoleMm;
  if (!finding || closedMm === undefined || !(closedMm >= 0) || bottomMm === null || wallMm === null) return [];
  if (closedMm / 2 >= wallMm) return [];
  const isWrong = finding.outcome === 'fails' || finding.outcome === 'marginal';
  return bothSides(
    'coating',
    isWrong ? 'wrong' : 'coating',
    closedMm / 2,
    wallMm,
    bottomMm,
    isWrong ? finding.outcome : undefined,
  );
}

/** The metal that is missing between the edge as given and the edge as needed. */
function missingEdge({ edgeMm, edgeMinMm, thicknessMm }: SectionNumbers, frame: SectionFrame): readonly Shape[] {
  if (!frame.edgeIsDrawn || edgeMm === null || edgeMinMm === null || thicknessMm === null) return [];
  return [rectangle('edge-missing', 'wrong', { x: edgeMm, y: 0 }, { x: edgeMinMm, y: thicknessMm }, 'fails')];
}

function bothSides(
  name: string,
  look: 'wrong' | 'coating',
  fromMm: number,
  toMm: number,
  bottomMm: number,
  outcome?: Outcome,
): readonly Shape[] {
  return [-1, 1].map((sign) =>
    rectangle(
      `${name}-${sign < 0 ? 'left' : 'right'}`,
      look,
      { x: sign * fromMm, y: 0 },
      { x: sign * toMm, y: bottomMm },
      outcome,
    ),
  );
}
