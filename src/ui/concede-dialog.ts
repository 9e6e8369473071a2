import { css, html, LitElement, type TemplateResult } from 'lit';
import type { Commands } from '../app/commands.ts';
import type { Store } from '../app/store.ts';
import { dialogStyles } from './dialog-styles.ts';
import { shared } from './styles.ts';
import { verdictShape } from './verdict-mark.ts';

/** Accepts one check of a row as it is: asks for the reason and the name, and says what that does and does not change. */
export class ConcedeDialog extends LitElement {
  static override properties = { row: { type: Number }, rule: { type: String } };
  declare row: number;
  declare rule: string;
  store!: Store;
  commands!: Commands;

  static override styles = [
    shared,
    dialogStyles,
    css`
      dialog {
        width: min(560px, calc(100vw - 48px));
      }
      .finding {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: 8px;
        padding-bottom: 14px;
      }
      .finding span {
        color: var(--ink);
      }
      .fields {
        align-items: start;
      }
      .field {
        width: 100%;
      }
      textarea {
        min-height: 76px;
        font: inherit;
        color: inherit;
        resize: vertical;
      }
    `,
  ];

  constructor() {
    super();
    this.row = 0;
    this.rule = '';
  }

  override render(): TemplateResult {
    const { list, userName } = this.store.state;
    const line = list?.lines.find(({ row }) => row === this.row);
    const finding = line?.findings.find(({ rule }) => rule === this.rule);
    const outcome = finding?.outcome ?? 'unknown';
    return html`<dialog aria-labelledby="title" @close=${() => this.commands.closeDialog()}>
      <form @submit=${this.#submit}>
        <div class="head">
          <h2 id="title">Accept row ${this.row}, ${line?.line.partNumber ?? ''}</h2>
          <p>The row keeps its verdict; “conceded” is shown beside it. When what this rests on changes, the concession lapses.</p>
        </div>
        <div class="body">
          <div class="finding ${outcome}">${verdictShape(outcome, 15)} <span>${finding?.text ?? ''}</span></div>
          <div class="fields">
            <label for="reason">Reason</label>
            <textarea id="reason" class="field" required placeholder="Fixture supports the edge, tested on 10 pieces" autofocus></textarea>
            <label for="name">Accepted by</label>
            <input id="name" class="field" required autocomplete="name" .value=${userName} />
          </div>
        </div>
        <footer>
          <button class="button" type="button" @click=${this.#close}>Cancel</button>
          <button class="button main">Accept</button>
        </footer>
      </form>
    </dialog>`;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('dialog')?.showModal();
  }

  readonly #close = () => this.renderRoot.querySelector('dialog')?.close();

  readonly #submit = async (event: Event) => {
    event.preventDefault();
    const reason = this.renderRoot.querySelector('textarea')?.value.trim() ?? '';
    const by = this.renderRoot.querySelector<HTMLInputElement>('#name')?.value.trim() ?? '';
    if (!reason || !by) return;
    const { row, rule } = this;
    this.#close();
    await this.commands.concede(row, rule, { reason, by });
  };
}

customElements.define('concede-dialog', ConcedeDialog);
