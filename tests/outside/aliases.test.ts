import { describe, expect, it } from 'vitest';
import { parseMaterial } from '../../src/core/intake/material.ts';
import { materialKey } from '../../src/core/intake/material-text.ts';
import { aliasTables } from '../../src/core/reference/aliases/index.ts';
import { findAlloy } from '../../src/core/reference/alloys/index.ts';
import { readTable } from './read-table.ts';

/** Alloys of our tables that a group of names may stand for. */
const ALLOYS: Readonly<Record<string, string>> = {
  '304': '304',
  '304l': '304l',
  '301': '301',
  '316': '316',
  '316l': '316l',
  '430': '430',
  '410': '410',
  crs: 'crs dc01 spcc a109',
  dq: 'crs dc03 spcd',
  dqsk: 'crs dc04 dc05 dc06 spce',
  hr: 'hrpo a36 dd11 dd13 sphc s235jr',
  hsla: 'hslas50 hslas60 hslas80 s355mc s420mc s500mc hc260la hc340la hc420la',
  gi: 'gi dx51d dx52d dx53d s250gd s320gd s350gd sgcc',
  ga: 'ga',
  eg: 'secc dc01ze',
  al1100: '1100 1050a',
  al3003: '3003',
  al5052: '5052',
  al5754: '5754',
  al5083: '5083',
  al6061: '6061',
  al6082: '6082',
  al2024: '2024',
  al7075: '7075',
  cu: 'c110',
  br: 'c260',
  br2: 'cuzn37',
  pb: 'c510',
  ti2: 'ti-gr2',
};

/** Names that are not read as an alloy of their group, with the reason. */
const NOT_READ: readonly (readonly [reason: string, ...variants: readonly string[]])[] = [
  ['a fastener name; A2 is a tool steel too', '304 A2', '316 A4', '410 C1'],
  ['a temper without an alloy', '301 +C700', '301 +C850', '301 +C1000', '301 +C1150', '301 +C1300'],
  [
    'two characters that mean nothing alone',
    'crs 08',
    'al1100 L5-1',
    'al1100 L3',
    'al1100 1C',
    'al1100 1B',
    'al3003 N3',
  ],
  ['two characters that mean nothing alone', 'al5083 N8', 'al6061 H20', 'al6082 H30', 'al2024 L97', 'al2024 DTD'],
  ['two characters that mean nothing alone', 'al7075 LC4', 'al7075 L95', 'ti2 GR.2'],
  [
    'grades of which no hardness is held',
    'hsla 1.0972',
    'hsla SAPH440',
    'hsla SPFH590',
    'hsla SPFC440/590',
    'gi SGC340',
  ],
  ['a range of grades, not one', 'hsla S315MC-S500MC', 'hsla QStE 340/420/500 TM', 'hsla ZStE', 'gi S220GD+Z-S350GD+Z'],
  ['a coating weight without a steel', 'ga A40', 'ga A60'],
  ['the grade has its own row, whatever zinc is on it', 'ga DX51D+ZF', 'ga DX53D+ZF', 'ga SGCC'],
];
const notRead: ReadonlyMap<string, string> = new Map(
  NOT_READ.flatMap(([reason, ...variants]) => variants.map((variant) => [variant, reason] as const)),
);

/** Alloys of fasteners of which no sheet is tabled: their names must not fall to another stainless. */
const NO_SHEET = new Set(['302', '303', '305', '416', '17-4ph']);
const SHARED_WITH_301 = new Set(['X10CrNi18-8', '1.4310']);

/** Printed inside a longer name: "AISI 301", "DX51D+Z". */
const PARTS_PRINTED = new Set(['304', '301', '316', 'DX51D', 'DX52D', 'DX53D']);

const alloysOf = (text: string) => [...new Set(parseMaterial(text).candidates.map((id) => findAlloy(id)!.alloy))];

describe('names of sheet alloys, from the second transcription', () => {
  const rows = readTable('aliases');

  it.each(rows.filter(({ alloy }) => !NO_SHEET.has(alloy!)))('$alloy: $variant', ({ alloy, variant }) => {
    const wanted = ALLOYS[alloy!]!.split(' ');
    const read = alloysOf(variant!).some((found) => wanted.includes(found));
    expect(read, notRead.get(`${alloy} ${variant}`)).toBe(!notRead.has(`${alloy} ${variant}`));
  });

  it.each(rows.filter(({ alloy, variant }) => NO_SHEET.has(alloy!) && !SHARED_WITH_301.has(variant!)))(
    'no sheet of $alloy: $variant',
    ({ variant }) => {
      expect(parseMaterial(variant!)).toMatchObject({ candidates: [], how: 'unreadable' });
    },
  );

  it('reads no name as a metal of another family than its group', () => {
    const strays = rows.filter(({ alloy, variant }) => {
      const wanted = (ALLOYS[alloy!] ?? '301').split(' ').map((name) => familyOf(name));
      const plain = wanted.every((family) => /^(carbon|galvanized|galvannealed)-steel$/.test(family));
      const found = parseMaterial(variant!).candidates.map((id) => findAlloy(id)!.family);
      return !found.every((family) => wanted.includes(family) || (plain && /^(carbon|galvan\w+)-steel$/.test(family)));
    });
    expect(strays.map(({ alloy, variant }) => `${alloy} ${variant}`)).toEqual([]);
  });

  it('marks no name better than the second transcription does', () => {
    const printed = new Set(rows.filter(({ mark }) => mark === 'printed').map(({ variant }) => materialKey(variant!)));
    const known = new Set(rows.map(({ variant }) => materialKey(variant!)));
    const upgraded = aliasTables
      .flatMap((table) => table.rows.filter(({ mark }) => mark === 'printed').flatMap(({ words }) => words))
      .filter((word) => known.has(materialKey(word)) && !printed.has(materialKey(word)) && !PARTS_PRINTED.has(word));
    expect(upgraded).toEqual([]);
  });

  it.each(['L97', 'L95', 'H30', 'N8', '1C'])('takes %s beside the word aluminium', (name) => {
    expect(parseMaterial(`aluminium ${name}`).family).toBe('aluminium');
  });
});

const familyOf = (alloy: string): string =>
  ({ hrpo: 'carbon-steel', crs: 'carbon-steel', gi: 'galvanized-steel', ga: 'galvannealed-steel' })[alloy] ??
  [
    alloy,
    `${alloy}-h14`,
    `${alloy}-h32`,
    `${alloy}-o`,
    `${alloy}-lc`,
    `${alloy}-s`,
    `${alloy}-t3`,
    `${alloy}-h02`,
    `${alloy}-t2`,
  ]
    .map((id) => findAlloy(id)?.family)
    .find((family) => family !== undefined) ??
  '';

describe('written limits that differ', () => {
  // JIS G4305 as restated: SUS304 and SUS316 HRB 90, SUS430 HRB 88; EN 10088-2 limits no flat austenitics.
  it.each([
    ['SUS304', 'JIS G4305', 90],
    ['SUS 304L-2B', 'JIS G4305', 90],
    ['SUS316', 'JIS G4305', 90],
    ['SUS316L', 'JIS G4305', 90],
    ['SUS430', 'JIS G4305', 88],
  ] as const)('%s: %s, HRB %d', (text, standard, value) => {
    expect(parseMaterial(text).writtenLimit).toEqual({ standard, max: { scale: 'HRB', value } });
  });

  it.each(['1.4301', 'X5CrNi18-10', '1.4404', '1.4016'])('%s: no limit in EN 10088-2', (text) => {
    expect(parseMaterial(text).writtenLimit).toEqual({ standard: 'EN 10088-2', max: null });
  });

  it.each(['304', '06Cr19Ni10', 'AISI 316L', '5052-H32', 'SUS301', '1.4310+C1000'])('%s: none of its own', (text) => {
    expect(parseMaterial(text).writtenLimit).toBeUndefined();
  });
});

describe('temper words, from the second transcription', () => {
  /** An alloy whose sheet is tabled in that temper. */
  const HOLDERS: Readonly<Record<string, string>> = {
    O: '5052',
    SOFT: '5052',
    ANN: '304',
    ANNEALED: '304',
    'DEAD SOFT': '304',
    '1/8H': '304',
    '1/4H': '301',
    '1/4 HARD': '301',
    QH: '301',
    '1/2H': '301',
    HH: '301',
    'HALF HARD': '301',
    '3/4H': '301',
    FH: '301',
    'FULL HARD': '301',
    HARD: '301',
    EH: 'C510',
    H12: '5754',
    H14: '3003',
    H18: '5754',
    H22: '5754',
    H24: '5754',
    H32: '5052',
    H34: '5052',
    H38: '5052',
    H111: '5754',
    H112: '5083',
    H116: '5083',
    T3: '2024',
    T4: '6061',
    T42: '6061',
    T451: '6061',
    T6: '6061',
    T651: '6061',
    H00: 'C110',
    H01: 'C260',
    H02: 'C110',
    H04: 'C110',
    H06: 'C510',
    O60: 'C510',
    OS025: 'C110',
    LC: 'DC01',
    'C290-C690': '',
    '2B': '304',
    '2D': '304',
    BA: '304',
    'No.4': '304',
    HL: '304',
    '#4': '304',
    '+C700-+C1300': '',
    'R.../H...': '',
  };
  const suffixes = new Set(['JIS suffix', 'SPCC suffix']);
  const words = readTable('temper-words').filter(({ family }) => !suffixes.has(family!));

  it.each(words)('$family: $word', ({ word }) => {
    const holder = HOLDERS[word!];
    if (holder === '') return;
    const { how, candidates } = parseMaterial(`${holder ?? '304'} ${word}`);
    // A temper of which no sheet is tabled must stop the row rather than be read over.
    if (holder === undefined) expect({ how, candidates }).toEqual({ how: 'unreadable', candidates: [] });
    else expect(candidates).toHaveLength(1);
  });

  it.each([
    ['SUS301-CSP-1/2H', '301csp-12h'],
    ['301-CSP-H', '301csp-h'],
    ['C1100P-1/2H', 'c110-h02'],
    ['C1100P-H', 'c110-h04'],
    ['A5052P-O', '5052-o'],
    ['SPCC-A', 'spcc-a'],
    ['SPCC-S', 'spcc-s'],
    ['SPCC-8D', 'spcc-8'],
    ['SPCC-4D', 'spcc-4'],
    ['SPCC-2B', 'spcc-2'],
    ['SPCC-1D', 'spcc-1'],
    ['DC01 C290', 'dc01-c290'],
    ['DC01 C690', 'dc01-c690'],
    ['1.4310+C850', '301-14h'],
    ['1.4310+C1300', '301-fh'],
    ['Cu-ETP R240', 'cu-r240'],
    ['Cu-ETP H065', 'cu-r240'],
  ])('%s is %s', (text, id) => {
    expect(parseMaterial(text)).toMatchObject({ candidates: [id], how: 'named' });
  });
});

describe('traps of real lists', () => {
  /** What each trap must come to: entry ids that must be among the candidates, or the way it is refused. */
  const ANSWERS: Readonly<Record<string, string>> = {
    SS: '304 430 a36 crs-a1008-cs gi-ss50',
    A2: 'unreadable',
    A4: 'unreadable',
    C1: 'unreadable',
    A1: 'unreadable',
    '18-8': '304',
    '1/4': 'unreadable',
    '1.431': '301',
    '1.033': 'dc01-lc',
    '1.048': 'hc260la',
    '1.455': 'unreadable',
    CRES: '304 316 430',
    CS: 'crs-a1008-cs hrpo-a1011-cs a36 gi-cs',
    DS: 'unreadable',
    CR4: 'dc01-lc dc04-lc',
    CR1: 'dc01-lc dc04-lc',
    H62: 'cuzn37',
    H65: 'cuzn37',
    H68: 'c260-h02',
    H70: 'c260-h02',
    T2: 'c110-h02',
    TU2: 'unreadable',
    TA2: 'ti-gr2',
    A40: 'unreadable',
    A60: 'unreadable',
    GI: 'gi-cs dx51d',
    ALUM: '1100-h14 5052-h32 7075-t6',
    AL: '1100-h14 5052-h32 7075-t6',
    ALU: '1100-h14 5052-h32 7075-t6',
    ALY: '1100-h14 5052-h32 7075-t6',
    '6061': '6061-o 6061-t4 6061-t6',
    '5052': '5052-o 5052-h32 5052-h34 5052-h38',
    '304': '304',
    MS: 'crs-a1008-cs hrpo-a1011-cs a36 gi-cs',
    'MILD STEEL': 'crs-a1008-cs hrpo-a1011-cs a36 gi-cs',
    STEEL: 'crs-a1008-cs hrpo-a1011-cs a36 gi-cs',
    ZINC: 'not-a-material',
    ZN: 'not-a-material',
    ZP: 'not-a-material',
    ALCLAD: 'unreadable',
  };

  it.each([...new Set(readTable('alias-traps').map(({ seen }) => seen!))])('%s', (seen) => {
    const { how, candidates } = parseMaterial(seen);
    const answer = ANSWERS[seen]!;
    if (answer === 'unreadable' || answer === 'not-a-material')
      expect({ how, candidates }).toEqual({ how: answer, candidates: [] });
    else expect(candidates).toEqual(expect.arrayContaining(answer.split(' ')));
  });

  it.each(['18-Aug', '8-Aug', '18-Aug-2024', 'Aug-18', '2018-08-18', '4-Jan', '304 4-Jan'])('%s is a date', (text) => {
    const { how, remarks } = parseMaterial(text);
    expect(how).toBe('unreadable');
    expect(remarks.join()).toMatch(/date/);
  });
});

describe('misspellings, from the second transcription', () => {
  const BESIDE: Readonly<Record<string, string>> = { ANEALED: '304 ', PHOSPOR: '' };
  it.each(readTable('misspellings'))('$seen means $meant', ({ seen, meant }) => {
    const before = BESIDE[seen!] ?? '';
    const behind = seen === 'PHOSPOR' ? ' BRONZE' : '';
    const meaning = parseMaterial(before + meant + behind);
    expect(meaning.candidates.length).toBeGreaterThan(0);
    expect(parseMaterial(before + seen + behind)).toMatchObject({ candidates: meaning.candidates, how: meaning.how });
  });
});
