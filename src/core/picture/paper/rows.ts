import type { Dimension } from '../drawing.ts';
import { dimensionPiece, textLines, tick } from './column.ts';
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
} from './pieces.ts';
import { wrapText } from './text-width.ts';

const GAP_PX = 12;

/** Dimension lines under a drawing, one below the other, each with its text beneath. */
export function layOutRows(dimensions: readonly Dimension[], toPx: ToPx, widthPx: number, topPx: number): Reach {
  const pieces: Piece[] = [];
  let y = topPx;
  for (const dimension of dimensions) {
    y += GAP_PX;
    pieces.push(lineOf(dimension, y, toPx));
    const middle = toPx({ x: (dimension.fromMm + dimension.toMm) / 2, y: 0 }).x;
    for (const line of wrapped(dimension, widthPx)) {
      y += LINE_PX;
      const width = lineWidth(line);
      const x = Math.max(0, Math.min(middle - width / 2, widthPx - width));
      pieces.push(...linePieces(line, { x, y }));
    }
    y += LINE_PX - TEXT_PX;
  }
  return { pieces, topPx, bottomPx: y };
}

function lineOf({ name, fromMm, toMm, startMm, asked, outcome }: Dimension, y: number, toPx: ToPx): Piece {
  const ends = [fromMm, toMm].map((x) => toPx({ x, y: startMm }));
  const d = [
    ...ends.map(({ x, y: from }) =>
      pathOf([
        { x, y: from + 2 },
        { x, y: y + 3 },
      ]),
    ),
    pathOf(ends.map(({ x }) => ({ x, y }))),
    ...ends.map(({ x }) => tick({ x, y })),
  ].join('');
  return dimensionPiece(name, d, asked, outcome);
}

/** No line wider than the paper. */
function wrapped(dimension: Dimension, widthPx: number): readonly TextLine[] {
  return textLines(dimension).flatMap((line) => {
    const lines = wrapText(line.text, TEXT_PX, widthPx - 14);
    return lines.map((text, at) => {
      const { mark, ...plain } = line;
      const name = at === 0 ? line.name : `${line.name}-${at}`;
      return { ...plain, name, text, ...(at === 0 && mark ? { mark } : {}) };
    });
  });
}
