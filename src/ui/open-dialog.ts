import { html, type TemplateResult } from 'lit';
import type { Commands } from '../app/commands.ts';
import type { Dialog } from '../app/state.ts';
import type { Store } from '../app/store.ts';
import './answers-dialog.ts';
import './bulk-dialog.ts';
import './concede-dialog.ts';
import './preview-dialog.ts';

/** The dialog that the state asks for. */
export function openDialog(dialog: Dialog, store: Store, commands: Commands): TemplateResult {
  switch (dialog.kind) {
    case 'swap':
      return html`<preview-dialog .store=${store} .commands=${commands} .partNumber=${dialog.partNumber} .rows=${dialog.rows}></preview-dialog>`;
    case 'bulk':
      return html`<bulk-dialog .store=${store} .commands=${commands} .rows=${dialog.rows}></bulk-dialog>`;
    case 'answers':
      return html`<answers-dialog .store=${store} .commands=${commands} .file=${dialog.file} .plans=${dialog.plans} .isList=${dialog.isList}></answers-dialog>`;
    case 'help':
      // Fetched when first asked for: it brings every check along.
      import('./help/help-dialog.ts').catch(() => {
        commands.closeDialog();
        commands.reports.say('Help could not be loaded: check the connection, then reload the page.', 'error');
      });
      return html`<help-dialog @close-help=${() => commands.closeDialog()}></help-dialog>`;
    case 'concede':
      return html`<concede-dialog .store=${store} .commands=${commands} .row=${dialog.row} .rule=${dialog.rule}></concede-dialog>`;
  }
}
