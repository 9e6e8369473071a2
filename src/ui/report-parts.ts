import { html, type TemplateResult } from 'lit';
import type { Commands } from '../app/commands.ts';
import type { AppState } from '../app/state.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { listRows } from '../core/rollup/name-rows.ts';
import { DEMO_WORDS } from '../core/say/safety.ts';
import { verdictShape } from './verdict-mark.ts';

/** Leads to a row of the list. */
export type OnRow = (row: number) => void;

/** Rows as "6, 41 and 50 to 58", each number a link to its row. */
export function rowLinks(rows: readonly number[], onRow: OnRow): TemplateResult {
  const parts = listRows(rows).split(/(\d+)/);
  return html`${parts.map((part) => (/^\d+$/.test(part) ? rowLink(Number(part), onRow) : part))}`;
}

export function rowLink(row: number, onRow: OnRow): TemplateResult {
  return html`<button class="link" title="Show row ${row} in the list" @click=${() => onRow(row)}>${row}</button>`;
}

/** A verdict as shape and word. */
export function verdictWord(verdict: Verdict): TemplateResult {
  return html`<span class="verdict ${verdict}">${verdictShape(verdict, 13)} ${verdict}</span>`;
}

/** Said wherever invented data stand behind what is shown. */
export function demoMark({ catalogues }: AuditedList): TemplateResult | '' {
  return catalogues.some(({ demo }) => demo) ? html`<span class="demo">${DEMO_WORDS}</span>` : '';
}

/** Stands in place of a view until what the list comes to has been added up. */
export function waiting(title: string): TemplateResult {
  return html`<div class="page"><h2>${title}</h2><p class="empty" role="status">Adding up…</p></div>`;
}

/** Undo and redo, in every view where something can be taken back. */
export function undoButtons({ undoName, redoName }: AppState, commands: Commands): TemplateResult {
  return html`<button class="button" ?disabled=${!undoName} title=${undoName ? `Undo: ${undoName}` : 'Nothing to undo'} @click=${() => commands.undo()}>Undo</button>
    <button class="button" ?disabled=${!redoName} title=${redoName ? `Redo: ${redoName}` : 'Nothing to redo'} @click=${() => commands.redo()}>Redo</button>`;
}

/** Puts a text on the clipboard and says how it went. */
export async function copyText(text: string, what: string, commands: Commands): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    commands.reports.say(`${what} copied.`);
  } catch {
    commands.reports.say('The browser does not let this page copy: save the sheet instead.', 'error');
  }
}
