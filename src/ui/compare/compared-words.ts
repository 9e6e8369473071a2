import { html, type TemplateResult } from 'lit';
import type { ComparedState } from '../../app/compare-deeds.ts';
import type { FoundRows } from '../../core/compare/comparison.ts';
import type { Compared, ComparedList } from '../../worker/compared.ts';

/** What was compared with what, and how rows were found again, in one line. */
export function comparedLine({ shown, how }: ComparedState): TemplateResult {
  const { before, after, found } = shown;
  return html`<b>${before.file}</b> ${inBrackets(before, showHow(how))}, ${count(before.rows)}, compared with
    <b>${after.file}</b> ${inBrackets(after, 'as it stands now')}, ${count(after.rows)}. ${foundWords(found)}`;
}

/** Said where no row tells a change. */
export function sameWords({ inShort }: Compared): string {
  const isSame = inShort[0] === 'Nothing has changed.';
  return isSame ? 'The two lists are the same.' : 'Every row says the same in both lists.';
}

/** "44 rows found again: 40 the same throughout, 3 by part and panel, 1 by part." */
export function foundWords(found: readonly FoundRows[]): string {
  const all = found.reduce((sum, { rows }) => sum + rows, 0);
  if (all === 0) return 'No row was found again: these may be two different lists.';
  const ways = found.map(({ way, rows }) => `${rows} ${way === 'the same throughout' ? way : `by ${way}`}`);
  return `${count(all)} found again: ${ways.join(', ')}.`;
}

function inBrackets({ sheet }: ComparedList, how: string): string {
  const words = [sheet && `sheet ${sheet}`, how].filter(Boolean).join(', ');
  return words && `(${words})`;
}

function showHow(how: ComparedState['how']): string {
  if (how === null) return '';
  if (how === 'as opened') return 'as it was opened';
  const time = new Date(how.savedAt);
  const when = Number.isNaN(time.getTime())
    ? ''
    : ` of ${time.toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })}`;
  return `saved work${when}${how.steps > 0 ? `, ${how.steps} ${how.steps === 1 ? 'change' : 'changes'}` : ''}`;
}

function count(rows: number): string {
  return `${rows} ${rows === 1 ? 'row' : 'rows'}`;
}
