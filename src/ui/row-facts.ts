import { css, html, LitElement } from 'lit';
import type { AuditedLine, FastenerSummary } from '../core/model/audited.ts';
import type { LengthUnit } from '../core/model/list.ts';
import type { TakenFrom } from '../core/model/sheet.ts';
import { describeHole, describeMargin } from '../core/say/describe.ts';
import { showValue } from '../core/say/show-value.ts';
import { shared } from './styles.ts';

/** What the list says of a row beside what was understood of it, and what the part needs. */
export class RowFacts extends LitElement {
  static override properties = { line: { attribute: false }, units: { type: String } };
  declare line: AuditedLine | null;
  declare units: LengthUnit;

  static override styles = [
    shared,
    css`
      :host {
        display: block;
        margin-top: 20px;
      }
      th:first-child,
      td:first-child {
        width: 88px;
        color: var(--soft);
      }
      th:nth-child(2) {
        width: 36%;
      }
      td {
        overflow-wrap: anywhere;
      }
    `,
  ];

  constructor() {
    super();
    this.line = null;
    this.units = 'mm';
  }

  override render() {
    const { line } = this;
    if (!line) return html``;
    return html`<table>
      <thead>
        <tr><td></td><th scope="col">Listed</th><th scope="col">Understood (${this.units})</th></tr>
      </thead>
      <tbody>
        ${this.#rows(line).map(([name, listed, understood]) => html`<tr><td>${name}</td><td>${listed || '–'}</td><td>${understood || '–'}</td></tr>`)}
      </tbody>
    </table>`;
  }

  #rows(audited: AuditedLine): readonly (readonly [name: string, listed: string, understood: string])[] {
    const { line, fastener, sheet, requires } = audited;
    const thickness = line.thickness.text || (line.material.thicknessText ?? '');
    const margin = describeMargin(audited);
    return [
      ['Part', line.partNumber, fastener ? describePart(fastener) : 'not on file'],
      ['Sheet metal', asListed(line.material.text, line.material.takenFrom), sheet?.name || 'not known'],
      ['Thickness', asListed(thickness, line.thickness.takenFrom), this.#thickness(audited)],
      ['Hole', line.hole.text, this.#against(line.hole.mm, describeHole(requires, this.units))],
      ['Edge', line.edge.text, this.#against(line.edge.mm, this.#length(requires?.edgeMm))],
      ['Hardness', '', margin && `margin ${margin} HRB points`],
    ];
  }

  #thickness({ sheet, requires }: AuditedLine): string {
    if (!sheet || sheet.thicknessMm === null) return '';
    const thinnest = sheet.thinnestMm === null ? '' : ` (thinnest ${this.#length(sheet.thinnestMm)})`;
    const least = this.#length(requires?.sheetMinMm);
    return `${this.#length(sheet.thicknessMm)}${thinnest}${least && `, needs ${least}`}`;
  }

  #against(mm: number | null, required: string): string {
    return [this.#length(mm), required && `needs ${required}`].filter(Boolean).join(', ');
  }

  #length(mm: number | null | undefined): string {
    return mm === null || mm === undefined ? '' : showValue('lengthMm', mm, this.units);
  }
}

/** The part on file, and what of it is the user's own. */
function describePart({ partNumber, edited }: FastenerSummary): string {
  if (!edited) return partNumber;
  return edited === 'added'
    ? `${partNumber} (added to the catalogue here)`
    : `${partNumber} (edited in the catalogue here: ${edited})`;
}

/** The cell's own text, or from where an empty one was filled. */
function asListed(text: string, taken: TakenFrom | undefined): string {
  if (!taken) return text;
  return `– (“${taken.text.trim()}” in row ${taken.row}${taken.sheet ? ` of “${taken.sheet}”` : ''})`;
}

customElements.define('row-facts', RowFacts);
