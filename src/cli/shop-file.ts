import { Unreadable } from '../core/model/raw.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../core/model/shop.ts';

const CHOICES: Readonly<Partial<Record<keyof ShopSettings, readonly string[]>>> = {
  thicknessStandard: ['as-written', 'us', 'en'],
  sheetWidth: ['narrow', 'medium', 'wide'],
  judgeThicknessAt: ['nominal', 'thinnest'],
  silence: ['note', 'unknown'],
  units: ['mm', 'in'],
};

/** Reads shop settings from JSON; what is not given keeps its default. Throws `Unreadable` naming file, setting and what to put. */
export function parseShop(json: string, file: string): ShopSettings {
  const given = parseObject(json, file);
  for (const [key, value] of Object.entries(given)) checkSetting(key, value, file);
  return { ...DEFAULT_SHOP, ...(given as Partial<ShopSettings>) };
}

function parseObject(json: string, file: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(json);
    if (value !== null && typeof value === 'object' && !Array.isArray(value)) return value as Record<string, unknown>;
  } catch {
    // falls through to the one sentence below
  }
  throw new Unreadable(
    `“${file}” does not hold shop settings: a JSON object is expected, such as {"judgeThicknessAt": "thinnest"}.`,
  );
}

function checkSetting(key: string, value: unknown, file: string): void {
  if (!Object.hasOwn(DEFAULT_SHOP, key)) {
    throw new Unreadable(
      `“${file}” has a setting “${key}” that is not known; known are ${Object.keys(DEFAULT_SHOP).join(', ')}.`,
    );
  }
  const choices = CHOICES[key as keyof ShopSettings];
  if (choices && !choices.includes(value as string)) {
    throw new Unreadable(`“${key}” in “${file}” is one of ${choices.join(', ')}, not ${JSON.stringify(value)}.`);
  }
  if (!choices && !(typeof value === 'number' && Number.isFinite(value) && value > 0)) {
    throw new Unreadable(`“${key}” in “${file}” is a number above zero, not ${JSON.stringify(value)}.`);
  }
}
