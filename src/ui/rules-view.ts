import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Outcome } from '../core/model/outcome.ts';
import type { Table } from '../core/model/table.ts';
import { findCited, referenceTables } from '../core/reference/index.ts';
import { practices } from '../core/reference/practices.ts';
import { listRules, rules } from '../core/rules/index.ts';
import type { Example, ListExample, RuleCard } from '../core/rules/rule.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

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

function showExample(rule: RuleCard, { cells, unit, part, shop, outcome, says }: Example): TemplateResult {
  const given = [
    ...showCells(cells),
    ...(unit ? [unit === 'in' ? 'bare numbers in inches' : 'nothing settles the unit'] : []),
    ...(part === null ? ['a part that is not on file'] : showFields(part)),
    ...showFields(shop),
  ];
  return html`<tbody>
    <tr>
      <td>${given.join(', ') || 'the example part'}</td>
      ${showOutcome(rule, outcome, says)}
    </tr>
  </tbody>`;
}

/** Rows of one list, each with what is said of it. */
function showListExample(rule: RuleCard, { rows, parts = {}, expect }: ListExample): TemplateResult {
  return html`<tbody class="list">
    ${rows.map((cells, index) => {
      const given = [...showCells(cells), ...showFields(parts[cells.partNumber ?? ''])];
      const [outcome, says] = expect[index] ?? [];
      return html`<tr>
        <td>Row ${index + 2}: ${given.join(', ') || 'the example row'}</td>
        ${outcome && says ? showOutcome(rule, outcome, says) : html`<td class="soft" colspan="2">nothing</td>`}
      </tr>`;
    })}
  </tbody>`;
}

function showOutcome({ texts }: RuleCard, outcome: Outcome, says: string): TemplateResult {
  return html`<td><span class="outcome ${outcome}">${verdictShape(outcome, 13)} ${outcome}</span></td>
    <td class="soft">${texts[says]?.brief ?? says}</td>`;
}

function showCells(cells: Example['cells']): readonly string[] {
  return Object.entries(cells).map(([role, text]) => (text === '' ? `${role} blank` : `${role} “${text}”`));
}

function showFields(fields: object | undefined): readonly string[] {
  return Object.entries(fields ?? {}).map(
    ([key, value]) =>
      `${key} ${value !== null && typeof value === 'object' ? JSON.stringify(value) : (value ?? 'not given')}`,
  );
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
