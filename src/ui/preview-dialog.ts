import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Commands } from '../app/commands.ts';
import { countRows, swapCells } from '../app/many-cells.ts';
import type { Store } from '../app/store.ts';
import { dialogStyles } from './dialog-styles.ts';
import { shared } from './styles.ts';
import './try-table.ts';
import { TryController } from './try-controller.ts';
import type { TickRowsEvent } from './try-table.ts';

/** A swap before it is made: the rows it touches with their verdicts before and after; on all of them, on the ticked ones, or not at all. */
export class PreviewDialog extends LitElement {
  static override properties = { partNumber: { type: String }, rows: { attribute: false } };
  declare partNumber: string;
  declare rows: readonly number[];
  store!: Store;
  commands!: Commands;
  readonly #trial = new TryController(this, (cells) => this.commands.tryEdit(cells));

  static override styles = [
    shared,
    dialogStyles,
    css`
      h2 {
        overflow-wrap: anywhere;
      }
    `,
  ];

  constructor() {
    super();
    this.partNumber = '';
    this.rows = [];
  }

  override render(): TemplateResult {
    const { all, now, ticked } = this.#trial;
    const wanted = this.rows.filter((row) => ticked.has(row));
    return html`<dialog aria-labelledby="title" @close=${() => this.commands.closeDialog()}>
      <div class="head">
        <h2 id="title">Use ${this.partNumber} on ${countRows(this.rows.length)}</h2>
        <p>It passes every check on these rows. Only the description may still name the old part: it stays as the sender wrote it.</p>
      </div>
      <div class="body"><try-table .all=${all} .now=${now} .ticked=${ticked} @tick-rows=${this.#tick}></try-table></div>
      <footer>
        <button class="button" @click=${this.#close}>Cancel</button>
        <button class="button main" ?disabled=${wanted.length === 0} @click=${() => this.#apply(wanted)}>
          Swap on ${countRows(wanted.length)}
        </button>
      </footer>
    </dialog>`;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('dialog')?.showModal();
    this.renderRoot.querySelector<HTMLElement>('.main')?.focus();
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('rows') && !changed.has('partNumber')) return;
    this.#trial.begin(swapCells(this.store.state, this.partNumber, this.rows).cells);
  }

  readonly #tick = ({ detail }: TickRowsEvent) => this.#trial.tick(detail);

  readonly #close = () => this.renderRoot.querySelector('dialog')?.close();

  async #apply(rows: readonly number[]): Promise<void> {
    this.#close();
    await this.commands.swap(this.partNumber, rows);
  }
}

customElements.define('preview-dialog', PreviewDialog);
