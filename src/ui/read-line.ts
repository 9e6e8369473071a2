import { css, html, LitElement } from 'lit';
import type { AuditedList } from '../core/model/audited.ts';
import { shared } from './styles.ts';

/** What was read and how, in one line; notices of the reader below it. */
export class ReadLine extends LitElement {
  static override properties = { list: { attribute: false } };
  declare list: AuditedList | null;

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
  }

  override render() {
    const { list } = this;
    if (!list) return html``;
    return html`
      <p>
        <b>${list.file}</b>
        <span class="soft">${whatWasRead(list)}</span>
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
}

function whatWasRead({ lines, others, sheet, headerRow, hiddenRows }: AuditedList): string {
  const rows = lines.length + others.length;
  const from = sheet ? ` from sheet “${sheet}”` : '';
  const left =
    others.length > 0 ? `, ${others.length} ${others.length === 1 ? 'is' : 'are'} not press-in fasteners` : '';
  const hidden = hiddenRows > 0 ? `, ${hiddenRows} hidden rows judged like the rest` : '';
  return `${rows} rows read${from}, headings in row ${headerRow}${left}${hidden}.`;
}

customElements.define('read-line', ReadLine);
