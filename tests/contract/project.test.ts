import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseBase64, showBase64 } from '../../src/app/base64.ts';
import type { Step } from '../../src/app/history.ts';
import { isProject, parseProject } from '../../src/app/parse-project.ts';
import { cellsAfter, type OpenWork, showProject, showProjectAlone, toProject } from '../../src/app/project.ts';
import type { ShelfEntry } from '../../src/app/shelf.ts';
import { makeRoom } from '../../src/app/shelf-room.ts';
import { noticeShop } from '../../src/app/shop-notice.ts';
import { EMPTY_STATE } from '../../src/app/state.ts';
import { Unreadable } from '../../src/core/model/raw.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import type { HandedFile } from '../../src/worker/protocol.ts';

const SCHEMA = JSON.parse(readFileSync(resolve(import.meta.dirname, '../../src/app/project.schema.json'), 'utf8'));
const validate = new Ajv2020({ allErrors: true }).compile(SCHEMA);

const made = { when: '2025-03-14T09:30:00.000Z', by: 'Ada' };
const setCell = (text: string, before: string): Step => ({
  name: 'edit Thk in row 2',
  after: { cells: [{ row: 2, column: 2, text }] },
  before: { cells: [{ row: 2, column: 2, text: before }] },
  ...made,
});
const STEPS: readonly Step[] = [
  setCell('1.5', '0.5'),
  {
    name: 'set column Thk to inches',
    after: { columns: { roles: { 2: 'thickness' }, units: { 2: 'in' } } },
    before: { columns: { roles: {}, units: {} } },
    ...made,
  },
  {
    name: 'accept hardness in row 3',
    after: {
      concessions: [
        {
          row: 3,
          rule: 'clinch/hardness',
          outcome: 'marginal',
          says: 'Sheet HRB 68',
          facts: 'a',
          reason: 'tested',
          by: 'Ada',
          date: '2025-03-14',
        },
      ],
    },
    before: { concessions: [] },
    ...made,
  },
];
const UNDONE: readonly Step[] = [
  { name: 'shop', after: { shop: { ...DEFAULT_SHOP, pressKn: 60 } }, before: { shop: DEFAULT_SHOP }, ...made },
];
const LIST = Uint8Array.from({ length: 60_000 }, (_, at) => (at * 7) % 256);
const CATALOGUE = new TextEncoder().encode('partNumber\nÜ-1\n');

const work: OpenWork = {
  list: { name: 'gehäuse.xlsx', data: new Blob([LIST]) },
  catalogues: [{ name: 'own.csv', data: new Blob([CATALOGUE]) }],
  options: {
    sheet: 'Hardware',
    headerRow: 4,
    roles: { 2: 'thickness' },
    units: { 2: 'in' },
    encoding: 'shift_jis',
    delimiter: ';',
  },
  history: { done: STEPS, undone: UNDONE },
  isFiled: false,
  kept: { top: {}, options: {} },
};
const shop = { ...DEFAULT_SHOP, hardnessMarginHrb: 18 };
const state = { ...EMPTY_STATE, shop, filter: new Set(['fails', 'unknown'] as const), selectedRow: 7 };
const project = toProject(work, state, '2025-03-14T09:31:00.000Z');
const SMALLEST = { app: 'clinchsheet', version: 1, list: { name: 'a.csv', bytesBase64: 'YSxiCg==' } };

const bytesOf = async ({ data }: HandedFile) => new Uint8Array(await data.arrayBuffer());
const refusalOf = (value: unknown): string => {
  try {
    parseProject(typeof value === 'string' ? value : JSON.stringify(value), 'x-work.json');
  } catch (error) {
    expect(error).toBeInstanceOf(Unreadable);
    return (error as Error).message;
  }
  throw new Error('was not refused');
};

describe('a project file', () => {
  it('reads back as it was written, byte for byte', async () => {
    const text = await showProject(project);
    const back = parseProject(text, 'x-work.json');
    expect({ ...back, list: null, catalogues: null }).toEqual({ ...project, list: null, catalogues: null });
    expect(back.list.name).toBe('gehäuse.xlsx');
    expect(await bytesOf(back.list)).toEqual(LIST);
    expect(back.catalogues.map(({ name }) => name)).toEqual(['own.csv']);
    expect(await bytesOf(back.catalogues[0]!)).toEqual(CATALOGUE);
    expect(await showProject(back)).toBe(text);
  });

  it('is as the shipped schema says, which refuses another shape', async () => {
    const written = JSON.parse(await showProject(project));
    expect(validate(written), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
    expect(validate(SMALLEST)).toBe(true);
    expect(validate({ ...written, version: 2 })).toBe(false);
    expect(validate({ ...written, list: { name: 'a.csv' } })).toBe(false);
    expect(validate({ ...written, steps: [{ name: 'edit', after: {}, before: {} }] })).toBe(false);
    expect(
      validate({ ...written, steps: [{ ...STEPS[0], after: { cells: [{ row: 0, column: 0, text: '' }] } }] }),
    ).toBe(false);
    expect(Object.keys(SCHEMA.properties).sort()).toEqual(Object.keys(written).sort());
  });

  it('of an earlier version opens; what is missing has its default, what is not known is written back', async () => {
    const colour = { colour: 'blue', nested: [1, { a: null }] };
    const step = { ...setCell('1.5', '0.5'), colour };
    const { when: _, by: __, ...withoutOrigin } = step;
    const given = {
      ...SMALLEST,
      version: 0,
      colour,
      list: { ...SMALLEST.list, colour },
      options: { colour },
      shop: { pressKn: 60, colour },
      steps: [withoutOrigin],
    };
    const back = parseProject(JSON.stringify(given), 'old-work.json');
    expect(back).toMatchObject({ savedAt: '', catalogues: [], undone: [], filter: [], selectedRow: null });
    expect(back.shop).toMatchObject({ ...DEFAULT_SHOP, pressKn: 60 });
    expect(back.options).toEqual({ roles: {}, units: {} });
    expect(back.steps[0]).toMatchObject({ name: 'edit Thk in row 2', when: '', by: '' });

    const again = {
      ...work,
      list: back.list,
      options: back.options,
      kept: back.kept,
      history: { done: back.steps, undone: [] },
    };
    const written = JSON.parse(await showProject(toProject(again, { ...state, shop: back.shop }, '')));
    expect(written.version).toBe(1);
    for (const place of [written, written.list, written.options, written.shop, written.steps[0]])
      expect(place.colour).toEqual(colour);
    expect(validate(written)).toBe(true);
  });

  it('of a newer version is refused with what to do', () => {
    expect(refusalOf({ ...SMALLEST, version: 2, list: 'another form' })).toBe(
      '“x-work.json” was made by a newer version of Clinchsheet: update the app, then open it again.',
    );
  });

  it.each([
    ['broken off', JSON.stringify(SMALLEST).slice(0, 40), /breaks off or is garbled at character 40 of 40/],
    ['garbled', '{"app":"clinchsheet",,}', /garbled at character 21 of/],
    ['no version', { ...SMALLEST, version: undefined }, /does not say its version/],
    ['no list', { ...SMALLEST, list: undefined }, /list is missing/],
    ['no bytes', { ...SMALLEST, list: { name: 'a.csv' } }, /list\.bytesBase64 is missing/],
    [
      'bytes garbled',
      { ...SMALLEST, list: { name: 'a.csv', bytesBase64: '%%' } },
      /list\.bytesBase64 has to be base64/,
    ],
    ['a catalogue damaged', { ...SMALLEST, catalogues: [7] }, /catalogues\[0\] has to be an object, not 7/],
    ['a setting out of range', { ...SMALLEST, shop: { pressKn: -1 } }, /shop\.pressKn has to be .*not -1/],
    ['a meaning unknown', { ...SMALLEST, options: { roles: { 1: 'colour' } } }, /options\.roles\.1 has to be one of/],
    ['a column of no number', { ...SMALLEST, options: { units: { x: 'mm' } } }, /options\.units, its key/],
    ['a step without name', { ...SMALLEST, steps: [{}] }, /steps\[0\]\.name is missing/],
    ['a step that sets nothing', { ...SMALLEST, undone: [{ name: 'a', after: {} }] }, /undone\[0\]\.after has to be/],
    [
      'a cell far out',
      { ...SMALLEST, steps: [{ name: 'a', after: { cells: [{ row: 1, column: 1e9, text: '' }] } }] },
      /cells\[0\]\.column has to be a whole number from 0 to 16383, not 1000000000/,
    ],
    ['a verdict unknown', { ...SMALLEST, filter: ['fine'] }, /filter\[0\] has to be one of fails/],
    ['a row of no number', { ...SMALLEST, selectedRow: 1.5 }, /selectedRow has to be a whole number/],
  ])('that is damaged (%s) is refused with what and where', (_, value, sentence) => {
    const said = refusalOf(value);
    expect(said).toMatch(/^“x-work\.json” is damaged: /);
    expect(said).toMatch(sentence);
  });

  it.each(['null', '7', '[]', '{}', '{"pressKn":60}', '{"app":"other","version":1}'])('is not what %s is', (text) => {
    expect(refusalOf(text)).toMatch(/is no project of this app: open a list/);
  });

  it('is known by its ending or its beginning', async () => {
    const file = (name: string, text: string) => ({ name, data: new Blob([text]) });
    const text = await showProject(project);
    expect(await isProject(file('a-work (1).JSON', ''))).toBe(true);
    expect(await isProject(file('a-work.txt', text))).toBe(true);
    expect(await isProject(file('a.csv', 'Part number;{"app":"clinchsheet"}'))).toBe(false);
  });
});

describe('a project beside its files', () => {
  it('holds neither list nor catalogues, and takes them as they are handed in', () => {
    const alone = showProjectAlone(project);
    expect(alone).not.toContain('bytesBase64');
    const back = parseProject(alone, 'gehäuse.xlsx', work);
    expect(back).toEqual(project);
    expect(back.list).toBe(work.list);
  });
});

describe('cells after steps', () => {
  it('hold the last text of each', () => {
    expect(cellsAfter([setCell('1.5', '0.5'), ...STEPS.slice(1), setCell('2', '1.5')])).toEqual([
      { row: 2, column: 2, text: '2' },
    ]);
  });
});

describe('base64', () => {
  it('gives back any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(parseBase64(showBase64(bytes))).toEqual(bytes);
      }),
    );
    expect(showBase64(LIST)).toBe(Buffer.from(LIST).toString('base64'));
  });
});

describe('the shelf', () => {
  const entry = (id: string, more: Partial<ShelfEntry> = {}): ShelfEntry => ({
    id,
    name: `${id}.csv`,
    savedAt: '',
    totals: { holds: 0, marginal: 0, fails: 0, unknown: 0 },
    steps: 1,
    fileBytes: 10,
    bytes: 1_000_000,
    stamp: id,
    ...more,
  });
  const many = (count: number, more: Partial<ShelfEntry> = {}) =>
    Array.from({ length: count }, (_, at) => entry(`e${at}`, more));
  const ids = (entries: readonly ShelfEntry[]) => entries.map(({ id }) => id);

  it('keeps twenty lists, the oldest go', () => {
    expect(ids(makeRoom(many(20), entry('e0')))).toEqual([]);
    expect(ids(makeRoom(many(22), entry('e0')))).toEqual(['e20', 'e21']);
  });

  it('keeps so many bytes, and always the one just put', () => {
    const large = many(5, { bytes: 60_000_000 });
    expect(ids(makeRoom(large, large[4]!))).toEqual(['e2', 'e3']);
    const huge = entry('huge', { bytes: 900_000_000 });
    expect(ids(makeRoom([huge], huge))).toEqual([]);
  });

  it('keeps one opening of a file on which nothing was done', () => {
    const same = { name: 'a.csv', steps: 0 };
    const entries = [entry('new', same), entry('old', same), entry('worked', { ...same, steps: 1 })];
    expect(ids(makeRoom(entries, entries[0]!))).toEqual(['old']);
  });
});

describe('shop settings that come with kept work', () => {
  it('are named where they differ; the unit shown is of no weight', () => {
    expect(noticeShop(DEFAULT_SHOP, { ...DEFAULT_SHOP, units: 'in' })).toBeNull();
    expect(noticeShop(DEFAULT_SHOP, { ...DEFAULT_SHOP, pressKn: 60 })?.text).toMatch(/other than before: .*press/i);
  });
});
