import { html, type TemplateResult } from 'lit';
import type { PressPanel } from '../../core/rollup/press.ts';
import { PRACTICE_MARK } from '../../core/rollup/press-practice.ts';
import type { PressStep } from '../../core/rollup/press-step.ts';
import { headingOf } from '../../core/rollup/questions.ts';

/** The first-piece checks of a panel as a list to tick on paper, one line a step. */
export function firstPieceTable({ panel, steps, firstPiece }: PressPanel): TemplateResult | '' {
  if (steps.length === 0) return '';
  return html`<div class="first-piece">
    <h3>${headingOf(panel)}: first piece, before the lot (${PRACTICE_MARK})</h3>
    <div class="wide"><table>
      <thead><tr>
        <th scope="col">Order</th><th scope="col">Fastener</th><th scope="col">Seated</th><th scope="col">Square</th><th scope="col">Sheet flat, no crack</th>
        <th scope="col">Go thread</th><th scope="col">Push-out sample, no failure</th><th scope="col">Checked by, date</th>
      </tr></thead>
      <tbody>${steps.map(stepRow)}</tbody>
    </table></div>
    <ul class="small notes">${firstPiece.map((check) => html`<li>${check}</li>`)}</ul>
  </div>`;
}

function stepRow(step: PressStep): TemplateResult {
  const { order, partNumber, thread } = step;
  return html`<tr>
    <td>${order}</td><td class="part">${partNumber}</td><td>${box}</td><td>${box}</td><td>${box}</td>
    <td>${thread === null ? 'no thread' : html`${box} ${thread}`}</td><td>${box} ${sampleWords(step)}</td><td class="sign"></td>
  </tr>`;
}

function sampleWords({ pushOutSample, lot, ratedPushOutN }: PressStep): string {
  const pieces =
    pushOutSample === null ? 'sample not known' : `${pushOutSample} ${pushOutSample === 1 ? 'piece' : 'pieces'}`;
  const of = lot === null ? ', lot not known' : ` of a lot of ${lot}`;
  return `${pieces}${of}${ratedPushOutN === null ? ', rating not in the catalogue' : `, each at least ${ratedPushOutN} N`}`;
}

/** An empty box, drawn so that it prints without backgrounds. */
const box = html`<svg class="box" width="14" height="14" viewBox="0 0 14 14" role="img" aria-label="to tick"><rect x="1" y="1" width="12" height="12" fill="none" stroke="currentColor"/></svg>`;
