import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { cssString } from './css-string.ts';

/** What stands around the content of every printed page. */
export interface PageFrame {
  readonly orientation: 'landscape' | 'portrait';
  readonly head: string;
  /** Safety words, and whether invented data stand behind the page. */
  readonly foot: readonly string[];
}

/** Sets up the printed pages for as long as an element is shown: page boxes can be set up only for the whole document. */
export class PrintPage implements ReactiveController {
  readonly #frame: () => PageFrame | null;
  readonly #sheet = new CSSStyleSheet();
  #rule = '';

  constructor(host: ReactiveControllerHost, frame: () => PageFrame | null) {
    this.#frame = frame;
    host.addController(this);
  }

  hostConnected(): void {
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, this.#sheet];
  }

  hostUpdated(): void {
    const frame = this.#frame();
    const rule = frame ? pageRule(frame) : '';
    if (rule === this.#rule) return;
    this.#rule = rule;
    this.#sheet.replaceSync(rule);
  }

  hostDisconnected(): void {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== this.#sheet);
  }
}

function pageRule({ orientation, head, foot }: PageFrame): string {
  const type = 'font: 7.5pt/1.35 "IBM Plex Sans", "Noto Sans", sans-serif; color: #444;';
  return `@page {
  size: ${orientation};
  margin: 15mm 11mm 17mm;
  @top-left { content: ${cssString(head)}; ${type} text-align: left; white-space: nowrap; }
  @bottom-left { content: ${cssString(foot.join(' '))}; ${type} text-align: left; width: 88%; }
  @bottom-right { content: counter(page) " / " counter(pages); ${type} text-align: right; white-space: nowrap; }
}`;
}
