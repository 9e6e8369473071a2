import { type AppState, EMPTY_STATE } from './state.ts';

/** Holds the page's state and tells whoever listens when it has changed. */
export class Store extends EventTarget {
  #state: AppState = EMPTY_STATE;

  get state(): AppState {
    return this.#state;
  }

  /** Replaces part of the state and fires `change`. */
  set(change: Partial<AppState>): void {
    this.#state = { ...this.#state, ...change };
    this.dispatchEvent(new Event('change'));
  }
}
