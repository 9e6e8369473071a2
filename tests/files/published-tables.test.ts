import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { isBlank } from '../../src/io/csv/split.ts';
import { readFile } from '../../src/io/read-file.ts';
import { utf8 } from './make.ts';

type Rows = readonly (readonly string[])[];

interface PublishedCase {
  readonly description: string;
  readonly input: string;
  readonly config?: Readonly<Record<string, unknown>>;
  readonly expected: { readonly data: Rows };
}

/** Settings that our reader has under another name, or that change nothing about which cells there are. */
const SETTINGS: ReadonlySet<string> = new Set(['delimiter', 'newline', 'fastMode', 'skipEmptyLines']);

/**
 * Where our reader departs from the published outcome on purpose, and what it reads instead. Blank rows are always left
 * out, so their absence is no departure.
 */
const UNCLOSED = 'a quote that never closes is text of its own cell and must not swallow the cells and rows behind it';
const CONTROL = 'text full of control characters is taken for a binary file';
const DEPARTURES: Readonly<Record<string, { readonly why: string; readonly reads: Rows | RegExp }>> = {
  'Quoted field with whitespace around quotes': {
    why: 'spaces around a quoted cell are padding',
    reads: [['A', 'B', 'C']],
  },
  'Quoted field has no closing quote': {
    why: UNCLOSED,
    reads: [
      ['a', '"b', 'c'],
      ['d', 'e', 'f'],
    ],
  },
  'Quoted field has invalid trailing quote after delimiter with a valid closer': {
    why: UNCLOSED,
    reads: [
      ['"a', 'b,c'],
      ['d', 'e', 'f'],
    ],
  },
  'Quoted field has invalid trailing quote after delimiter': {
    why: UNCLOSED,
    reads: [
      ['a', '"b', '"c'],
      ['d', 'e', 'f'],
    ],
  },
  'Quoted field has invalid trailing quote before delimiter': {
    why: UNCLOSED,
    reads: [
      ['a', '"b"c', 'd'],
      ['e', 'f', 'g'],
    ],
  },
  'Quoted field has invalid trailing quote after new line': {
    why: UNCLOSED,
    reads: [
      ['a', '"b', 'c'],
      ['d"e', 'f', 'g'],
    ],
  },
  'Mixed slash n and slash r should choose first as precident': {
    why: 'lists pasted together mix line ends: each of them ends a row',
    reads: [
      ['a', 'b', 'c'],
      ['d', 'e', 'f'],
      ['g', 'h', 'i'],
    ],
  },
  'ASCII 30 delimiter': { why: CONTROL, reads: /neither text nor a workbook/ },
  'ASCII 31 delimiter': { why: CONTROL, reads: /neither text nor a workbook/ },
};

const tables = loadTables();
const cases = [...tables.core, ...tables.parse].filter(isOurs);

describe('published tables of the CSV library (papaparse 5.7.1)', () => {
  it('finds the tables', () => {
    expect([tables.core.length, tables.parse.length, cases.length]).toEqual([63, 98, 95]);
    expect(Object.keys(DEPARTURES).filter((name) => !cases.some(({ description }) => description === name))).toEqual(
      [],
    );
  });

  it.each(cases.map((one) => [one.description, one] as const))('%s', (description, { input, config, expected }) => {
    const wanted = DEPARTURES[description]?.reads ?? expected.data.filter((row) => !isBlank(row));
    const delimiter = config?.delimiter;
    const read = () => readFile(utf8(input), 'list.csv', typeof delimiter === 'string' ? { delimiter } : {});
    if (wanted instanceof RegExp) expect(read).toThrow(wanted);
    else if (wanted.length === 0) expect(read).toThrow(/is empty|nothing but blanks|no filled cells/);
    else expect(read().tables[0]?.rows.map((row) => row.cells)).toEqual(wanted);
  });
});

/** Cases whose settings our reader has: it names no columns, types nothing, knows no comments and skips no rows. */
function isOurs({ config = {}, expected }: PublishedCase): boolean {
  const isPlain = Object.keys(config).every((key) => SETTINGS.has(key) || (key === 'preview' && config[key] === 0));
  const { delimiter = ',' } = config;
  return isPlain && typeof delimiter === 'string' && delimiter.length === 1 && Array.isArray(expected.data);
}

/** The tables are part of a browser test: it runs here with everything around them left out. */
function loadTables(): { readonly core: readonly PublishedCase[]; readonly parse: readonly PublishedCase[] } {
  const file = join(import.meta.dirname, '../../node_modules/papaparse/tests/test-cases.js');
  const context = createContext({
    chai: {},
    Papa: { BYTE_ORDER_MARK: '\ufeff' },
    describe: Object.assign(() => {}, { skip: () => {} }),
  });
  const source = `${readFileSync(file, 'utf8')};[CORE_PARSER_TESTS, PARSE_TESTS]`;
  const [core, parse] = runInContext(source, context) as [PublishedCase[], PublishedCase[]];
  return structuredClone({ core: core.map(withoutFunctions), parse: parse.map(withoutFunctions) });
}

function withoutFunctions({ description, input, config, expected }: PublishedCase): PublishedCase {
  const settings = Object.entries(config ?? {}).map(([key, value]) => [
    key,
    typeof value === 'function' ? null : value,
  ]);
  return { description, input, config: Object.fromEntries(settings), expected: { data: expected.data } };
}
