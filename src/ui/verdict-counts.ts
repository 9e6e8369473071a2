import { css, html, LitElement } from 'lit';
import type { Totals } from '../core/model/audited.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

/** What one row and what several of each verdict are called. */
export const VERDICT_WORDS: readonly (readonly [Verdict, string, string])[] = [
  ['holds', 'holds', 'hold'],
  ['marginal', 'marginal', 'marginal'],
  ['fails', 'fails', 'fail'],
  ['unknown', 'unknown', 'unknown'],
];

/** How the list stands: four counts, each of which filters the list when pressed. */
export class VerdictCounts extends LitElement {
  static override properties = { totals: { attribute: false }, filter: { attribute: false } };
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  declare totals: Totals;
  declare filter: ReadonlySet<Verdict>;

  static override styles = [
    shared,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
      }
      button {
        display: inline-flex;
        align-items: center;
        gap: 9px;
        min-height: 38px;
        padding: 2px 14px 2px 11px;
        border: 1px solid var(--line);
        border-radius: 5px;
        background: var(--sheet);
        color: var(--ink);
      }
      button:hover {
        border-color: var(--soft);
      }
      button[aria-pressed='true'] {
        border-color: currentColor;
        box-shadow: inset 0 0 0 1px currentColor;
      }
      b {
        font-size: 19px;
        font-weight: 600;
      }
      button[aria-pressed='true'].holds {
        color: var(--holds);
        background: var(--holds-wash);
      }
      button[aria-pressed='true'].marginal {
        color: var(--marginal);
        background: var(--marginal-wash);
      }
      button[aria-pressed='true'].fails {
        color: var(--fails);
        background: var(--fails-wash);
      }
      button[aria-pressed='true'].unknown {
        color: var(--unknown);
        background: var(--unknown-wash);
      }
    `,
  ];

  constructor() {
    super();
    this.totals = { holds: 0, marginal: 0, fails: 0, unknown: 0 };
    this.filter = new Set();
  }

  override render() {
    return VERDICT_WORDS.map(([verdict, one, many]) => {
      const count = this.totals[verdict];
      const pressed = this.filter.has(verdict);
      return html`<button class=${pressed ? verdict : ''} data-verdict=${verdict} aria-pressed=${pressed}
        title=${pressed ? 'Show all rows again' : 'Show only these rows'} @click=${() => this.#toggle(verdict)}>
        ${verdictShape(verdict, 18)} <span><b>${count}</b> ${count === 1 ? one : many}</span>
      </button>`;
    });
  }

  #toggle(verdict: Verdict): void {
    this.dispatchEvent(new CustomEvent('toggle-verdict', { detail: verdict, bubbles: true, composed: true }));
  }
}

customElements.define('verdict-counts', VerdictCounts);
