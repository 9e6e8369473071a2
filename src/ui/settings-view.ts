import { css, html, LitElement, type TemplateResult } from 'lit';
import type { ShopSettings } from '../core/model/shop.ts';
import { shared } from './styles.ts';

interface Choice {
  readonly key: 'thicknessStandard' | 'sheetWidth' | 'judgeThicknessAt' | 'silence' | 'units';
  readonly label: string;
  readonly why: string;
  readonly options: readonly (readonly [string, string])[];
}

const CHOICES: readonly Choice[] = [
  {
    key: 'judgeThicknessAt',
    label: 'Minimum sheet is compared with',
    why: 'Minima are meant for nominal sheet (common practice, no source).',
    options: [
      ['nominal', 'the nominal thickness'],
      ['thinnest', 'the thinnest that the mill may deliver'],
    ],
  },
  {
    key: 'thicknessStandard',
    label: 'Mill tolerance',
    why: "The drawing's own unit usually tells whose tolerance was meant (our judgement).",
    options: [
      ['as-written', 'by the way the thickness is written'],
      ['us', 'always ASTM'],
      ['en', 'always EN'],
    ],
  },
  {
    key: 'sheetWidth',
    label: 'Width of the sheet as bought',
    why: 'Tolerance tables widen with width; narrow is their first column.',
    options: [
      ['narrow', 'narrow'],
      ['medium', 'medium'],
      ['wide', 'wide'],
    ],
  },
  {
    key: 'silence',
    label: 'A list that is silent about hole and edge',
    why: 'Hole and edge usually stand on the drawing (common practice, no source).',
    options: [
      ['note', 'gets a note with what to call out'],
      ['unknown', 'is unknown until it says'],
    ],
  },
  {
    key: 'units',
    label: 'Show lengths in',
    why: 'The text of the list is always shown as it was sent.',
    options: [
      ['mm', 'mm'],
      ['in', 'inches'],
    ],
  },
];

/** What the shop decides for itself; each default says where it comes from. */
export class SettingsView extends LitElement {
  static override properties = { shop: { attribute: false } };
  declare shop: ShopSettings;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        height: 100%;
        overflow: auto;
      }
      label {
        display: grid;
        grid-template-columns: 260px 280px 1fr;
        gap: 4px 20px;
        align-items: center;
        padding: 10px 0;
        border-bottom: 1px solid var(--line);
      }
    `,
  ];

  override render() {
    return html`<div class="page">
      <h2>Shop settings</h2>
      <p class="soft">A change is applied at once to the open list and goes into every export.</p>
      <div style="margin-top: 16px">
        <label>
          Hardness margin
          <input class="field" type="number" min="1" max="60" step="1" .value=${String(this.shop.hardnessMarginHrb)} @change=${this.#margin} />
          <span class="soft small">20 points on Rockwell B (common practice, no source).</span>
        </label>
        ${CHOICES.map((choice) => this.#choice(choice))}
      </div>
    </div>`;
  }

  #choice({ key, label, why, options }: Choice): TemplateResult {
    return html`<label>
      ${label}
      <select class="field" data-setting=${key} @change=${(event: Event) => this.#set({ [key]: (event.target as HTMLSelectElement).value })}>
        ${options.map(([value, words]) => html`<option value=${value} ?selected=${this.shop[key] === value}>${words}</option>`)}
      </select>
      <span class="soft small">${why}</span>
    </label>`;
  }

  readonly #margin = ({ target }: Event) => {
    const value = Number((target as HTMLInputElement).value);
    if (Number.isFinite(value) && value > 0) this.#set({ hardnessMarginHrb: value });
  };

  #set(change: object): void {
    this.dispatchEvent(
      new CustomEvent('set-shop', { detail: { ...this.shop, ...change }, bubbles: true, composed: true }),
    );
  }
}

customElements.define('settings-view', SettingsView);
