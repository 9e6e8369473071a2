import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { keepShop, type OpenMemory, recallShop } from '../../src/app/shop-memory.ts';
import { Store } from '../../src/app/store.ts';
import {
  choicesOf,
  findSettingFault,
  parseShopSettings,
  SETTING_KEYS,
  SETTING_RANGES,
  type SettingKey,
  showShopSettings,
} from '../../src/core/intake/shop-settings.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import { Unreadable } from '../../src/core/model/raw.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../src/core/model/shop.ts';
import { SETTING_WORDS, showSetting } from '../../src/core/say/show-setting.ts';
import { planBasisSheet } from '../../src/io/write/basis-sheet.ts';
import { SETTING_GROUPS } from '../../src/ui/settings-fields.ts';

const NULLABLE: readonly SettingKey[] = ['pressKn', 'generalHoleToleranceMm', 'holeProcess'];

/** Every choice and both ends of every range, with a value inside, as the README lists them. */
const GOOD: { readonly [Key in SettingKey]: readonly ShopSettings[Key][] } = {
  thicknessStandard: ['as-written', 'us', 'en'],
  sheetWidth: ['narrow', 'medium', 'wide'],
  judgeThicknessAt: ['nominal', 'thinnest'],
  hardnessMarginHrb: [1, 12.5, 60],
  silence: ['note', 'unknown'],
  pressKn: [null, 1, 60, 10_000],
  generalHoleToleranceMm: [null, 0, 0.1, 5],
  holeProcess: [null, 'punched', 'drilled', 'laser', 'waterjet'],
  environment: ['controlled', 'indoor', 'outdoor'],
  pushOutSafety: [1, 1.5, 100],
  torqueOutSafety: [1, 2, 100],
  bendMultiplier: [1, 2.5, 10],
  sparesPercent: [0, 2.5, 1000],
  buildQuantity: [1, 250, 10_000_000],
  units: ['mm', 'in'],
};

/** Values of another kind, as JSON, which no setting takes. */
const NEVER = ['true', '[]', '{}', '""', '"20"', '"Nominal"', '-1', '1e999', '99999999'];

const parse = (json: string) => parseShopSettings(json, 'shop.json');

describe.each(SETTING_KEYS)('%s', (key) => {
  it.each(GOOD[key].map((value) => [JSON.stringify(value)]))('may be %s', (json) => {
    expect(parse(`{"${key}": ${json}}`)).toEqual({ ...DEFAULT_SHOP, [key]: JSON.parse(json) });
  });

  it('has a default that it may have', () => {
    expect(findSettingFault(key, DEFAULT_SHOP[key])).toBeNull();
  });

  it.each(NEVER)('may not be %s, and the sentence names file, setting and what to put', (json) => {
    expect(() => parse(`{"${key}": ${json}}`)).toThrow(Unreadable);
    expect(() => parse(`{"${key}": ${json}}`)).toThrow(
      /^“\w+” in “shop.json” is (one of .+|a (whole )?number from .+ to .+), not .+\.$/,
    );
    expect(() => parse(`{"${key}": ${json}}`)).toThrow(key);
  });

  it('may be null only where nothing said is an answer', () => {
    if (NULLABLE.includes(key)) expect(parse(`{"${key}": null}`)[key]).toBeNull();
    else expect(() => parse(`{"${key}": null}`)).toThrow('not null.');
  });

  it('is either a number in a range or one of several choices', () => {
    const range = SETTING_RANGES[key];
    expect(choicesOf(key).length > 1).toBe(range === undefined);
    if (!range) return expect(() => parse(`{"${key}": 1}`)).toThrow(`one of ${choicesOf(key).join(', ')}`);
    expect(() => parse(`{"${key}": ${range.least - 0.001}}`)).toThrow(`from ${range.least} to ${range.most}`);
    expect(() => parse(`{"${key}": ${range.most + 1}}`)).toThrow(`from ${range.least} to ${range.most}`);
    expect(findSettingFault(key, Number.NaN)).toContain(`from ${range.least}`);
  });

  it('is named and shown in plain words', () => {
    expect(SETTING_WORDS[key].name.length).toBeGreaterThan(3);
    for (const value of GOOD[key]) {
      const shown = showSetting(key, { ...DEFAULT_SHOP, [key]: value });
      expect(shown).not.toMatch(/null|undefined|NaN/);
      expect(shown.length).toBeGreaterThan(1);
    }
  });

  it('stands once in the form, with the origin of its default', () => {
    const fields = SETTING_GROUPS.flatMap((group) => group.fields).filter((field) => field.key === key);
    expect(fields).toHaveLength(1);
    expect(fields[0]?.origin.length).toBeGreaterThan(10);
  });
});

describe('a file of shop settings', () => {
  it.each(['', 'shop', '[1, 2]', 'null', '"nominal"', '20', '{"units": "in"'])(
    'that holds %s is refused in one sentence',
    (json) => {
      expect(() => parse(json)).toThrow(Unreadable);
      expect(() => parse(json)).toThrow('“shop.json” does not hold shop settings: a JSON object is expected');
    },
  );

  it.each(['hardnessMargin', '__proto__', 'constructor', ''])(
    'with the unknown setting “%s” is refused, naming those there are',
    (key) => {
      expect(() => parse(`{"${key}": 1}`)).toThrow(
        `a setting “${key}” that is not known; known are ${SETTING_KEYS.join(', ')}.`,
      );
    },
  );

  it('that says nothing gives the defaults', () => {
    expect(parse('{}')).toEqual(DEFAULT_SHOP);
  });

  it('as the app saves it holds every setting and reads back the same', () => {
    const lasts = Object.fromEntries(SETTING_KEYS.map((key) => [key, GOOD[key].at(-1)])) as unknown as ShopSettings;
    for (const shop of [DEFAULT_SHOP, lasts]) {
      expect(parse(showShopSettings(shop))).toEqual(shop);
      expect(Object.keys(JSON.parse(showShopSettings(shop)))).toEqual(SETTING_KEYS);
    }
  });
});

describe('settings between visits', () => {
  function memory(kept: string | null) {
    const cells = { kept };
    const open: OpenMemory = () => ({
      getItem: () => cells.kept,
      setItem: (_, value) => {
        cells.kept = value;
      },
    });
    return { cells, open };
  }

  it('are kept at each change and found again', () => {
    const { cells, open } = memory(null);
    const store = new Store();
    keepShop(store, open);
    expect(store.state.shop).toEqual(DEFAULT_SHOP);
    store.set({ search: 'nut' });
    expect(cells.kept).toBeNull();
    store.set({ shop: { ...DEFAULT_SHOP, pressKn: 60 } });
    expect(recallShop(open)).toEqual({ ...DEFAULT_SHOP, pressKn: 60 });
    const next = new Store();
    keepShop(next, open);
    expect(next.state.shop.pressKn).toBe(60);
  });

  it.each([null, '', 'nonsense', '[]', '{"oldSetting": 1}', '{"units": "furlong"}'])(
    'of the form %s give the defaults',
    (kept) => {
      expect(recallShop(memory(kept).open)).toEqual(DEFAULT_SHOP);
    },
  );

  it('live as long as the page where the browser keeps nothing', () => {
    const store = new Store();
    keepShop(store, () => {
      throw new Error('forbidden');
    });
    store.set({ shop: { ...DEFAULT_SHOP, units: 'in' } });
    expect(store.state.shop.units).toBe('in');
  });
});

describe('the basis sheet of an export', () => {
  it('lists every setting by its plain name', () => {
    const totals = { holds: 0, marginal: 0, fails: 0, unknown: 0 };
    const list: AuditedList = {
      file: 'list.csv',
      sheet: '',
      sheets: [],
      headerRow: 1,
      columns: [],
      catalogues: [],
      shop: { ...DEFAULT_SHOP, pressKn: 60 },
      notices: [],
      hiddenRows: 0,
      lines: [],
      others: [],
      totals,
    };
    const { rows: planned } = planBasisSheet('Basis', list, '2024-11-05');
    const rows = new Map([...planned()].map(({ cells: [name, value] }) => [name?.value, String(value?.value)]));
    for (const key of SETTING_KEYS)
      expect(rows.get(`Setting: ${SETTING_WORDS[key].name}`)).toBe(showSetting(key, list.shop));
    expect(rows.get('Setting: Press capacity')).toBe('60 kN');
    expect(rows.get('Setting: How holes are made where the list does not say')).toBe('not said');
  });
});

describe('the README', () => {
  it.each(SETTING_KEYS)('lists %s with what it may be and its default', (key) => {
    const row = readFileSync(resolve(import.meta.dirname, '../../README.md'), 'utf8')
      .split('\n')
      .find((line) => line.startsWith(`| \`${key}\` |`));
    const [, , may = '', standard = ''] = (row ?? '').split('|').map((cell) => cell.trim().replaceAll('`', ''));
    const range = SETTING_RANGES[key];
    const values = range ? [`${range.least} to ${range.most}`] : choicesOf(key).map((choice) => JSON.stringify(choice));
    const whole = range?.whole ? ['whole'] : [];
    expect(may).toBe([...whole, ...values, ...(NULLABLE.includes(key) ? ['null'] : [])].join(', '));
    expect(standard).toBe(JSON.stringify(DEFAULT_SHOP[key]));
  });
});
