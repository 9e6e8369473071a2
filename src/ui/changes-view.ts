import { css, html, type TemplateResult } from 'lit';
import { toChangeRecords } from '../app/change-records.ts';
import type { ChangeDetail, ChangeRecord } from '../core/model/change-record.ts';
import { StoreElement } from './store-element.ts';
import { shared } from './styles.ts';

/** More cells of one step than this are shown on request. */
const MOST_OPEN = 12;

/** Every step of the user's work, the latest first: who, when, what, and each cell before and after. Undone steps are struck through. */
export class ChangesView extends StoreElement {
  static override styles = [
    shared,
    css`
      :host {
        display: block;
        height: 100%;
        overflow: auto;
      }
      .top {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 24px;
        justify-content: space-between;
        align-items: end;
        padding-bottom: 16px;
      }
      label {
        display: flex;
        gap: 8px;
        align-items: center;
      }
      details {
        padding: 8px 0;
        border-bottom: 1px solid var(--line);
      }
      summary {
        display: grid;
        grid-template-columns: 164px 130px 1fr;
        align-items: baseline;
        gap: 12px;
        cursor: pointer;
        font-size: var(--reading);
        list-style: none;
      }
      .undone summary span,
      .undone td {
        color: var(--soft);
        text-decoration: line-through;
      }
      .tag {
        display: inline-block;
        margin-left: 8px;
      }
      .undone .tag {
        text-decoration: none;
      }
      table {
        margin: 6px 0 4px 318px;
        width: calc(100% - 318px);
      }
      td {
        overflow-wrap: anywhere;
      }
      .number {
        width: 64px;
      }
      th:nth-child(n + 3) {
        width: 24%;
      }
      .empty {
        margin-top: 40px;
        color: var(--soft);
      }
      @media (max-width: 900px) {
        table {
          margin-left: 0;
          width: 100%;
        }
      }
    `,
  ];

  override render(): TemplateResult {
    const { history, changesBefore, list, userName } = this.store.state;
    const records = [...changesBefore, ...toChangeRecords(history, list?.columns ?? [])].reverse();
    return html`<div class="page">
      <div class="top">
        <div>
          <h2>Changes</h2>
          <p class="soft">What was changed in this list and in the settings, the latest first; “earlier” is what its workbook tells of the time before it was opened here. Goes into the exported workbook.</p>
        </div>
        <label class="soft">Signed by <input class="field" placeholder="your name" autocomplete="name" .value=${userName} @change=${this.#sign} /></label>
      </div>
      ${records.length === 0 ? html`<p class="empty">Nothing has been changed yet.</p>` : records.map((record) => this.#step(record))}
    </div>`;
  }

  #step({ when, by, what, undone, earlier, details }: ChangeRecord): TemplateResult {
    return html`<details class=${undone ? 'undone' : ''} ?open=${details.length <= MOST_OPEN}>
      <summary>
        <span class="small soft">${showTime(when)}</span><span class="small soft">${by || 'no name'}</span>
        <div><span>${what}</span>${undone ? html`<i class="tag small soft">undone</i>` : ''}${earlier ? html`<i class="tag small soft">earlier</i>` : ''}</div>
      </summary>
      <table>
        <thead><tr><th scope="col" class="number">Row</th><th scope="col">Where</th><th scope="col">Before</th><th scope="col">After</th></tr></thead>
        <tbody>${details.map(showDetail)}</tbody>
      </table>
    </details>`;
  }

  readonly #sign = ({ target }: Event) => this.commands.setName((target as HTMLInputElement).value);
}

function showDetail({ row, where, before, after }: ChangeDetail): TemplateResult {
  return html`<tr><td class="number">${row ?? ''}</td><td>${where}</td><td>${before || '–'}</td><td>${after || '–'}</td></tr>`;
}

/** In the user's own time zone and way of writing. */
function showTime(when: string): string {
  const time = new Date(when);
  return Number.isNaN(time.getTime())
    ? ''
    : time.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}

customElements.define('changes-view', ChangesView);
