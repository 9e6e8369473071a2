import { css, html, LitElement } from 'lit';
import type { AppState } from '../app/state.ts';
import type { AuditedList } from '../core/model/audited.ts';
import './reading-choice.ts';
import { shared } from './styles.ts';
import './table-choice.ts';

/** What was read and how, in one line; notices of the reader below it. */
export class ReadLine extends LitElement {
  static override properties = {
    list: { attribute: false },
    columnsBy: { attribute: false },
    losesEdits: { type: Boolean },
  };
  declare list: AuditedList | null;
  declare columnsBy: AppState['columnsBy'];
  declare losesEdits: boolean;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
      }
      p {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 14px;
        align-items: baseline;
      }
      b {
        font-size: var(--reading);
      }
      .demo {
        padding: 1px 8px;
        border: 1px solid var(--marginal);
        border-radius: 4px;
        color: var(--marginal);
      }
      details {
        margin-top: 4px;
        color: var(--soft);
      }
      ul {
        margin: 4px 0 0;
        padding-left: 18px;
      }
    `,
  ];

  constructor() {
    super();
    this.list = null;
    this.columnsBy = null;
    this.losesEdits = false;
  }

  override render() {
    const { list } = this;
    if (!list) return html``;
    const own = list.catalogues.flatMap(({ name, demo }) => (demo ? [] : `“${name}”`)).join(', ');
    return html`
      <p>
        <b>${list.file}</b>
        <span class="soft">${whatWasRead(list)}</span>
        <table-choice .list=${list} ?losesEdits=${this.losesEdits}></table-choice>
        ${this.columnsBy ? html`<span>${COLUMNS_BY[this.columnsBy]}: <button class="link" @click=${this.#forget}>Forget</button></span>` : ''}
        ${list.reading ? html`<reading-choice .reading=${list.reading}></reading-choice>` : ''}
        ${own === '' ? '' : html`<span class="soft">Judged by ${own}.</span>`}
        ${list.catalogues.some(({ demo }) => demo) ? html`<span class="demo small">demo catalogue, invented: not for production</span>` : ''}
      </p>
      ${
        list.notices.length > 0
          ? html`<details>
              <summary>${list.notices.length === 1 ? 'One remark' : `${list.notices.length} remarks`} on reading the file</summary>
              <ul>
                ${list.notices.map(({ text }) => html`<li>${text}</li>`)}
              </ul>
            </details>`
          : ''
      }
    `;
  }

  readonly #forget = () => this.dispatchEvent(new CustomEvent('forget-columns', { bubbles: true, composed: true }));
}

const COLUMNS_BY = { memory: 'Columns as you set them last time', user: 'Columns as you set them' } as const;

function whatWasRead({ lines, others, sheet, headerRow, hiddenRows }: AuditedList): string {
  const rows = lines.length + others.length;
  const from = sheet ? ` from sheet “${sheet}”` : '';
  const left =
    others.length > 0 ? `, ${others.length} ${others.length === 1 ? 'is' : 'are'} not press-in fasteners` : '';
  const hidden = hiddenRows > 0 ? `, ${hiddenRows} hidden rows judged like the rest` : '';
  return `${rows} rows read${from}, headings in row ${headerRow}${left}${hidden}.`;
}

customElements.define('read-line', ReadLine);
