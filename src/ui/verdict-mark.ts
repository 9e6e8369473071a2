import { html, svg, type TemplateResult } from 'lit';
import type { Outcome } from '../core/model/outcome.ts';
import { VERDICT_SHAPES, type VerdictStroke } from '../core/picture/paper/verdict-shapes.ts';

/** The shape of a verdict or outcome, in its colour; decoration beside the word, so hidden from screen readers. */
export function verdictShape(outcome: Outcome, size = 16): TemplateResult {
  const colour = outcome === 'note' ? 'soft' : outcome;
  return html`<svg class="mark" part="mark" data-outcome=${outcome} width=${size} height=${size} viewBox="0 0 16 16" aria-hidden="true" color="var(--${colour})">${verdictStrokes(outcome)}</svg>`;
}

/** The strokes of a shape, for a drawing: in the colour of the text, on the ground of the sheet. */
export function verdictStrokes(outcome: Outcome): readonly TemplateResult[] {
  return VERDICT_SHAPES[outcome].map(stroke);
}

function stroke({ d, paint, width, dashes }: VerdictStroke): TemplateResult {
  if (paint === 'area') return svg`<path d=${d} fill="currentColor"/>`;
  const colour = paint === 'cut' ? 'var(--sheet)' : 'currentColor';
  return svg`<path d=${d} fill="none" stroke=${colour} stroke-width=${width ?? 1} stroke-dasharray=${dashes ?? 'none'}/>`;
}
