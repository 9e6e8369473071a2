import { LitElement } from 'lit';
import type { Commands } from '../app/commands.ts';
import type { Store } from '../app/store.ts';
import { StoreController } from './store-controller.ts';

/** An element that shows the state and renders again when it changes; store and commands are given before it is put into the page. */
export class StoreElement extends LitElement {
  store!: Store;
  commands!: Commands;
  #followsStore = false;

  override connectedCallback(): void {
    super.connectedCallback();
    if (!this.#followsStore) new StoreController(this, this.store, (state) => state);
    this.#followsStore = true;
  }
}
