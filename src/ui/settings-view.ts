import { css, html, LitElement, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import {
  findSettingFault,
  parseShopSettings,
  SETTING_RANGES,
  type SettingKey,
  showShopSettings,
} from '../core/intake/shop-settings.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../core/model/shop.ts';
import { SETTING_WORDS } from '../core/say/show-setting.ts';
import { pickFiles } from './pick-files.ts';
import { saveFile } from './save-file.ts';
import { SETTING_GROUPS, type SettingField } from './settings-fields.ts';
import { shared } from './styles.ts';

/** What could not be taken over: from a field, or from a file where `key` is null. */
interface Refusal {
  readonly key: SettingKey | null;
  readonly sentence: string;
}

/** What the shop decides for itself; each default says where it comes from. A change fires `set-shop` with all settings. */
export class SettingsView extends LitElement {
  static override properties = { shop: { attribute: false }, refusal: { state: true } };
  declare shop: ShopSettings;
  declare refusal: Refusal | null;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        height: 100%;
        overflow: auto;
      }
      .buttons {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        margin-top: 14px;
      }
      section {
        margin-top: 28px;
      }
      label {
        display: grid;
        grid-template-columns: 300px 280px 1fr;
        gap: 4px 20px;
        align-items: center;
        padding: 10px 0;
        border-bottom: 1px solid var(--line);
      }
      .number {
        display: flex;
        gap: 8px;
        align-items: center;
      }
      .number input {
        width: 120px;
      }
      .refusal {
        padding: 6px 0;
        color: var(--fails);
      }
      @media (max-width: 900px) {
        label {
          grid-template-columns: 1fr;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.shop = DEFAULT_SHOP;
    this.refusal = null;
  }

  override render() {
    return html`<div class="page">
      <h2>Shop settings</h2>
      <p class="soft">
        A change is applied at once to the open list, goes into every export, and is kept on this computer for the next visit.
      </p>
      <div class="buttons">
        <button class="button" @click=${this.#save}>Save as file</button>
        <button class="button" @click=${this.#load}>Load from file</button>
        <button class="button" @click=${() => this.#put(DEFAULT_SHOP)}>Back to defaults</button>
      </div>
      ${this.#refusalOf(null)}
      ${SETTING_GROUPS.map(
        ({ title, fields }) => html`<section><h3>${title}</h3>${fields.map((field) => this.#field(field))}</section>`,
      )}
    </div>`;
  }

  #field(field: SettingField): TemplateResult {
    const { key, origin } = field;
    return html`<label>
        ${SETTING_WORDS[key].name} ${SETTING_RANGES[key] ? this.#number(field) : this.#choice(key)}
        <span class="soft small">Default: ${origin}</span>
      </label>
      ${this.#refusalOf(key)}`;
  }

  #number({ key, step = 1 }: SettingField): TemplateResult {
    const words = SETTING_WORDS[key];
    const range = SETTING_RANGES[key];
    const value = this.shop[key];
    return html`<span class="number">
      <input class="field" type="number" data-setting=${key} min=${range?.least ?? 0} max=${range?.most ?? 0} step=${step}
        placeholder=${'none' in words ? 'not said' : ''} .value=${live(value === null ? '' : String(value))} @change=${this.#changed} />
      <span class="soft small">${'unit' in words ? words.unit : ''}</span>
    </span>`;
  }

  #choice(key: SettingKey): TemplateResult {
    const words = SETTING_WORDS[key];
    const none = 'none' in words ? [['', words.none]] : [];
    const choices = [...none, ...Object.entries('choices' in words ? words.choices : {})];
    const current = this.shop[key] ?? '';
    return html`<select class="field" data-setting=${key} @change=${this.#changed}>
      ${choices.map(([value, text]) => html`<option value=${value} .selected=${live(value === current)}>${text}</option>`)}
    </select>`;
  }

  #refusalOf(key: SettingKey | null): TemplateResult | '' {
    return this.refusal?.key === key ? html`<p class="refusal" role="alert">${this.refusal.sentence}</p>` : '';
  }

  readonly #changed = ({ target }: Event) => {
    const field = target as HTMLInputElement | HTMLSelectElement;
    const key = field.dataset.setting as SettingKey;
    const value = readField(field);
    const wanted = findSettingFault(key, value);
    if (!wanted) return this.#put({ ...this.shop, [key]: value });
    this.refusal = { key, sentence: `${SETTING_WORDS[key].name}: ${wanted.replace('null', 'nothing')} is wanted.` };
  };

  readonly #save = () => saveFile('shop-settings.json', showShopSettings(this.shop));

  readonly #load = async () => {
    const [file] = await pickFiles(false, '.json,application/json');
    if (!file) return;
    try {
      this.#put(parseShopSettings(await file.slice(0, 1_000_000).text(), file.name));
    } catch (error) {
      this.refusal = { key: null, sentence: error instanceof Error ? error.message : String(error) };
    }
  };

  #put(shop: ShopSettings): void {
    this.refusal = null;
    this.dispatchEvent(new CustomEvent('set-shop', { detail: shop, bubbles: true, composed: true }));
  }
}

/** Null for an empty field; a field whose text is no number gives one that no setting takes. */
function readField(field: HTMLInputElement | HTMLSelectElement): string | number | null {
  if (field.validity.badInput) return Number.NaN;
  if (field.value === '') return null;
  return field instanceof HTMLInputElement ? Number(field.value) : field.value;
}

customElements.define('settings-view', SettingsView);
