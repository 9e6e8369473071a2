import type { Label, Point } from '../drawing.ts';
import {
  type Box,
  boxOf,
  LINE_PX,
  linePieces,
  lineWidth,
  overlap,
  type Piece,
  type Reach,
  TEXT_PX,
  type TextLine,
  type ToPx,
  toneOf,
} from './pieces.ts';
import { textWidth } from './text-width.ts';

const BESIDE_PX = 5;
const MOST_STEPS_UP = 40;

/** Labels at their places, or at the next place where they cover no other: on the other side, in the middle, then line by line upwards. */
export function layOutLabels(labels: readonly Label[], toPx: ToPx, widthPx: number): Reach {
  const boxes: Box[] = [];
  const pieces: Piece[] = [];
  for (const label of labels) {
    const line = lineFor(label, widthPx);
    const at = placeFor(label, line, toPx, widthPx, boxes);
    boxes.push(boxOf(line, at));
    pieces.push(...linePieces(line, at));
  }
  const topPx = Math.min(0, ...boxes.map(({ top }) => top));
  return { pieces, topPx, bottomPx: Math.max(0, ...boxes.map(({ bottom }) => bottom)) };
}

/** A text wider than the paper is cut. */
function lineFor(label: Label, widthPx: number): TextLine {
  const { name, outcome } = label;
  const line: TextLine = { name, text: label.text, tone: toneOf(label), ...(outcome ? { mark: outcome } : {}) };
  if (lineWidth(line) <= widthPx) return line;
  const room = widthPx - (outcome ? 14 : 0) - TEXT_PX;
  let text = label.text;
  while (text.length > 1 && textWidth(text, TEXT_PX) > room) text = text.slice(0, -1);
  return { ...line, text: `${text.trimEnd()}…` };
}

function placeFor(label: Label, line: TextLine, toPx: ToPx, widthPx: number, taken: readonly Box[]): Point {
  const width = lineWidth(line);
  const wishes = wishesFor(label, width, toPx);
  const y = toPx(label.at).y;
  for (let step = 0; step < MOST_STEPS_UP; step++) {
    const found = wishes
      .map((x) => ({ x, y: y - step * LINE_PX }))
      .find((at) => fits(at.x, width, widthPx) && !taken.some((box) => overlap(box, boxOf(line, at))));
    if (found) return found;
  }
  return { x: 0, y: Math.min(y, ...taken.map(({ top }) => top)) - LINE_PX };
}

function fits(x: number, width: number, widthPx: number): boolean {
  return x >= -0.01 && x + width <= widthPx + 0.01;
}

/** Left ends to try, the wish first; the last is inside the paper whatever its width. */
function wishesFor({ at, anchor, leftOfMm }: Label, width: number, toPx: ToPx): readonly number[] {
  const { x } = toPx(at);
  const before = x - BESIDE_PX - width;
  const middle = x - width / 2;
  if (anchor === 'middle') return [middle, x + BESIDE_PX, before, 0];
  if (anchor === 'end') return [before, x + BESIDE_PX, middle, 0];
  if (leftOfMm === undefined) return [x, before, 0];
  const limit = toPx({ x: leftOfMm, y: at.y }).x - BESIDE_PX - width;
  return [limit < x && limit >= 0 ? limit : x, before, 0];
}
