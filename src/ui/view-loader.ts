import type { ReactiveControllerHost } from 'lit';
import type { View } from '../app/state.ts';
import { LOADERS } from './app-views.ts';

/** Fetches each view when it is first asked for, and tells when one cannot be had. */
export class ViewLoader {
  readonly #host: ReactiveControllerHost;
  readonly #complain: (sentence: string) => void;
  readonly #asked = new Set<View>();
  readonly #loaded = new Set<View>();

  constructor(host: ReactiveControllerHost, complain: (sentence: string) => void) {
    this.#host = host;
    this.#complain = complain;
  }

  isLoaded(view: View): boolean {
    if (!this.#asked.has(view)) void this.#load(view);
    return this.#loaded.has(view);
  }

  /** Fetches a view that will be asked for soon. */
  expect(view: View): void {
    this.isLoaded(view);
  }

  /** Asked for once: a view that cannot be had is not asked for again at each change of the page. */
  async #load(view: View): Promise<void> {
    this.#asked.add(view);
    try {
      await LOADERS[view]();
      this.#loaded.add(view);
      this.#host.requestUpdate();
    } catch {
      this.#complain(
        'This part of the app could not be loaded: check the connection, then reload the page. Kept lists are still there afterwards.',
      );
    }
  }
}
