import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import type { Autosave } from '../app/autosave.ts';
import type { Commands } from '../app/commands.ts';
import type { View } from '../app/state.ts';
import type { Store } from '../app/store.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import { LEFT, RIGHT, START, showView } from './app-views.ts';
import './export-menu.ts';
import type { ExportEvent } from './export-menu.ts';
import './first-screen.ts';
import { logo } from './logo.ts';
import { openDialog } from './open-dialog.ts';
import { LISTS_AND_PROJECTS, pickFiles } from './pick-files.ts';
import { StoreController } from './store-controller.ts';
import { shared } from './styles.ts';
import { takeDropped } from './take-dropped.ts';
import { ViewLoader } from './view-loader.ts';

const PHASES = { reading: 'reading', judging: 'judging rows', comparing: 'comparing', writing: 'writing' } as const;

/** The whole page: views across the top, the view itself, messages and progress. Files can be dropped anywhere. */
export class AppRoot extends LitElement {
  static override properties = { over: { state: true } };
  declare over: boolean;
  store!: Store;
  commands!: Commands;
  autosave!: Autosave;
  readonly #views = new ViewLoader(this, (text) => this.store.set({ message: { kind: 'error', text } }));

  static override styles = [
    shared,
    css`
      :host {
        display: grid;
        grid-template: auto auto minmax(0, 1fr) / minmax(0, 1fr);
        height: 100vh;
      }
      header {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        align-items: center;
        padding: 8px 20px;
        border-bottom: 1px solid var(--line);
        background: var(--sheet);
      }
      .name {
        display: inline-flex;
        gap: 8px;
        align-items: center;
        font-size: 17px;
        font-weight: 600;
      }
      nav {
        display: flex;
        flex-wrap: wrap;
        gap: 2px;
      }
      nav.right {
        margin-left: auto;
      }
      .actions {
        display: flex;
        gap: 16px;
      }
      @media (max-width: 1199px) {
        .actions {
          margin-left: auto;
        }
      }
      nav button {
        min-height: 34px;
        padding: 4px 11px;
        border: 0;
        border-radius: 4px;
        background: none;
        color: var(--soft);
      }
      nav button:hover {
        color: var(--ink);
      }
      nav button[aria-current] {
        background: var(--blue-ground);
        color: var(--blue);
        font-weight: 600;
      }
      main {
        position: relative;
        min-height: 0;
      }
      main.over::after {
        content: attr(data-drop);
        position: absolute;
        inset: 8px;
        z-index: 5;
        display: grid;
        place-content: center;
        border: 2px dashed var(--blue);
        border-radius: 6px;
        background: color-mix(in srgb, var(--blue-ground) 88%, transparent);
        color: var(--blue);
        font-size: 20px;
        pointer-events: none;
      }
      .message {
        display: flex;
        gap: 16px;
        justify-content: space-between;
        align-items: center;
        padding: 8px 20px;
        font-size: var(--reading);
      }
      .message.error {
        background: var(--fails-wash);
        color: var(--fails);
      }
      .message.done {
        background: var(--holds-wash);
        color: var(--holds);
      }
      .work {
        display: flex;
        gap: 14px;
        align-items: center;
        padding: 6px 20px;
        background: var(--blue-ground);
      }
      progress {
        width: 240px;
        accent-color: var(--blue);
      }
      /* A low window, as at 200 %: the page as a whole scrolls, so that what is asked for gets all of it. */
      @media (max-height: 600px) {
        :host {
          height: auto;
          min-height: 100vh;
        }
      }
      @media print {
        :host {
          display: block;
          height: auto;
        }
        header,
        [aria-live] {
          display: none;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.over = false;
  }

  /** Given once, before the element is put into the page. */
  use(store: Store, commands: Commands, autosave: Autosave): this {
    Object.assign(this, { store, commands, autosave });
    new StoreController(this, store, (state) => state);
    return this;
  }

  override render() {
    const { view, list, message, work, dialog, update } = this.store.state;
    return html`
      <header>
        <h1 class="name">${logo} Clinchsheet</h1>
        <nav aria-label="List">${(list ? LEFT : START).map((entry) => this.#tab(entry, view))}</nav>
        <nav class="right" aria-label="Basis">${RIGHT.map((entry) => this.#tab(entry, view))}</nav>
        <div class="actions">
        <button class="button" @click=${this.#pickList}>Open list</button>
        <button class="button" ?disabled=${!list} title="List, edits, undo and settings in one file" @click=${() => this.commands.saveProject()}>Save project</button>
        <button class="button" title="Verdicts, checks, keys (F1)" @click=${this.#openHelp}>Help</button>
        <export-menu ?disabled=${!list} .inPlace=${(list?.sheets.length ?? 0) > 0}
          @export-list=${({ detail }: ExportEvent) => this.commands.reports.exportList(detail)}
          @print-findings=${() => this.commands.reports.printFindings()}></export-menu>
        </div>
      </header>
      <div aria-live="polite">
        ${
          update
            ? html`<div class="work"><span>A newer version is ready. The page reloads to use it.</span>
          <button class="button" @click=${update}>Use it now</button></div>`
            : ''
        }
        ${
          work
            ? html`<div class="work"><span>${work.what}: ${PHASES[work.phase]}</span><progress max="1" .value=${work.share} aria-label=${work.what}></progress>
          ${work.canCancel ? html`<button class="button" @click=${() => this.commands.cancel()}>Cancel</button>` : ''}</div>`
            : ''
        }
        ${
          message
            ? html`<div class="message ${message.kind}" role=${message.kind === 'error' ? 'alert' : 'status'}><span>${message.text}</span>
          <button class="link" @click=${() => this.commands.dismiss()}>Dismiss</button></div>`
            : ''
        }
      </div>
      <main class=${this.over ? 'over' : ''} data-drop=${view === 'compare' ? 'Drop to compare' : 'Drop to open'} @dragover=${this.#dragOver} @dragleave=${this.#dragLeave} @drop=${this.#drop}
        @continue-list=${({ detail }: CustomEvent<string>) => this.autosave.continueWith(detail)}
        @drop-list=${({ detail }: CustomEvent<string>) => this.autosave.drop(detail)} @show-kept=${() => this.autosave.showKept()}
        @compare-kept=${({ detail }: CustomEvent<string>) => this.commands.comparing.withKept(() => this.autosave.lookAt(detail))} @open-list=${this.#pickList} @open-demo=${() => this.commands.openDemo()} @load-catalogue=${this.#pickCatalogue}
        @open-help=${this.#openHelp}
        @set-shop=${({ detail }: CustomEvent<ShopSettings>) => this.commands.setShop(detail)}>${this.#view()}</main>
      ${dialog ? openDialog(dialog, this.store, this.commands) : ''}
    `;
  }

  #view(): TemplateResult {
    const { view, list, shelf, work, recalled } = this.store.state;
    if (work) this.#views.expect('list');
    if (view === 'list' && !list)
      return html`<first-screen ?over=${this.over} .kept=${shelf} .recalled=${recalled}></first-screen>`;
    if (!this.#views.isLoaded(view)) return html`<p class="page soft" role="status">Loading…</p>`;
    return showView(this.store, this.commands);
  }

  #tab([view, name]: readonly [View, string], current: View): TemplateResult {
    return html`<button aria-current=${view === current ? 'page' : nothing} @click=${() => this.commands.show(view)}>${name}</button>`;
  }

  readonly #openHelp = () => this.commands.openDialog({ kind: 'help' });

  readonly #pickList = async () => {
    const [file] = await pickFiles(false, LISTS_AND_PROJECTS);
    if (file) await this.commands.openFile({ name: file.name, data: file });
  };

  readonly #pickCatalogue = async () => {
    const files = await pickFiles(true);
    if (files.length > 0) await this.commands.catalogues.add(files.map((file) => ({ name: file.name, data: file })));
  };

  readonly #dragOver = (event: DragEvent) => {
    event.preventDefault();
    this.over = true;
  };

  readonly #dragLeave = () => {
    this.over = false;
  };

  readonly #drop = async (event: DragEvent) => {
    event.preventDefault();
    this.over = false;
    await takeDropped(event, this.store.state.view, this.commands);
  };
}

customElements.define('clinch-app', AppRoot);
