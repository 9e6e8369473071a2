import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Commands } from '../app/commands.ts';
import { describeConceded } from '../core/concede/describe.ts';
import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { Finding } from '../core/model/finding.ts';
import type { LengthUnit } from '../core/model/list.ts';
import { describeSheet } from '../core/say/describe.ts';
import './check-list.ts';
import type { ConcedeAct } from './conceded-check.ts';
import './remedy-list.ts';
import './row-facts.ts';
import { sidePanelStyles } from './side-panel-styles.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

const HEADLINES = { holds: 'Holds', marginal: 'Marginal', fails: 'Fails', unknown: 'Unknown' } as const;

/** One row: the decision in a sentence, what would hold, the row in pictures, what was listed beside what was understood, then every check. */
export class RowPanel extends LitElement {
  static override properties = {
    line: { attribute: false },
    list: { attribute: false },
    catalogues: { attribute: false },
    concessions: { attribute: false },
    units: { type: String },
  };
  declare line: AuditedLine | null;
  declare list: AuditedList | null;
  declare catalogues: readonly Catalogue[];
  declare concessions: readonly Concession[];
  commands!: Commands;
  declare units: LengthUnit;

  static override styles = [
    shared,
    sidePanelStyles,
    css`
      header p {
        margin-top: 2px;
        color: var(--soft);
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
      .conceded {
        margin-top: 6px;
        color: var(--soft);
        font-size: var(--base);
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
    this.list = null;
    this.catalogues = [];
    this.concessions = [];
    this.units = 'mm';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Drawing needs the rules and tables of metals: the list is there first.
    void import('./pictures/row-pictures.ts');
  }

  override render() {
    const { line } = this;
    if (!line) return html`<p class="empty">Choose a row to see what decides it.</p>`;
    return html`
      ${this.#header(line)} ${decision(line, this.concessions)}
      <remedy-list .line=${line} .list=${this.list} .commands=${this.commands}></remedy-list>
      <row-pictures .line=${line} .list=${this.list} .catalogues=${this.catalogues} units=${this.units}></row-pictures>
      <row-facts .line=${line} units=${this.units}></row-facts>
      <section>
        <h3>Checks</h3>
        <check-list .line=${line} .concessions=${this.concessions} @concede=${this.#concede}></check-list>
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
    return html`<div class="head">
      <div>
        <h2>Row ${line.row} · ${line.line.partNumber || 'no part number'}</h2>
        <p>${about.charAt(0).toUpperCase() + about.slice(1)}${line.line.panel ? ` · panel ${line.line.panel}` : ''}</p>
      </div>
      <button class="close" aria-label="Close this panel" title="Close" @click=${this.#close}>×</button>
    </div>`;
  }

  readonly #concede = ({ detail: { do: act, rule } }: CustomEvent<ConcedeAct>) => {
    const row = this.line?.row ?? 0;
    if (act === 'accept') this.commands.openDialog({ kind: 'concede', row, rule });
    else this.commands.withdraw(row, rule);
  };

  #close(): void {
    this.dispatchEvent(new CustomEvent('choose-row', { detail: null, bubbles: true, composed: true }));
  }
}

function decision(line: AuditedLine, concessions: readonly Concession[]): TemplateResult {
  const { verdict, decidedBy, findings } = line;
  const sentence = decidedBy?.text ?? holdsSentence(findings);
  const conceded = describeConceded(line, concessions);
  return html`<div class="decision ${verdict}" role="status">
    ${verdictShape(verdict, 20)}
    <span><b class=${verdict}>${HEADLINES[verdict]}.</b> ${sentence}${conceded ? html`<p class="conceded">${conceded.charAt(0).toUpperCase()}${conceded.slice(1)}</p>` : ''}</span>
  </div>`;
}

function holdsSentence(findings: readonly Finding[]): string {
  const callOuts = findings.filter(({ says }) => says === 'call-out').map(({ text }) => text);
  return ['Everything that could be checked from the list holds.', ...callOuts].join(' ');
}

customElements.define('row-panel', RowPanel);
