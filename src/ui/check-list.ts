import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Finding } from '../core/model/finding.ts';
import type { Outcome } from '../core/model/outcome.ts';
import { findCited } from '../core/reference/index.ts';
import { listRules, rules } from '../core/rules/index.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

const TITLES = new Map([...rules, ...listRules].map(({ id, title }) => [id, title]));

const ORDER: readonly Outcome[] = ['fails', 'unknown', 'marginal', 'note', 'holds'];

/** Every check of a row, the worst first: outcome, sentence, and what it rests on, one click away. */
export class CheckList extends LitElement {
  static override properties = { findings: { attribute: false } };
  declare findings: readonly Finding[];

  static override styles = [
    shared,
    css`
      :host {
        display: block;
      }
      details {
        border-bottom: 1px solid var(--line);
      }
      summary {
        display: grid;
        grid-template-columns: 92px 116px 1fr;
        gap: 8px;
        align-items: baseline;
        padding: 7px 0;
        cursor: pointer;
        list-style: none;
      }
      summary:hover {
        background: var(--paper);
      }
      .outcome {
        display: inline-flex;
        align-items: center;
        gap: 6px;
        font-weight: 600;
      }
      .more {
        padding: 0 0 10px 100px;
      }
      .more p + p {
        margin-top: 6px;
      }
      ul {
        margin: 6px 0 0;
        padding-left: 16px;
      }
    `,
  ];

  constructor() {
    super();
    this.findings = [];
  }

  override render() {
    const worstFirst = [...this.findings].sort((a, b) => ORDER.indexOf(a.outcome) - ORDER.indexOf(b.outcome));
    return worstFirst.map(
      (finding) => html`<details>
        <summary>
          <span class="outcome ${finding.outcome}">${verdictShape(finding.outcome, 13)} ${finding.outcome}</span>
          <span>${TITLES.get(finding.rule) ?? finding.rule}</span>
          <span class="soft">${finding.brief}</span>
        </summary>
        <div class="more">
          <p>${finding.text}</p>
          ${finding.cites.length > 0 ? html`<ul class="small soft">${finding.cites.map(citation)}</ul>` : ''}
          <p><button class="link small" @click=${() => this.#openRule(finding.rule)}>About this check</button></p>
        </div>
      </details>`,
    );
  }

  #openRule(rule: string): void {
    this.dispatchEvent(new CustomEvent('open-rule', { detail: rule, bubbles: true, composed: true }));
  }
}

function citation(id: string): TemplateResult {
  const cited = findCited(id);
  const source = cited?.sources[0];
  return html`<li>${cited?.title ?? id}${source ? html`: ${source.document}, ${source.place} (${source.mark})` : ''}</li>`;
}

customElements.define('check-list', CheckList);
