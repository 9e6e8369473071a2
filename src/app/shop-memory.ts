import { parseShopSettings, showShopSettings } from '../core/intake/shop-settings.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../core/model/shop.ts';
import type { Store } from './store.ts';

/** Where settings are kept between visits; opening it may throw where the browser forbids it. */
export type OpenMemory = () => Pick<Storage, 'getItem' | 'setItem'>;

const KEY = 'clinchsheet-shop-settings';

/** Starts from the settings of the last visit, and keeps every change for the next one. */
export function keepShop(store: Store, open: OpenMemory): void {
  let kept = recallShop(open);
  store.set({ shop: kept });
  store.addEventListener('change', () => {
    const { shop } = store.state;
    if (shop === kept) return;
    kept = shop;
    rememberShop(shop, open);
  });
}

/** Settings of the last visit; the defaults where there are none, or they are of a form that is no longer understood. */
export function recallShop(open: OpenMemory): ShopSettings {
  try {
    const json = open().getItem(KEY);
    return json === null ? DEFAULT_SHOP : parseShopSettings(json, KEY);
  } catch {
    return DEFAULT_SHOP;
  }
}

function rememberShop(shop: ShopSettings, open: OpenMemory): void {
  try {
    open().setItem(KEY, showShopSettings(shop));
  } catch {
    // Without memory the settings live as long as the page.
  }
}
