import { css, html, LitElement, type TemplateResult } from 'lit';
import { ENCODING_NAMES, TEXT_ENCODINGS, type TextEncoding, type TextReading } from '../core/model/raw.ts';
import { shared } from './styles.ts';

const DELIMITERS: readonly (readonly [string, string])[] = [
  [',', 'comma'],
  [';', 'semicolon'],
  ['\t', 'tab'],
  ['|', 'bar'],
  ['，', 'full-width comma'],
  ['、', 'enumeration comma'],
];

/** The user wants the text file read another way. */
export type ChooseReadingEvent = CustomEvent<TextReading>;

/** How a text file was decoded and cut into cells; another choice reads it again. Sends `choose-reading`. */
export class ReadingChoice extends LitElement {
  static override properties = { reading: { attribute: false } };
  declare reading: TextReading;

  static override styles = [
    shared,
    css`
      label + label {
        margin-left: 14px;
      }
    `,
  ];

  constructor() {
    super();
    this.reading = {};
  }

  override render() {
    const { encoding, delimiter = ',' } = this.reading;
    const isUsual = DELIMITERS.some(([sign]) => sign === delimiter);
    const delimiters = isUsual ? DELIMITERS : [...DELIMITERS, [delimiter, delimiter] as const];
    const encodings = TEXT_ENCODINGS.map((name) => [name, ENCODING_NAMES[name]] as const);
    return html`
      <label class="soft">read as <select class="field" aria-label="Encoding of the file" @change=${this.#encoding}>
        ${encodings.map((entry) => option(entry, encoding))}
      </select></label>
      <label class="soft">columns split at <select class="field" aria-label="Delimiter of the file" @change=${this.#delimiter}>
        ${delimiters.map((entry) => option(entry, delimiter))}
      </select></label>
    `;
  }

  /** A delimiter found in a misread text may be wrong, so it is sought anew; an encoding does not depend on delimiters. */
  readonly #encoding = ({ target }: Event) =>
    this.#choose({ encoding: take(target, this.reading.encoding) as TextEncoding });

  readonly #delimiter = ({ target }: Event) =>
    this.#choose({ ...this.reading, delimiter: take(target, this.reading.delimiter) });

  #choose(detail: TextReading): void {
    this.dispatchEvent(new CustomEvent('choose-reading', { detail, bubbles: true, composed: true }));
  }
}

/** What was chosen. The field goes back to what holds until the file has been read again. */
function take(target: EventTarget | null, current = ''): string {
  const select = target as HTMLSelectElement;
  const { value } = select;
  select.value = current;
  return value;
}

function option([value, name]: readonly [string, string], chosen: string | undefined): TemplateResult {
  return html`<option value=${value} .selected=${value === chosen}>${name}</option>`;
}

customElements.define('reading-choice', ReadingChoice);
