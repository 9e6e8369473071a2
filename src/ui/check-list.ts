import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { AuditedLine } from '../core/model/audited.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Finding } from '../core/model/finding.ts';
import type { Outcome } from '../core/model/outcome.ts';
import { findCited } from '../core/reference/index.ts';
import { listRules, rules } from '../core/rules/index.ts';
import { type ConcedeAct, concededCheck, concededMark } from './conceded-check.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

const TITLES = new Map([...rules, ...listRules].map(({ id, title }) => [id, title]));

const ORDER: readonly Outcome[] = ['fails', 'unknown', 'marginal', 'note', 'holds'];

/** Every check of a row, the worst first: outcome, sentence, and what it rests on, one click away. */
export class CheckList extends LitElement {
  static override properties = { line: { attribute: false }, concessions: { attribute: false } };
  declare line: AuditedLine | null;
  declare concessions: readonly Concession[];

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
      .conceded {
        padding: 6px 10px;
        border-left: 2px solid var(--line);
        background: var(--paper);
      }
      ul {
        margin: 6px 0 0;
        padding-left: 16px;
      }
    `,
  ];

  constructor() {
    super();
    this.line = null;
    this.concessions = [];
  }

  override render() {
    const { line } = this;
    if (!line) return nothing;
    const worstFirst = [...line.findings].sort((a, b) => ORDER.indexOf(a.outcome) - ORDER.indexOf(b.outcome));
    return worstFirst.map((finding) => this.#check(line, finding));
  }

  #check(line: AuditedLine, finding: Finding): TemplateResult {
    const { rule, outcome, brief, text, cites } = finding;
    return html`<details>
      <summary>
        <span class="outcome ${outcome}">${verdictShape(outcome, 13)} ${outcome}</span>
        <span>${TITLES.get(rule) ?? rule}</span>
        <span class="soft">${brief}${concededMark(line, rule, this.concessions)}</span>
      </summary>
      <div class="more">
        <p>${text}</p>
        ${cites.length > 0 ? html`<ul class="small soft">${cites.map(citation)}</ul>` : ''}
        ${concededCheck(line, finding, this.concessions, this.#concede)}
        <p><button class="link small" @click=${() => this.#openRule(rule)}>About this check</button></p>
      </div>
    </details>`;
  }

  readonly #concede = (detail: ConcedeAct) =>
    this.dispatchEvent(new CustomEvent('concede', { detail, bubbles: true, composed: true }));

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
