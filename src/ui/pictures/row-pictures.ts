import { css, html, LitElement, type TemplateResult } from 'lit';
import { outputName } from '../../app/output-name.ts';
import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Catalogue } from '../../core/model/fastener.ts';
import { drawRow } from '../../core/picture/draw-row.ts';
import type { Drawing } from '../../core/picture/drawing.ts';
import { showSvg } from '../../core/picture/paper/show-svg.ts';
import { verdictSentence } from '../../core/picture/pictured-row.ts';
import { saveFile } from '../save-file.ts';
import { shared } from '../styles.ts';
import { drawingStyles } from './drawing-styles.ts';
import { drawingView } from './drawing-view.ts';
import { partsOf } from './parts-of.ts';

/** Drawings are laid out for the width there is, within these bounds in px. */
const NARROWEST = 260;
const WIDEST = 560;

/** One row in pictures: section, hardness, and the hole from above, and a link that saves them. */
export class RowPictures extends LitElement {
  static override properties = {
    line: { attribute: false },
    list: { attribute: false },
    catalogues: { attribute: false },
    units: { type: String },
    width: { state: true },
  };
  declare line: AuditedLine | null;
  declare list: AuditedList | null;
  declare catalogues: readonly Catalogue[];
  /** Asks for new drawings when the unit changes; the list's own settings tell which. */
  declare units: string;
  declare width: number;
  readonly #watch = new ResizeObserver(([entry]) => {
    const room = Math.round(entry?.contentRect.width ?? 0);
    if (room > 0) this.width = Math.min(Math.max(room, NARROWEST), WIDEST);
  });

  static override styles = [
    shared,
    drawingStyles,
    css`
      :host {
        display: block;
      }
      section {
        margin-top: 20px;
      }
      section .drawing {
        margin: 8px auto 0;
      }
      .save {
        margin-top: 12px;
      }
    `,
  ];

  constructor() {
    super();
    this.line = null;
    this.list = null;
    this.catalogues = [];
    this.units = 'mm';
    this.width = 392;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch.disconnect();
  }

  override render(): TemplateResult {
    const drawings = this.#drawings();
    if (drawings.length === 0) return html``;
    return html`${drawings.map(
      (drawing) => html`<section><h3>${drawing.title}</h3>${drawingView(drawing, this.width, drawing.kind)}</section>`,
    )}
      <p class="save"><button class="button" title="As one SVG file" @click=${this.#save}>Save drawing</button></p>`;
  }

  #drawings(): readonly Drawing[] {
    const { line, list } = this;
    if (!line || !list) return [];
    return drawRow({ line, part: partsOf(this.catalogues).find(line.line.partNumber), shop: list.shop });
  }

  readonly #save = () => {
    const { line, list } = this;
    if (!line || !list) return;
    const name = line.line.partNumber || 'no part number';
    const picture = showSvg(this.#drawings(), {
      heading: `Row ${line.row}, ${name}${line.line.panel ? `, panel ${line.line.panel}` : ''}`,
      text: line.decidedBy ? `${capital(line.verdict)}. ${line.decidedBy.text}` : verdictOnly(line, list),
      demo: list.catalogues.some(({ demo }) => demo),
    });
    saveFile(outputName(list.file, `row-${line.row}.svg`), picture);
  };
}

function verdictOnly(line: AuditedLine, { shop }: AuditedList): string {
  return verdictSentence({ line, part: null, shop });
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

customElements.define('row-pictures', RowPictures);
