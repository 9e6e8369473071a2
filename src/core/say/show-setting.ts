import type { ShopSettings } from '../model/shop.ts';

type Value<Key extends keyof ShopSettings> = ShopSettings[Key];
type Chosen<Key extends keyof ShopSettings> = Extract<Value<Key>, string>;

/** A setting in plain words: what it is called, and its choices, or the unit of its number. */
type SettingWords<Key extends keyof ShopSettings> = {
  readonly name: string;
} & ([Chosen<Key>] extends [never]
  ? { readonly unit: string }
  : { readonly choices: Readonly<Record<Chosen<Key>, string>> }) &
  (null extends Value<Key> ? { /** What null means. */ readonly none: string } : object);

/** Every setting in plain words, the same on screen and in exports. */
export const SETTING_WORDS: { readonly [Key in keyof ShopSettings]: SettingWords<Key> } = {
  thicknessStandard: {
    name: 'Mill tolerance',
    choices: { 'as-written': 'by the way the thickness is written', us: 'always ASTM', en: 'always EN' },
  },
  sheetWidth: {
    name: 'Width of the sheet as bought',
    choices: { narrow: 'narrow', medium: 'medium', wide: 'wide' },
  },
  judgeThicknessAt: {
    name: 'Minimum sheet is compared with',
    choices: { nominal: 'the nominal thickness', thinnest: 'the thinnest that the mill may deliver' },
  },
  hardnessMarginHrb: { name: 'Sheet softer than the fastener by at least', unit: 'HRB points' },
  silence: {
    name: 'A list that is silent about hole and edge',
    choices: { note: 'gets a note with what to call out', unknown: 'is unknown until it says' },
  },
  pressKn: { name: 'Press capacity', unit: 'kN', none: 'not said: forces are only stated' },
  generalHoleToleranceMm: {
    name: 'Tolerance of a hole given without one, plus and minus',
    unit: 'mm',
    none: 'not said: judged by its nominal size',
  },
  holeProcess: {
    name: 'How holes are made where the list does not say',
    choices: { punched: 'punched', drilled: 'drilled', laser: 'laser cut', waterjet: 'waterjet cut' },
    none: 'not said',
  },
  environment: {
    name: 'Where the assembly lives',
    choices: {
      controlled: 'indoors, climate controlled',
      indoor: 'indoors, not controlled',
      outdoor: 'outdoors or in salt',
    },
  },
  pushOutSafety: { name: 'Rated push-out over required push-out, at least', unit: 'times' },
  torqueOutSafety: { name: 'Rated torque-out over required torque-out, at least', unit: 'times' },
  bendMultiplier: { name: 'Hole edge clear of the bend tangent by', unit: 'sheet thicknesses' },
  sparesPercent: { name: 'Spare parts on top', unit: '%' },
  buildQuantity: { name: 'The list is built', unit: 'times' },
  units: { name: 'Lengths are shown in', choices: { mm: 'mm', in: 'inches' } },
};

/** What a setting stands at, in words: "20 HRB points", "the nominal thickness". */
export function showSetting(key: keyof ShopSettings, shop: ShopSettings): string {
  const value = shop[key];
  const words: { choices?: Readonly<Record<string, string>>; unit?: string; none?: string } = SETTING_WORDS[key];
  if (value === null) return words.none ?? '';
  return typeof value === 'number' ? `${value} ${words.unit}` : (words.choices?.[value] ?? value);
}
