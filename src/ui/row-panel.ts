import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { AuditedLine } from '../core/model/audited.ts';
import type { Finding } from '../core/model/finding.ts';
import type { LengthUnit } from '../core/model/list.ts';
import { describeSheet } from '../core/say/describe.ts';
import './check-list.ts';
import './row-facts.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

const HEADLINES = { holds: 'Holds', marginal: 'Marginal', fails: 'Fails', unknown: 'Unknown' } as const;

/** One row: the decision in a sentence, what would hold, what was listed beside what was understood, then every check. */
export class RowPanel extends LitElement {
  static override properties = { line: { attribute: false }, units: { type: String } };
  declare line: AuditedLine | null;
  declare units: LengthUnit;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        height: 100%;
        overflow: auto;
        padding: 18px 20px 24px;
        background: var(--sheet);
      }
      header {
        display: flex;
        gap: 8px;
        justify-content: space-between;
      }
      header p {
        margin-top: 2px;
        color: var(--soft);
      }
      .close {
        width: 28px;
        height: 28px;
        border: 0;
        background: none;
        color: var(--soft);
        font-size: 18px;
      }
      .decision {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: 10px;
        margin-top: 14px;
        padding: 12px 14px;
        border-left: 3px solid currentColor;
        border-radius: 0 4px 4px 0;
        font-size: var(--reading);
        line-height: 1.4;
      }
      .decision svg {
        margin-top: 2px;
      }
      .decision span {
        color: var(--ink);
      }
      .decision.holds {
        background: var(--holds-wash);
      }
      .decision.marginal {
        background: var(--marginal-wash);
      }
      .decision.fails {
        background: var(--fails-wash);
      }
      .decision.unknown {
        background: var(--unknown-wash);
      }
      section {
        margin-top: 20px;
      }
      .remedy {
        display: block;
        margin-top: 8px;
        padding: 8px 10px;
        border: 1px solid var(--line);
        border-radius: 4px;
      }
      .remedy b {
        font-size: 14px;
      }
      .empty {
        margin-top: 40px;
        color: var(--soft);
        text-align: center;
      }
    `,
  ];

  constructor() {
    super();
    this.line = null;
    this.units = 'mm';
  }

  override render() {
    const { line } = this;
    if (!line) return html`<p class="empty">Choose a row to see what decides it.</p>`;
    return html`
      ${this.#header(line)} ${decision(line)} ${remedies(line)} <row-facts .line=${line} units=${this.units}></row-facts>
      <section>
        <h3>Checks</h3>
        <check-list .findings=${line.findings}></check-list>
      </section>
    `;
  }

  #header(line: AuditedLine): TemplateResult {
    const { fastener, quantity } = line;
    const what = [fastener?.kind, fastener?.thread, fastener?.material].filter(Boolean).join(', ');
    const sheet = describeSheet(line, this.units);
    const about = [what || 'no part on file', sheet && `into ${sheet}`, quantity && `${quantity} pieces`]
      .filter(Boolean)
      .join(', ');
    return html`<header>
      <div>
        <h2>Row ${line.row} · ${line.line.partNumber || 'no part number'}</h2>
        <p>${about.charAt(0).toUpperCase() + about.slice(1)}${line.line.panel ? ` · panel ${line.line.panel}` : ''}</p>
      </div>
      <button class="close" aria-label="Close this panel" title="Close" @click=${this.#close}>×</button>
    </header>`;
  }

  #close(): void {
    this.dispatchEvent(new CustomEvent('choose-row', { detail: null, bubbles: true, composed: true }));
  }
}

function decision({ verdict, decidedBy, findings }: AuditedLine): TemplateResult {
  const sentence = decidedBy?.text ?? holdsSentence(findings);
  return html`<div class="decision ${verdict}" role="status">
    ${verdictShape(verdict, 20)}
    <span><b class=${verdict}>${HEADLINES[verdict]}.</b> ${sentence}</span>
  </div>`;
}

function holdsSentence(findings: readonly Finding[]): string {
  const callOuts = findings.filter(({ says }) => says === 'call-out').map(({ text }) => text);
  return ['Every check on the facts that the list gives holds.', ...callOuts].join(' ');
}

function remedies({ remedies, verdict }: AuditedLine): TemplateResult | typeof nothing {
  if (verdict === 'holds' || remedies.length === 0) return nothing;
  return html`<section>
    <h3>What would hold</h3>
    ${remedies.map(
      ({ partNumber, change, stocked, priceDifference }) => html`<div class="remedy">
        <b>${partNumber}</b><br /><span class="soft">${change}${stocked === false ? ' · not stocked' : ''}${price(priceDifference)}</span>
      </div>`,
    )}
  </section>`;
}

function price(difference: number | null): string {
  if (difference === null || difference === 0) return '';
  return ` · ${difference > 0 ? '+' : '−'}${Math.abs(difference).toFixed(2)} each`;
}

customElements.define('row-panel', RowPanel);
