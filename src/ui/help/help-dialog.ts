import { css, html, LitElement, type TemplateResult } from 'lit';
import { listRules, rules } from '../../core/rules/index.ts';
import { NOT_CHECKED } from '../../core/say/not-checked.ts';
import { SAFETY_WORDS } from '../../core/say/safety.ts';
import { dialogStyles } from '../dialog-styles.ts';
import { shared } from '../styles.ts';
import { verdictShape } from '../verdict-mark.ts';
import { KEY_MAP } from './key-map.ts';

const VERDICTS = [
  [
    'holds',
    'Everything that could be checked from the list holds. Call out what the list does not say, such as hole and edge.',
  ],
  [
    'marginal',
    'It depends on scatter that the list does not settle. The row says what settles it: a mill certificate, a measured thickness, a tighter call-out.',
  ],
  ['fails', 'A limit is passed. The row says by how much, and which parts or sheets would hold.'],
  ['unknown', 'A fact that a check needs is missing or cannot be read. The row says which one.'],
] as const;

/** What the verdicts mean, what is checked and what is not, the keys, and the safety words. Sends `close-help`. */
export class HelpDialog extends LitElement {
  static override styles = [
    shared,
    dialogStyles,
    css`
      dialog {
        width: min(860px, calc(100vw - 48px));
      }
      nav {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        margin-top: 6px;
      }
      .body:focus-visible {
        outline-offset: -2px;
      }
      section {
        padding: 4px 0 20px;
      }
      h3 {
        margin-bottom: 6px;
        color: var(--ink);
        font-size: var(--reading);
      }
      h4 {
        margin: 12px 0 2px;
        color: var(--soft);
        font-size: var(--small);
        font-weight: 600;
      }
      section p {
        margin: 6px 0;
      }
      th {
        width: 240px;
        color: var(--ink);
      }
      .verdicts th {
        width: 120px;
      }
      .verdicts th span {
        display: inline-flex;
        gap: 6px;
        align-items: center;
      }
      .keys th {
        font-weight: 400;
      }
    `,
  ];

  override render(): TemplateResult {
    const parts = [
      ['Verdicts', this.#verdicts()],
      ['What is checked', this.#checked()],
      ['What is not checked', notChecked()],
      ['Keys', keys()],
      ['Safety', safety()],
      ['Where your data stay', privacy()],
    ] as const;
    return html`<dialog aria-labelledby="title" @close=${() => this.dispatchEvent(new CustomEvent('close-help'))}>
      <div class="head">
        <h2 id="title">Help</h2>
        <nav aria-label="Help">${parts.map(([title]) => html`<button class="link" @click=${() => this.#go(title)}>${title}</button>`)}</nav>
      </div>
      <div class="body" tabindex="0" role="region" aria-label="Help, all parts">
        ${parts.map(([title, content]) => html`<section data-title=${title}><h3 tabindex="-1">${title}</h3>${content}</section>`)}
      </div>
      <footer><button class="button main" @click=${this.#close}>Close</button></footer>
    </dialog>`;
  }

  protected override firstUpdated(): void {
    this.renderRoot.querySelector('dialog')?.showModal();
    this.renderRoot.querySelector<HTMLElement>('.body')?.focus();
  }

  #go(title: string): void {
    const heading = this.renderRoot.querySelector<HTMLElement>(`[data-title="${title}"] h3`);
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  }

  readonly #close = () => this.renderRoot.querySelector('dialog')?.close();

  #verdicts(): TemplateResult {
    return html`
      <p>
        Each row is put together from the list (part, sheet metal, thickness, and whatever else it says), from the catalogue (what the part needs), and from
        the shop settings. Every check gives its own finding; the row is as good as its worst one, in the order fails, unknown, marginal, holds.
        A row needs its part on file, its sheet metal and its thickness before it can hold at all. Vague words such as “ALUM” are judged against everything that they could mean.
      </p>
      <table class="verdicts">
        <tbody>
          ${VERDICTS.map(([verdict, text]) => html`<tr><th scope="row"><span class=${verdict}>${verdictShape(verdict, 15)} ${verdict}</span></th><td>${text}</td></tr>`)}
          <tr><th scope="row"><span class="note">${verdictShape('note', 15)} note</span></th><td>Informs, for example what to call out on the drawing, and changes no verdict.</td></tr>
        </tbody>
      </table>
      <p>A check that you accept as it is, with a reason, makes the row “conceded” beside its verdict; the verdict stays.</p>
    `;
  }

  #checked(): TemplateResult {
    const row = ({ title, summary }: { readonly title: string; readonly summary: string }) =>
      html`<tr><th scope="row">${title}</th><td>${summary}</td></tr>`;
    return html`
      <p>Examples, formulas and the tables behind each check stand under Rules and sources. A check says nothing where the list gives it nothing to look at.</p>
      <h4>Each row</h4>
      <table><tbody>${rules.map(row)}</tbody></table>
      <h4>The whole list</h4>
      <table><tbody>${listRules.map(row)}</tbody></table>
    `;
  }
}

function notChecked(): TemplateResult {
  return html`
    <p>A row that holds has passed the checks above and no others. These are left to the maker's data, to tests and to the responsible engineer:</p>
    <table><tbody>${NOT_CHECKED.map(({ title, text }) => html`<tr><th scope="row">${title}</th><td>${text}</td></tr>`)}</tbody></table>
  `;
}

function keys(): TemplateResult {
  return html`
    <p>On a Mac, ⌘ stands for Ctrl.</p>
    ${KEY_MAP.map(
      ({ title, keys }) => html`<h4>${title}</h4>
        <table class="keys"><tbody>${keys.map((one) => html`<tr><th scope="row">${one.keys}</th><td>${one.does}</td></tr>`)}</tbody></table>`,
    )}
  `;
}

function safety(): TemplateResult {
  return html`${SAFETY_WORDS.map((text) => html`<p>${text}</p>`)}`;
}

function privacy(): TemplateResult {
  return html`
    <p>Lists and catalogues are read in this browser and stay on this computer: nothing is sent anywhere. After the first visit the app works without a network.</p>
    <p>The last lists are kept in this browser until you delete them on the first screen, and the catalogues until you remove them. “Save project” puts all of the work into one file of yours.</p>
  `;
}

customElements.define('help-dialog', HelpDialog);
