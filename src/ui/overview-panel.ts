import { css, html, LitElement, type TemplateResult } from 'lit';
import type { AuditedLine } from '../core/model/audited.ts';
import { VERDICTS } from '../core/model/outcome.ts';
import { type MetalPair, type Overview, overviewOf, type Share } from '../core/rollup/overview.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

/** Rows to be shown alone, and in words what they have in common; null: all rows again. */
export type FocusRowsEvent = CustomEvent<{ readonly name: string; readonly rows: readonly number[] } | null>;

/** How the whole list stands: by panel, by check, by fastener and sheet metal. Each count shows its rows alone. Sends `focus-rows`. */
export class OverviewPanel extends LitElement {
  static override properties = { lines: { attribute: false }, focused: {} };
  declare lines: readonly AuditedLine[];
  /** Name of what is shown alone. */
  declare focused: string;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        overflow: auto;
        height: 100%;
        padding: 16px 20px;
        background: var(--sheet);
      }
      .head {
        display: flex;
        justify-content: space-between;
        align-items: start;
      }
      .close {
        border: 0;
        background: none;
        font-size: 18px;
      }
      section {
        margin-top: 18px;
      }
      td,
      th {
        padding: 4px 8px 4px 0;
      }
      .count {
        white-space: nowrap;
      }
      .count > span {
        display: inline-flex;
        gap: 3px;
        align-items: center;
        min-width: 34px;
      }
      .wide {
        overflow-x: auto;
      }
      td button {
        text-align: left;
      }
      button[aria-pressed='true'] {
        font-weight: 600;
        text-decoration: none;
      }
    `,
  ];

  constructor() {
    super();
    this.lines = [];
    this.focused = '';
  }

  override render(): TemplateResult {
    const overview = overviewOf(this.lines);
    return html`<div class="head">
        <h2>How the list stands</h2>
        <button class="close" aria-label="Close this panel" @click=${this.#close}>×</button>
      </div>
      <p class="soft">Choose a line to see its rows alone.</p>
      ${this.#table('By panel', 'Panel', overview.panels, (name) => name || 'no panel named')}
      ${
        overview.checks.length > 0
          ? this.#table('By check that does not hold', 'Check', overview.checks, (name) => name)
          : html`<section><h3>By check that does not hold</h3><p>Every check holds on every row.</p></section>`
      }
      ${this.#matrix(overview)}`;
  }

  #table(title: string, heading: string, shares: readonly Share[], show: (name: string) => string): TemplateResult {
    return html`<section><h3>${title}</h3>
      <table><thead><tr><th scope="col">${heading}</th><th scope="col">Rows</th></tr></thead>
        <tbody>${shares.map(
          (one) =>
            html`<tr><td>${this.#button(`${heading.toLowerCase()} ${show(one.name)}`, show(one.name), one)}</td><td class="count">${counts(one)}</td></tr>`,
        )}</tbody></table></section>`;
  }

  #matrix({ fasteners, sheets, pairs }: Overview): TemplateResult {
    const find = (fastener: string, sheet: string) =>
      pairs.find((pair) => pair.fastener === fastener && pair.sheet === sheet);
    return html`<section><h3>Fastener metal by sheet metal</h3>
      <div class="wide" tabindex="0" role="region" aria-label="Fastener metal by sheet metal">
      <table><thead><tr><th scope="col">Sheet</th>${fasteners.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
        <tbody>${sheets.map(
          (sheet) =>
            html`<tr><th scope="row">${sheet}</th>${fasteners.map((fastener) => html`<td class="count">${this.#pair(find(fastener, sheet))}</td>`)}</tr>`,
        )}</tbody></table></div></section>`;
  }

  #pair(pair: MetalPair | undefined): TemplateResult {
    if (!pair) return html`<span class="soft">–</span>`;
    const name = `${pair.fastener} in ${pair.sheet}`;
    const count = `${pair.rows.length} ${pair.rows.length === 1 ? 'row' : 'rows'}`;
    return html`${this.#button(name, count, pair, `${name}: ${count}`)}<br />${counts(pair)}`;
  }

  #button(name: string, text: string, { rows }: Share, label = text): TemplateResult {
    const pressed = this.focused === name;
    const detail = pressed ? null : { name, rows };
    return html`<button class="link" aria-pressed=${pressed} aria-label=${label} @click=${() => this.#send('focus-rows', detail)}>${text}</button>`;
  }

  readonly #close = () => this.#send('close-overview', null);

  #send(name: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }
}

/** The counts of each verdict that occurs, with its shape and its word for readers. */
function counts({ totals }: Share): TemplateResult[] {
  return VERDICTS.filter((verdict) => totals[verdict] > 0).map(
    (verdict) =>
      html`<span class=${verdict} role="img" aria-label="${totals[verdict]} ${verdict}" title=${verdict}>${verdictShape(verdict, 12)} ${totals[verdict]}</span>`,
  );
}

customElements.define('overview-panel', OverviewPanel);
