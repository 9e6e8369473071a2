import { html, svg, type TemplateResult } from 'lit';
import type { Outcome } from '../core/model/outcome.ts';

/** The four shapes, drawn in a 16 by 16 box: disc with tick, half-filled disc, diamond with cross, dashed square with question mark. */
const SHAPES: Readonly<Record<Outcome, TemplateResult>> = {
  holds: svg`<circle cx="8" cy="8" r="7" fill="currentColor"/><path d="m4.6 8.2 2.3 2.3 4.5-4.8" fill="none" stroke="var(--sheet)" stroke-width="1.8"/>`,
  marginal: svg`<circle cx="8" cy="8" r="6.2" fill="none" stroke="currentColor" stroke-width="1.6"/><path d="M8 1.8a6.2 6.2 0 0 1 0 12.4z" fill="currentColor"/>`,
  fails: svg`<path d="M8 .6 15.4 8 8 15.4.6 8z" fill="currentColor"/><path d="m5.9 5.9 4.2 4.2m0-4.2-4.2 4.2" stroke="var(--sheet)" stroke-width="1.6"/>`,
  unknown: svg`<rect x="1.6" y="1.6" width="12.8" height="12.8" rx="1.5" fill="none" stroke="currentColor" stroke-width="1.4" stroke-dasharray="2.4 1.7"/><path d="M6 6.2a2 2 0 1 1 2.7 1.9c-.5.2-.7.6-.7 1.2M8 11.2v.9" fill="none" stroke="currentColor" stroke-width="1.4"/>`,
  note: svg`<circle cx="8" cy="8" r="2.2" fill="currentColor"/>`,
};

/** The shape of a verdict or outcome, in its colour; decoration beside the word, so hidden from screen readers. */
export function verdictShape(outcome: Outcome, size = 16): TemplateResult {
  const colour = outcome === 'note' ? 'soft' : outcome;
  return html`<svg class="mark" part="mark" data-outcome=${outcome} width=${size} height=${size} viewBox="0 0 16 16" aria-hidden="true" color="var(--${colour})">${SHAPES[outcome]}</svg>`;
}
