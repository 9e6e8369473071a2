import { css, html, type TemplateResult } from 'lit';
import type { Totals } from '../core/model/audited.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { verdictShape } from './verdict-mark.ts';

const ORDER: readonly Verdict[] = ['holds', 'marginal', 'fails', 'unknown'];

/** Counts before and after an edit that is only tried, and single verdicts. */
export const triedStyles = css`
  .counts {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 20px;
    padding: 8px 0 12px;
    font-size: var(--reading);
  }
  .counts span {
    display: inline-flex;
    gap: 6px;
    align-items: center;
  }
  .verdict {
    display: inline-flex;
    gap: 6px;
    align-items: center;
    font-weight: 600;
    white-space: nowrap;
  }
`;

/** How many rows have each verdict, and how many would. */
export function triedCounts(before: Totals, after: Totals): TemplateResult {
  return html`<div class="counts" role="status">
    ${ORDER.map((one) => html`<span class=${one} data-verdict=${one}>${verdictShape(one, 15)} ${one} ${before[one]}${before[one] === after[one] ? '' : html` → <b>${after[one]}</b>`}</span>`)}
  </div>`;
}

/** A verdict with its shape; null stands for a row that is no fastener. */
export function triedVerdict(one: Verdict | null): TemplateResult {
  return one
    ? html`<span class="verdict ${one}">${verdictShape(one, 13)} ${one}</span>`
    : html`<span class="soft">no fastener</span>`;
}
