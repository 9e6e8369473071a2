import type { Dimension, Point } from '../drawing.ts';
import {
  LINE_PX,
  linePieces,
  lineWidth,
  type Piece,
  pathOf,
  type Reach,
  TEXT_PX,
  type TextLine,
  type ToPx,
  toneOf,
} from './pieces.ts';

/** Room for one dimension line beside the drawing, and between the last one and its text. */
const LANE_PX = 15;
const TEXT_GAP_PX = 7;
const TICK_PX = 3;
/** Two lengths that share less than this stand in one line. */
const TOUCH_MM = 1e-6;

/** Where the drawing stands on the paper. */
export interface Paper {
  readonly widthPx: number;
  readonly leftPx: number;
  readonly rightPx: number;
}

/** Room that the dimensions on one side need. */
export function columnWidth(dimensions: readonly Dimension[], side: 'left' | 'right'): number {
  const here = dimensions.filter((dimension) => dimension.side === side);
  if (here.length === 0) return 0;
  const widest = Math.max(...here.flatMap((dimension) => textLines(dimension).map(lineWidth)));
  return laneCount(here) * LANE_PX + TEXT_GAP_PX + widest;
}

/** Dimension lines beside a drawing with their texts, which are moved apart where they would cover each other. */
export function layOutColumn(
  dimensions: readonly Dimension[],
  side: 'left' | 'right',
  toPx: ToPx,
  paper: Paper,
): Reach {
  const here = dimensions.filter((dimension) => dimension.side === side);
  const sign = side === 'left' ? -1 : 1;
  const facePx = side === 'left' ? paper.leftPx : paper.rightPx;
  const lanes = lanesOf(here);
  const textPx = facePx + sign * (Math.max(0, ...lanes.map((lane) => lane + 1)) * LANE_PX + TEXT_GAP_PX);
  const blocks = spread(here, toPx);
  const pieces = here.flatMap((dimension, at) => {
    const lanePx = facePx + sign * ((lanes[at] ?? 0) + 1) * LANE_PX;
    const block = blocks[at] ?? { topPx: 0, wishPx: 0 };
    return [...lineOf(dimension, lanePx, toPx, sign), ...textOf(dimension, block, lanePx, textPx, sign)];
  });
  const tops = blocks.map(({ topPx }) => topPx);
  const bottoms = here.map((dimension, at) => (tops[at] ?? 0) + dimension.lines.length * LINE_PX);
  return { pieces, topPx: Math.min(0, ...tops), bottomPx: Math.max(0, ...bottoms) };
}

/** The lines of a dimension's text; its outcome's shape stands before the first. */
export function textLines(dimension: Dimension): readonly TextLine[] {
  const tone = toneOf(dimension);
  return dimension.lines.map((text, at) => ({
    name: `${dimension.name}-text-${at}`,
    text,
    tone,
    ...(at === 0 && dimension.outcome ? { mark: dimension.outcome } : {}),
  }));
}

/** Lengths that overlap stand in lines beside each other. */
function lanesOf(dimensions: readonly Dimension[]): readonly number[] {
  const taken: { readonly from: number; readonly to: number; readonly lane: number }[] = [];
  return dimensions.map(({ fromMm, toMm }) => {
    const isFree = (lane: number) =>
      taken.every((other) => other.lane !== lane || other.to <= fromMm + TOUCH_MM || toMm <= other.from + TOUCH_MM);
    let lane = 0;
    while (!isFree(lane)) lane++;
    taken.push({ from: fromMm, to: toMm, lane });
    return lane;
  });
}

function laneCount(dimensions: readonly Dimension[]): number {
  return Math.max(0, ...lanesOf(dimensions)) + 1;
}

interface Block {
  readonly topPx: number;
  /** Middle of the length that the text speaks of. */
  readonly wishPx: number;
}

/** Upper ends of the text blocks: each beside its length, or below the one above it. */
function spread(dimensions: readonly Dimension[], toPx: ToPx): readonly Block[] {
  const wishes = dimensions.map(({ fromMm, toMm, lines }, at) => ({
    at,
    wishPx: toPx({ x: 0, y: (fromMm + toMm) / 2 }).y,
    heightPx: lines.length * LINE_PX,
  }));
  const sorted = [...wishes].sort((a, b) => a.wishPx - b.wishPx);
  const blocks: Block[] = [];
  let free = Number.NEGATIVE_INFINITY;
  for (const { at, wishPx, heightPx } of sorted) {
    const topPx = Math.max(wishPx - heightPx / 2, free);
    blocks[at] = { topPx, wishPx };
    free = topPx + heightPx + 2;
  }
  return blocks;
}

function lineOf(
  { name, fromMm, toMm, startMm, asked, outcome }: Dimension,
  x: number,
  toPx: ToPx,
  sign: number,
): readonly Piece[] {
  const ends = [fromMm, toMm].map((y) => toPx({ x: startMm, y }));
  const beyond = x + sign * 3;
  const d = [
    ...ends.map(({ x: from, y }) =>
      pathOf([
        { x: from + sign * 2, y },
        { x: beyond, y },
      ]),
    ),
    pathOf(ends.map(({ y }) => ({ x, y }))),
    ...ends.map(({ y }) => tick({ x, y })),
  ].join('');
  return [dimensionPiece(name, d, asked, outcome)];
}

/** A dimension line as a piece. */
export function dimensionPiece(name: string, d: string, asked?: boolean, outcome?: Dimension['outcome']): Piece {
  return {
    kind: 'path',
    name: `${name}-line`,
    look: asked ? 'asked-dimension' : 'dimension',
    d,
    ...(outcome ? { outcome } : {}),
  };
}

/** The slanted tick at the end of a dimension line. */
export function tick({ x, y }: Point): string {
  return pathOf([
    { x: x - TICK_PX, y: y + TICK_PX },
    { x: x + TICK_PX, y: y - TICK_PX },
  ]);
}

function textOf(
  dimension: Dimension,
  { topPx, wishPx }: Block,
  lanePx: number,
  textPx: number,
  sign: number,
): readonly Piece[] {
  const lines = textLines(dimension);
  const middle = topPx + (lines.length * LINE_PX) / 2;
  const leader =
    Math.abs(middle - wishPx) > 4 || Math.abs(textPx - lanePx) > LANE_PX
      ? [
          dimensionPiece(
            `${dimension.name}-leader`,
            pathOf([
              { x: lanePx, y: wishPx },
              { x: textPx - sign * 2, y: topPx + LINE_PX / 2 },
            ]),
            dimension.asked,
            dimension.outcome,
          ),
        ]
      : [];
  const texts = lines.flatMap((line, at) => {
    const x = sign > 0 ? textPx : textPx - lineWidth(line);
    return linePieces(line, { x, y: topPx + at * LINE_PX + TEXT_PX });
  });
  return [...leader, ...texts];
}
