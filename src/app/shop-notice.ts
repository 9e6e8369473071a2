import { SETTING_KEYS } from '../core/intake/shop-settings.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import { SETTING_WORDS } from '../core/say/show-setting.ts';
import type { Message } from './state.ts';

/** Says that kept work has brought other shop settings along, since they judge every list from now on; null where they are the same. */
export function noticeShop(before: ShopSettings, after: ShopSettings): Message | null {
  const changed = SETTING_KEYS.filter((key) => key !== 'units' && before[key] !== after[key]);
  if (changed.length === 0) return null;
  const names = changed.map((key) => SETTING_WORDS[key].name).join(', ');
  return { kind: 'done', text: `The shop settings kept with this list are in force now; other than before: ${names}.` };
}
