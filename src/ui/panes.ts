import type { LitElement, ReactiveController } from 'lit';

/** F6 goes from one pane of a view to the next and around, as in any window with panes; panes that are not there are passed over. */
export class Panes implements ReactiveController {
  readonly #host: LitElement;
  readonly #tags: readonly string[];

  constructor(host: LitElement, tags: readonly string[]) {
    this.#host = host;
    this.#tags = tags;
    host.addController(this);
  }

  hostConnected(): void {
    document.addEventListener('keydown', this.#press);
  }

  hostDisconnected(): void {
    document.removeEventListener('keydown', this.#press);
  }

  readonly #press = (event: KeyboardEvent) => {
    const path = event.composedPath();
    const isInDialog = path.some((one) => one instanceof HTMLDialogElement);
    if (event.key !== 'F6' || isInDialog) return;
    const panes = this.#tags.flatMap((tag) => this.#host.renderRoot.querySelector<HTMLElement>(tag) ?? []);
    const at = panes.findIndex((pane) => path.includes(pane));
    event.preventDefault();
    panes[(at + (event.shiftKey ? panes.length - 1 : 1)) % panes.length]?.focus();
  };
}
