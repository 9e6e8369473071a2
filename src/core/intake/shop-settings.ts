import { Unreadable } from '../model/raw.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../model/shop.ts';
import { shorten } from '../say/shorten.ts';
import { SETTING_WORDS } from '../say/show-setting.ts';
import { parseJson } from './parse-json.ts';

export type SettingKey = keyof ShopSettings;

/** Numbers that a setting may have, both ends included. */
export interface SettingRange {
  readonly least: number;
  readonly most: number;
  readonly whole?: true;
}

/** Ranges of the settings that are numbers: wide enough for any shop, narrow enough to catch a slip. All are our judgement. */
export const SETTING_RANGES: Readonly<Partial<Record<SettingKey, SettingRange>>> = {
  hardnessMarginHrb: { least: 1, most: 60 },
  pressKn: { least: 1, most: 10_000 },
  generalHoleToleranceMm: { least: 0, most: 5 },
  pushOutSafety: { least: 1, most: 100 },
  torqueOutSafety: { least: 1, most: 100 },
  bendMultiplier: { least: 1, most: 10 },
  sparesPercent: { least: 0, most: 1000 },
  buildQuantity: { least: 1, most: 10_000_000, whole: true },
};

/** Characters of a settings file; all settings take a hundredth of it. */
const LONGEST = 100_000;

/** Characters of a value that a sentence repeats. */
const LONGEST_QUOTE = 80;

/** Every setting, in the order of the defaults. */
export const SETTING_KEYS = Object.keys(DEFAULT_SHOP) as readonly SettingKey[];

/**
 * Reads shop settings from JSON, as written by hand or saved by the app; what is not given keeps its default. Throws `Unreadable`
 * with a sentence that names file, setting and what to put.
 */
export function parseShopSettings(json: string, file: string): ShopSettings {
  const given = parseObject(json, file);
  for (const [key, value] of Object.entries(given)) {
    if (!isSettingKey(key)) {
      throw new Unreadable(`“${file}” has a setting “${key}” that is not known; known are ${SETTING_KEYS.join(', ')}.`);
    }
    const wanted = findSettingFault(key, value);
    if (wanted) throw new Unreadable(`“${key}” in “${file}” is ${wanted}, not ${quoteValue(value)}.`);
  }
  return { ...DEFAULT_SHOP, ...(given as Partial<ShopSettings>) };
}

/** Settings as JSON that reads back as the same settings. */
export function showShopSettings(shop: ShopSettings): string {
  return `${JSON.stringify(Object.fromEntries(SETTING_KEYS.map((key) => [key, shop[key]])), null, 2)}\n`;
}

/** Nothing where the value may be put into the setting; else what may: "a number from 1 to 60". */
export function findSettingFault(key: SettingKey, value: unknown): string | null {
  const mayBeNull = 'none' in SETTING_WORDS[key];
  if (value === null && mayBeNull) return null;
  const range = SETTING_RANGES[key];
  const choices = choicesOf(key);
  if (range ? isWithin(value, range) : choices.includes(value as string)) return null;
  return `${range ? showRange(range) : `one of ${choices.join(', ')}`}${mayBeNull ? ' or null' : ''}`;
}

/** Values that a setting with choices may have; none where it is a number. */
export function choicesOf(key: SettingKey): readonly string[] {
  const words = SETTING_WORDS[key];
  return 'choices' in words ? Object.keys(words.choices) : [];
}

/** As it stands in the file; JSON has no way to write a number that is too large. */
function quoteValue(value: unknown): string {
  if (typeof value === 'number') return String(value);
  return shorten(JSON.stringify(value), LONGEST_QUOTE);
}

function isSettingKey(key: string): key is SettingKey {
  return Object.hasOwn(DEFAULT_SHOP, key);
}

function isWithin(value: unknown, { least, most, whole }: SettingRange): boolean {
  if (typeof value !== 'number' || !Number.isFinite(value) || (whole && !Number.isInteger(value))) return false;
  return value >= least && value <= most;
}

function showRange({ least, most, whole }: SettingRange): string {
  return `a ${whole ? 'whole ' : ''}number from ${least} to ${most}`;
}

function parseObject(json: string, file: string): Readonly<Record<string, unknown>> {
  const expected = `“${file}” does not hold shop settings: a JSON object is expected, such as {"judgeThicknessAt": "thinnest"}.`;
  if (json.length > LONGEST) {
    const size = `${LONGEST.toLocaleString('en-US')} characters`;
    throw new Unreadable(
      `“${file}” does not hold shop settings: it has more than ${size}, and all settings take a hundredth of that; choose the file with your settings.`,
    );
  }
  const value = parseOr(json, expected);
  if (value === null || typeof value !== 'object' || Array.isArray(value)) throw new Unreadable(expected);
  return value as Record<string, unknown>;
}

function parseOr(json: string, expected: string): unknown {
  try {
    return parseJson(json);
  } catch {
    throw new Unreadable(expected);
  }
}
