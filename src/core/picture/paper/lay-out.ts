import type { Dimension, Drawing, Shape } from '../drawing.ts';
import { columnWidth, layOutColumn } from './column.ts';
import { hatching } from './hatching.ts';
import { layOutLabels } from './labels.ts';
import { circlePath, LINE_PX, linePieces, type Piece, pathOf, TEXT_PX, type ToPx } from './pieces.ts';
import { layOutRows } from './rows.ts';
import { wrapText } from './text-width.ts';

/** A drawing on paper of a certain width: everything in px, ready to paint. */
export interface LaidOut {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Upper end of what is painted; may be negative. */
  readonly topPx: number;
  /** Px that one mm across takes. */
  readonly pxPerMm: number;
  readonly pieces: readonly Piece[];
}

const SIDE_PX = 12;
/** A section of a long stud, or a far edge, is kept to this height; a row of text of a hardness scale takes its own. */
const HIGHEST_PX = { section: 250, plan: 170 } as const;
const MOST_PX_PER_MM = 40;

/** Places a drawing on paper: true to scale inside, texts and dimension lines around it where they cover nothing. */
export function layOut(drawing: Drawing, widthPx: number): LaidOut {
  const leftPx = SIDE_PX + columnWidth(drawing.dimensions, 'left');
  const rightPx = SIDE_PX + columnWidth(drawing.dimensions, 'right');
  const pxPerMm = scaleOf(drawing, widthPx - leftPx - rightPx);
  const downPx = drawing.scale === 'points' ? LINE_PX : pxPerMm;
  const spareMm = Math.max(widthPx - leftPx - rightPx - drawing.widthMm * pxPerMm, 0) / 2;
  const toPx: ToPx = ({ x, y }) => ({
    x: leftPx + spareMm + (x - drawing.corner.x) * pxPerMm,
    y: (y - drawing.corner.y) * downPx,
  });
  const heightPx = drawing.heightMm * downPx;
  const paper = { widthPx, leftPx: toPx(drawing.corner).x, rightPx: widthPx - rightPx - spareMm };
  const columns = (['left', 'right'] as const).map((side) => layOutColumn(drawing.dimensions, side, toPx, paper));
  const labels = layOutLabels(drawing.labels, toPx, widthPx);
  const topPx = Math.min(0, labels.topPx, ...columns.map(({ topPx }) => topPx)) - 4;
  const below = Math.max(heightPx, labels.bottomPx, ...columns.map(({ bottomPx }) => bottomPx));
  const rows = layOutRows(sideOf(drawing.dimensions, 'below'), toPx, widthPx, below);
  const notes = layOutNotes(drawing, widthPx, rows.bottomPx);
  const pieces = [
    ...drawing.shapes.flatMap((shape) => shapePieces(shape, toPx, pxPerMm)),
    ...columns.flatMap((column) => column.pieces),
    ...rows.pieces,
    ...labels.pieces,
    ...notes.pieces,
  ];
  return { widthPx, topPx, heightPx: notes.bottomPx - topPx + 2, pxPerMm, pieces: textsLast(pieces) };
}

/** No line crosses a text: texts are painted over them. */
function textsLast(pieces: readonly Piece[]): readonly Piece[] {
  return [...pieces.filter(({ kind }) => kind === 'path'), ...pieces.filter(({ kind }) => kind !== 'path')];
}

function scaleOf({ kind, widthMm, heightMm }: Drawing, roomPx: number): number {
  const across = Math.max(roomPx, 40) / Math.max(widthMm, 0.01);
  if (kind === 'hardness') return across;
  return Math.min(across, HIGHEST_PX[kind] / Math.max(heightMm, 0.01), MOST_PX_PER_MM);
}

/** The dimensions on one side. */
function sideOf(dimensions: readonly Dimension[], side: Dimension['side']): readonly Dimension[] {
  return dimensions.filter((dimension) => dimension.side === side);
}

function shapePieces(shape: Shape, toPx: ToPx, pxPerMm: number): readonly Piece[] {
  const { name, look, points, closed, radiusMm, outcome } = shape;
  const corners = points.map(toPx);
  const [centre] = corners;
  const d = radiusMm !== undefined && centre ? circlePath(centre, radiusMm * pxPerMm) : pathOf(corners, closed);
  const path: Piece = { kind: 'path', name, look, d, ...(outcome ? { outcome } : {}) };
  const isHatched = look === 'metal' || (look === 'wrong' && closed);
  if (!isHatched) return [path];
  const lines = hatching(corners);
  return lines === ''
    ? [path]
    : [path, { kind: 'path', name: `${name}-hatching`, look: 'hatch', d: lines, ...(outcome ? { outcome } : {}) }];
}

/** What is not known and what was taken for granted, in lines under the drawing. */
function layOutNotes(
  { notKnown, notes }: Drawing,
  widthPx: number,
  topPx: number,
): { readonly pieces: readonly Piece[]; readonly bottomPx: number } {
  const sentences = [...(notKnown.length > 0 ? [`Not known: ${notKnown.join(', ')}.`] : []), ...notes];
  const lines = sentences.flatMap((sentence) => wrapText(sentence, TEXT_PX, widthPx));
  const pieces = lines.flatMap((text, at) =>
    linePieces({ name: `note-${at}`, text, tone: 'soft' }, { x: 0, y: topPx + 6 + (at + 1) * LINE_PX }),
  );
  return { pieces, bottomPx: topPx + (lines.length > 0 ? 8 + lines.length * LINE_PX : 0) };
}
