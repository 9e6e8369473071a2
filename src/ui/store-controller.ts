import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { AppState } from '../app/state.ts';
import type { Store } from '../app/store.ts';

/** Lets an element follow one part of the state: it renders again only when that part has changed. */
export class StoreController<T> implements ReactiveController {
  value: T;
  readonly #host: ReactiveControllerHost;
  readonly #store: Store;
  readonly #select: (state: AppState) => T;

  constructor(host: ReactiveControllerHost, store: Store, select: (state: AppState) => T) {
    this.#host = host;
    this.#store = store;
    this.#select = select;
    this.value = select(store.state);
    host.addController(this);
  }

  hostConnected(): void {
    this.#store.addEventListener('change', this.#update);
    this.#update();
  }

  hostDisconnected(): void {
    this.#store.removeEventListener('change', this.#update);
  }

  readonly #update = () => {
    const value = this.#select(this.#store.state);
    if (Object.is(value, this.value)) return;
    this.value = value;
    this.#host.requestUpdate();
  };
}
