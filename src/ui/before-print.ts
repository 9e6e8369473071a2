import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Lets an element show all that belongs on paper before the browser prints; `fill` has to bring it into the page at once. */
export class BeforePrint implements ReactiveController {
  readonly #fill: () => void;

  constructor(host: ReactiveControllerHost, fill: () => void) {
    this.#fill = fill;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('beforeprint', this.#fill);
  }

  hostDisconnected(): void {
    window.removeEventListener('beforeprint', this.#fill);
  }
}
