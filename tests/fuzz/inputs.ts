import Papa from 'papaparse';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { type Base, makeBase, type Row } from './base.ts';
import { breakBytes, breakParts, type Written, writeText, writeWorkbook } from './break-bytes.ts';
import { breakText, CHANGES, type Changed, REWRITINGS } from './break-cells.ts';
import { breakJson } from './break-json.ts';
import { createRandom, type Random } from './random.ts';

/** One input and what may come of it. */
export interface Input {
  readonly what: string;
  readonly base: Base;
  readonly list: Written;
  readonly catalogue: Uint8Array;
  readonly shop: string;
  /** Row numbers in the file of rows of the base, as far as they are known to be as they were. */
  readonly kept: ReadonlyMap<number, Row>;
  /** Row numbers in the file of rows that cannot hold, because a cell that decides says nothing. */
  readonly blanked: ReadonlySet<number>;
  /** Every row must be judged as in the base. */
  readonly isSame: boolean;
  /** A project file, read beside. */
  readonly project: string | null;
}

const PROJECT = {
  app: 'clinchsheet',
  version: 1,
  savedAt: '2025-03-14T09:31:00.000Z',
  list: { name: 'a.csv', bytesBase64: 'YSxiCg==' },
  catalogues: [{ name: 'own.csv', bytesBase64: 'cGFydE51bWJlcgo=' }],
  shop: DEFAULT_SHOP,
  options: {
    sheet: 'S',
    headerRow: 4,
    roles: { 2: 'thickness' },
    units: { 2: 'in' },
    encoding: 'utf-8',
    delimiter: ';',
  },
  steps: [
    {
      name: 'edit',
      after: { cells: [{ row: 2, column: 2, text: '1' }] },
      before: { cells: [{ row: 2, column: 2, text: '' }] },
      when: '2025-03-14T09:30:00.000Z',
      by: 'Ada',
    },
    {
      name: 'columns',
      after: { columns: { roles: { 2: 'hole' }, units: {} } },
      before: { columns: { roles: {}, units: {} } },
      when: '',
      by: '',
    },
    {
      name: 'accept',
      after: {
        concessions: [
          {
            row: 3,
            rule: 'clinch/hardness',
            outcome: 'marginal',
            says: 'x',
            facts: 'a',
            reason: 'tested',
            by: 'Ada',
            date: '2025-03-14',
          },
        ],
      },
      before: { concessions: [] },
      when: '',
      by: '',
    },
  ],
  undone: [],
  filter: ['fails'],
  selectedRow: 7,
};

/** The input of a number, the same each time. Bases repeat, so that each is judged but once. */
export function makeInput(seed: number, number: number): Input {
  const base = baseOf(seed * BASES + (number % BASES));
  const random = createRandom(seed * 1_000_003 + number);
  const rows = base.rows.map(({ cells }) => ({ cells: [...cells] }));
  const origin = new Map<Row, Row>(rows.map((row, at) => [row, base.rows[at]!]));
  const changed = changeRows(rows, random);
  const list = random.oneIn(3) ? writeWorkbook(changed.rows, random) : writeText(changed.rows, random);
  const plain: Input = {
    what: `${changed.what}, ${list.what}`,
    base,
    list,
    catalogue: new TextEncoder().encode(base.catalogue),
    shop: '{}',
    kept: keptRows(changed, origin),
    blanked: new Set(changed.rows.flatMap((row, at) => (changed.blanked.has(row) ? [at + 1] : []))),
    isSame: changed.isSame,
    project: random.oneIn(10) ? breakJson(PROJECT, random) : null,
  };
  return random.oneOf(WAYS)(plain, random);
}

const BASES = 16;
const bases = new Map<number, Base>();

function baseOf(seed: number): Base {
  const base = bases.get(seed) ?? makeBase(createRandom(seed));
  bases.set(seed, base);
  return base;
}

function changeRows(rows: readonly Row[], random: Random): Changed {
  const before = random.oneIn(2) ? rows : random.oneOf(REWRITINGS)(rows, random).rows;
  return random.oneOf(CHANGES)(before, random);
}

function keptRows({ rows, untouched }: Changed, origin: ReadonlyMap<Row, Row>): ReadonlyMap<number, Row> {
  const kept = new Map<number, Row>();
  rows.forEach((row, at) => {
    const was = origin.get(row);
    if (was !== undefined && untouched.has(row)) kept.set(at + 1, was);
  });
  return kept;
}

type Way = (input: Input, random: Random) => Input;

/** What is broken: only the cells, mostly; else the bytes, the parts of the workbook, the catalogue or the settings. */
const WAYS: readonly Way[] = [
  cellsOnly,
  cellsOnly,
  cellsOnly,
  cellsOnly,
  cellsOnly,
  listBytes,
  listBytes,
  listParts,
  catalogueBytes,
  catalogueCells,
  shopSettings,
];

function cellsOnly(input: Input): Input {
  return input;
}

/** What rows come to is open, but for those that `blanked` names. */
function unknown(input: Input, what: string, blanked: ReadonlySet<number> = new Set()): Input {
  return { ...input, what: `${input.what}; ${what}`, kept: new Map(), blanked, isSame: false };
}

/** A workbook holds a checksum of each part: whatever is still read from broken bytes is what was written. */
function listBytes(input: Input, random: Random): Input {
  const { what, bytes } = breakBytes(input.list.bytes, random);
  const broken = { ...input, list: { ...input.list, bytes } };
  if (input.list.name === 'list.csv') return unknown(broken, what);
  return { ...broken, what: `${input.what}; ${what}`, isSame: false };
}

function listParts(input: Input, random: Random): Input {
  if (input.list.name === 'list.csv') return listBytes(input, random);
  const { what, bytes } = breakParts(input.list.bytes, random);
  return unknown({ ...input, list: { ...input.list, bytes } }, what);
}

function catalogueBytes(input: Input, random: Random): Input {
  const { what, bytes } = breakBytes(input.catalogue, random);
  return unknown({ ...input, catalogue: bytes }, `catalogue ${what}`, input.blanked);
}

function catalogueCells(input: Input, random: Random): Input {
  const rows = Papa.parse<string[]>(input.base.catalogue).data;
  for (let times = 1 + random.below(6); times > 0; times--) {
    const cells = random.oneOf(rows);
    const at = random.below(cells.length);
    cells[at] = breakText(cells[at] ?? '', random);
  }
  const list = rows.map((cells) => ({ cells }));
  const { bytes } = random.oneIn(3) ? writeWorkbook(list, random) : writeText(list, random);
  return unknown({ ...input, catalogue: bytes }, 'catalogue with broken cells', input.blanked);
}

function shopSettings(input: Input, random: Random): Input {
  return unknown({ ...input, shop: breakJson(DEFAULT_SHOP, random) }, 'settings broken', input.blanked);
}
