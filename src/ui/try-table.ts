import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { Trial, TriedRow } from '../worker/protocol.ts';
import { shared } from './styles.ts';
import { triedCounts, triedStyles, triedVerdict } from './tried-verdicts.ts';

/** More rows than anybody reads would make the dialog slow. */
const MOST_ROWS = 400;

/** The user wants these rows, and no others, to be edited. */
export type TickRowsEvent = CustomEvent<ReadonlySet<number>>;

/**
 * What an edit would do: counts before and after, and each row with its verdict before and after. Rows are chosen by ticks; a choice goes
 * out as `tick-rows`, and comes back with the trial made for it.
 */
export class TryTable extends LitElement {
  static override properties = { all: { attribute: false }, now: { attribute: false }, ticked: { attribute: false } };
  /** The trial with every row edited. */
  declare all: Trial | null;
  /** The trial with the ticked rows edited. */
  declare now: Trial | null;
  declare ticked: ReadonlySet<number>;

  static override styles = [
    shared,
    triedStyles,
    css`
      :host {
        display: block;
      }
      .choose {
        display: flex;
        gap: 14px;
        padding-bottom: 6px;
      }
      th {
        position: sticky;
        top: 0;
        background: var(--sheet);
      }
      .number {
        text-align: right;
      }
      p {
        padding: 8px 0;
      }
    `,
  ];

  constructor() {
    super();
    this.all = null;
    this.now = null;
    this.ticked = new Set();
  }

  override render() {
    const { all, now } = this;
    if (!all) return html`<p class="soft" role="status">Judging…</p>`;
    const after = new Map((now ?? all).rows.map((row) => [row.row, row]));
    const edited = all.rows.filter((row) => row.edited);
    const ticks = new Set(edited.map(({ row }) => row));
    const rows = [...edited, ...(now ?? all).rows.filter(({ row }) => !ticks.has(row))];
    return html`${triedCounts(all.before, (now ?? all).after)} ${this.#choices(all)}
      <table>
        <thead>
          <tr><td></td><th scope="col" class="number">Row</th><th scope="col">Part</th><th scope="col">Now</th><th scope="col">Afterwards</th><th scope="col">What decides it</th></tr>
        </thead>
        <tbody>${rows.slice(0, MOST_ROWS).map((row) => this.#row(row, after.get(row.row)))}</tbody>
      </table>
      ${rows.length > MOST_ROWS ? html`<p class="soft">And ${rows.length - MOST_ROWS} more rows.</p>` : nothing}`;
  }

  #choices({ rows }: Trial): TemplateResult {
    const edited = rows.filter((row) => row.edited);
    const failing = edited.filter(({ before }) => before !== 'holds');
    return html`<div class="choose small">
      <button class="link" @click=${() => this.#tick(edited)}>All (${edited.length})</button>
      <button class="link" @click=${() => this.#tick(failing)}>Only those that do not hold now (${failing.length})</button>
      <button class="link" @click=${() => this.#tick([])}>None</button>
    </div>`;
  }

  #row({ row, partNumber, edited, before, decision }: TriedRow, after: TriedRow | undefined): TemplateResult {
    const isTicked = this.ticked.has(row);
    return html`<tr>
      <td>${edited ? html`<input type="checkbox" aria-label="Row ${row}" .checked=${isTicked} @change=${() => this.#toggle(row)} />` : ''}</td>
      <td class="number">${row}</td>
      <td>${after?.partNumber ?? partNumber}</td>
      <td>${triedVerdict(before)}</td>
      <td>${edited && !isTicked ? html`<span class="soft">stays</span>` : triedVerdict(after ? after.after : before)}</td>
      <td class="soft">${edited && !isTicked ? '' : (after?.decision ?? decision)}</td>
    </tr>`;
  }

  #toggle(row: number): void {
    const ticked = new Set(this.ticked);
    if (!ticked.delete(row)) ticked.add(row);
    this.#send(ticked);
  }

  #tick(rows: readonly TriedRow[]): void {
    this.#send(new Set(rows.map(({ row }) => row)));
  }

  #send(detail: ReadonlySet<number>): void {
    this.dispatchEvent(new CustomEvent('tick-rows', { detail, bubbles: true, composed: true }));
  }
}

customElements.define('try-table', TryTable);
