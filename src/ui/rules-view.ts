import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Table } from '../core/model/table.ts';
import { findCited, referenceTables } from '../core/reference/index.ts';
import { practices } from '../core/reference/practices.ts';
import { listRules, rules } from '../core/rules/index.ts';
import type { RuleCard } from '../core/rules/rule.ts';
import { showExample, showListExample } from './rule-examples.ts';
import { shared } from './styles.ts';

/** Every check with its reason and examples, and every table with its documents and how far each was confirmed. */
export class RulesView extends LitElement {
  static override properties = { openRule: { attribute: false } };
  declare openRule: string | null;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        height: 100%;
        overflow: auto;
      }
      section {
        margin-top: 28px;
      }
      details {
        padding: 8px 0;
        border-bottom: 1px solid var(--line);
      }
      summary {
        cursor: pointer;
        font-size: var(--reading);
      }
      summary span {
        display: block;
        margin-left: 17px;
      }
      .formula {
        padding: 8px 12px;
        border-left: 2px solid var(--blue);
        background: var(--blue-ground);
      }
      summary code {
        margin-left: 8px;
        color: var(--soft);
        font-size: var(--small);
      }
      details > div {
        padding: 8px 0 8px 16px;
      }
      details p + p,
      details table {
        margin-top: 8px;
      }
      tbody.list + tbody.list tr:first-child td {
        border-top: 2px solid var(--line);
      }
      .scroll {
        max-height: 340px;
        overflow: auto;
      }
      .outcome {
        display: inline-flex;
        gap: 6px;
        align-items: center;
        font-weight: 600;
      }
    `,
  ];

  constructor() {
    super();
    this.openRule = null;
  }

  override render() {
    return html`<div class="page">
      <h2>Rules and sources</h2>
      <p class="soft">
        What is checked, why, and what each number rests on. Printed: a printed text of the document was read. Memory: known to the trade, no text
        read. Derived: calculated here.
      </p>
      <section>
        <h3>Checks of single rows</h3>
        ${rules.map((rule) =>
          this.#rule(
            rule,
            rule.examples.map((example) => showExample(rule, example)),
          ),
        )}
      </section>
      <section>
        <h3>Checks of the whole list</h3>
        ${listRules.map((rule) =>
          this.#rule(
            rule,
            rule.examples.map((example) => showListExample(rule, example)),
          ),
        )}
      </section>
      ${referenceTables.map(({ subject, tables }) => html`<section><h3>${subject}</h3>${tables.map(showTable)}</section>`)}
      <section>
        <h3>Practices of the trade</h3>
        <table><tbody>${practices.map(({ title, note }) => html`<tr><td>${title}</td><td class="soft">${note}</td></tr>`)}</tbody></table>
      </section>
      <p class="soft">This app is made with open libraries and an open typeface: <a href="./licences.txt" target="_blank" rel="noopener">their licences</a>.</p>
    </div>`;
  }

  protected override updated(): void {
    if (this.openRule)
      this.renderRoot.querySelector(`[data-rule="${this.openRule}"]`)?.scrollIntoView({ block: 'start' });
  }

  /** `examples` are bodies of a table: one a row, or several rows that belong together. */
  #rule(rule: RuleCard, examples: readonly TemplateResult[]): TemplateResult {
    return html`<details data-rule=${rule.id} ?open=${rule.id === this.openRule}>
      <summary>${rule.title}<code>${rule.id}</code><span class="soft small">${rule.summary}</span></summary>
      <div>
        <p>${rule.reason}</p>
        ${rule.formula ? html`<p class="formula">${rule.formula}</p>` : ''}
        <table>
          <thead><tr><th scope="col">Example</th><th scope="col">Outcome</th><th scope="col">What it says</th></tr></thead>
          ${examples}
        </table>
        ${rule.needs.length > 0 ? html`<p class="soft">Rests on: ${rule.needs.map((id) => findCited(id)?.title ?? id).join('; ')}.</p>` : ''}
      </div>
    </details>`;
  }
}

function showTable(table: Table<unknown>): TemplateResult {
  return html`<details data-table=${table.id}>
    <summary>${table.title}<code>${table.rows.length} rows</code></summary>
    <div>
      <ul>
        ${table.sources.map(({ document, place, mark, note }) => html`<li>${document}, ${place} <b>(${mark})</b>${note ? html`<span class="soft"> ${note}</span>` : ''}</li>`)}
      </ul>
      <div class="scroll">${showRows(table.rows)}</div>
    </div>
  </details>`;
}

function showRows(rows: readonly unknown[]): TemplateResult {
  const records = rows.filter((row): row is Record<string, unknown> => typeof row === 'object' && row !== null);
  const keys = [...new Set(records.flatMap((row) => Object.keys(row)))];
  return html`<table class="small">
    <thead><tr>${keys.map((key) => html`<th scope="col">${key}</th>`)}</tr></thead>
    <tbody>${records.map((row) => html`<tr>${keys.map((key) => html`<td>${showCell(row[key])}</td>`)}</tr>`)}</tbody>
  </table>`;
}

function showCell(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (Array.isArray(value)) return value.map(showCell).join(', ');
  if (typeof value === 'object') return Object.values(value).map(showCell).join(' ');
  return String(value);
}

customElements.define('rules-view', RulesView);
