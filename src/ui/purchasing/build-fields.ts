import { css, html, LitElement, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { findSettingFault, SETTING_RANGES } from '../../core/intake/shop-settings.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../core/model/shop.ts';
import { SETTING_WORDS } from '../../core/say/show-setting.ts';
import { shared } from '../styles.ts';

type CountKey = 'buildQuantity' | 'sparesPercent';

/** How often the list is built and the spares on top: shop settings, changed where their effect is seen. Fires `set-shop`. */
export class BuildFields extends LitElement {
  static override properties = { shop: { attribute: false }, refusal: { state: true } };
  declare shop: ShopSettings;
  declare refusal: string;

  static override styles = [
    shared,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 6px 20px;
        align-items: center;
      }
      label {
        display: flex;
        gap: 8px;
        align-items: center;
        white-space: nowrap;
      }
      input {
        width: 92px;
      }
      .refusal {
        color: var(--fails);
      }
    `,
  ];

  constructor() {
    super();
    this.shop = DEFAULT_SHOP;
    this.refusal = '';
  }

  override render(): TemplateResult {
    return html`${this.#field('buildQuantity')} ${this.#field('sparesPercent')}
      ${this.refusal ? html`<span class="refusal" role="alert">${this.refusal}</span>` : ''}`;
  }

  #field(key: CountKey): TemplateResult {
    const { name, unit } = SETTING_WORDS[key];
    const range = SETTING_RANGES[key];
    return html`<label>${name}
      <input class="field" type="number" data-setting=${key} min=${range?.least ?? 0} max=${range?.most ?? 0} step="1"
        .value=${live(String(this.shop[key]))} @change=${this.#changed} /> <span class="soft">${unit}</span></label>`;
  }

  readonly #changed = ({ target }: Event) => {
    const field = target as HTMLInputElement;
    const key = field.dataset.setting as CountKey;
    const value = field.value === '' ? Number.NaN : Number(field.value);
    const wanted = findSettingFault(key, value);
    this.refusal = wanted ? `${SETTING_WORDS[key].name}: ${wanted} is wanted.` : '';
    const detail: ShopSettings = { ...this.shop, [key]: value };
    if (!wanted) this.dispatchEvent(new CustomEvent('set-shop', { detail, bubbles: true, composed: true }));
  };
}

customElements.define('build-fields', BuildFields);
