import { html, svg, type TemplateResult } from 'lit';
import type { Drawing } from '../../core/picture/drawing.ts';
import { layOut } from '../../core/picture/paper/lay-out.ts';
import { MARK_PX, type Piece } from '../../core/picture/paper/pieces.ts';
import { verdictStrokes } from '../verdict-mark.ts';

/**
 * A drawing as a picture of a given width in px, named by its title and by what one sees in words. `id` is unique among the pictures of
 * the element. Needs `drawingStyles`.
 */
export function drawingView(drawing: Drawing, widthPx: number, id: string): TemplateResult {
  const { heightPx, topPx, pieces } = layOut(drawing, widthPx);
  const [title, words] = [`${id}-title`, `${id}-words`];
  return html`<svg class="drawing" role="img" aria-labelledby="${title} ${words}" data-kind=${drawing.kind}
    width=${widthPx} height=${heightPx} viewBox="0 ${topPx} ${widthPx} ${heightPx}"><title id=${title}>${drawing.title}</title><desc id=${words}>${drawing.summary}</desc>${pieces.map(pieceView)}</svg>`;
}

function pieceView(piece: Piece): TemplateResult {
  const { name } = piece;
  if (piece.kind === 'text')
    return svg`<text data-name=${name} class=${piece.tone} x=${piece.at.x} y=${piece.at.y}>${piece.text}</text>`;
  if (piece.kind === 'mark')
    return svg`<g class="verdict ${piece.outcome}" data-name=${name} transform="translate(${piece.at.x} ${piece.at.y}) scale(${MARK_PX / 16})">${verdictStrokes(piece.outcome)}</g>`;
  return svg`<path data-name=${name} class=${classesOf(piece)} d=${piece.d}/>`;
}

/** What the path stands for, and the outcome in whose colour it is drawn. */
function classesOf({ look, outcome }: Extract<Piece, { kind: 'path' }>): string {
  const own = look === 'unknown' ? 'unknown-fact' : look;
  if (!outcome) return own;
  return look === 'wrong' ? `${own} ${outcome}` : `${own} marks ${outcome}`;
}
