import { css, html, type TemplateResult } from 'lit';
import type { AppState } from '../../app/state.ts';
import type { AuditedLine } from '../../core/model/audited.ts';
import { drawRow } from '../../core/picture/draw-row.ts';
import { verdictWord } from '../report-parts.ts';
import { drawingView } from './drawing-view.ts';
import { partsOf } from './parts-of.ts';

/** Rows drawn on paper at most: enough for most lists, and never a stack. */
const MOST_DRAWN = 40;
/** Sheet metals in one ladder: the drawings of two or three rows stand on a page. */
const MOST_BANDS = 8;
/** Three stand beside each other on a page across. */
const WIDTH_PX = 304;

/** The first rows in pictures, each on a line of its own under its number; nothing where nothing can be drawn. Needs its styles and `drawingStyles`. */
export function printedPictures(lines: readonly AuditedLine[], state: AppState): TemplateResult | '' {
  const drawn = lines.slice(0, MOST_DRAWN).map((line) => rowFigure(line, state));
  if (drawn.every((figure) => figure === '')) return '';
  const cut = `The first ${MOST_DRAWN} of the ${lines.length} rows above are drawn; each of the others is drawn beside the list when it is chosen.`;
  return html`<section class="pictures">
    <h2>Drawings</h2>
    <p class="soft">${lines.length > MOST_DRAWN ? cut : ''} What is dashed is not known.</p>
    ${drawn}
  </section>`;
}

function rowFigure(line: AuditedLine, { shop, catalogues }: AppState): TemplateResult | '' {
  const drawings = drawRow({ line, part: partsOf(catalogues).find(line.line.partNumber), shop }, MOST_BANDS);
  if (drawings.length === 0) return '';
  return html`<figure>
    <figcaption><b>Row ${line.row} · ${line.line.partNumber || 'no part number'}</b> ${verdictWord(line.verdict)} <span class="soft">${line.decidedBy?.brief ?? ''}</span></figcaption>
    <div class="drawings">${drawings.map(
      (drawing) =>
        html`<div><p class="soft small">${drawing.title}</p>${drawingView(drawing, WIDTH_PX, `row-${line.row}-${drawing.kind}`)}</div>`,
    )}</div>
  </figure>`;
}

/** How the drawings stand on the page. */
export const printedPictureStyles = css`
  figure {
    margin: 14px 0 0;
    padding-top: 8px;
    border-top: 1px solid var(--line);
    break-inside: avoid;
  }
  figcaption {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
  }
  .drawings {
    display: flex;
    flex-wrap: wrap;
    gap: 12px 20px;
    align-items: start;
    margin-top: 6px;
  }
`;
