import { html, type TemplateResult } from 'lit';
import type { RowName } from '../../core/compare/comparison.ts';
import type { Verdict } from '../../core/model/outcome.ts';
import { type OnRow, rowLink, verdictWord } from '../report-parts.ts';

/** The cells of one change. */
export type Shown<T> = (row: T, onRow: OnRow) => TemplateResult;

/** A row of the open list as a link, and its number in the earlier list where that was another. */
export function rowNumbers(
  before: Pick<RowName, 'row'> | null,
  after: Pick<RowName, 'row'>,
  onRow: OnRow,
): TemplateResult {
  const was = before && before.row !== after.row ? html` <span class="soft small">was ${before.row}</span>` : '';
  return html`${rowLink(after.row, onRow)}${was}`;
}

/** The part of a row; of one without a number what it says. */
export function namePart({ partNumber, text }: RowName): string {
  return partNumber || text;
}

/** What stood there and what stands there now. */
export function became(before: string, after: string): TemplateResult {
  return html`<del>${before.trim() || blank}</del> <span aria-label="is now" role="img">→</span> <ins>${after.trim() || blank}</ins>`;
}

/** A verdict, or the one before and the one now where they differ. */
export function verdictsCell(before: Verdict | null, after: Verdict | null): TemplateResult {
  if (before === after) return verdictOf(after);
  return html`${verdictOf(before)} <span aria-label="is now" role="img">→</span> ${verdictOf(after)}`;
}

export function numberCell(value: number, isSigned = false): TemplateResult {
  const text = isSigned && value > 0 ? `+${value}` : String(value).replace('-', '−');
  return html`<td class="number">${text}</td>`;
}

function verdictOf(verdict: Verdict | null): TemplateResult {
  return verdict ? verdictWord(verdict) : html`<span class="soft">not judged</span>`;
}

const blank = html`<span class="soft">blank</span>`;
