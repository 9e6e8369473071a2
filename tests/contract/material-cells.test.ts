import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMaterial } from '../../src/core/intake/material.ts';
import { lexiconEntries, materialLexicon } from '../../src/core/intake/material-lexicon.ts';
import { materialKey } from '../../src/core/intake/material-text.ts';
import type { MaterialReading } from '../../src/core/model/sheet.ts';
import { aliasTables } from '../../src/core/reference/aliases/index.ts';
import { metalWords } from '../../src/core/reference/aliases/metal-words.ts';
import { tempersByAlloy } from '../../src/core/reference/aliases/tempers.ts';
import { findAlloy } from '../../src/core/reference/alloys/index.ts';

type Cell = readonly [text: string, candidates: string, thicknessText?: string];

const PLAIN = 'crs-a1008-cs hrpo-a1011-cs a36 gi-cs';
const STAINLESS = '301 304 304l 316 316l 430 410';
const ALUMINIUM = '1100-h14 3003-h14 5052-h32 5052-h34 5754-h22 6061-t4 6061-t6 6082-t6 2024-t3 7075-t6';
const ALL_5052 = '5052-o 5052-h32 5052-h34 5052-h38';
const ALL_5754 = '5754-o 5754-h12 5754-h14 5754-h22 5754-h24 5754-h18';
const COPPER = 'c110-o c110-h00 c110-h02 c110-h04 cu-r200 cu-r240 cu-r360';

const CELLS: Readonly<Record<'named' | 'condition-assumed' | 'vague', readonly Cell[]>> = {
  named: [
    ['5052-H32', '5052-h32'],
    ['5052 H32', '5052-h32'],
    ['5052H32', '5052-h32'],
    ['5052-H 32', '5052-h32'],
    ['AL-5052-32', '5052-h32'],
    ['al 5052-h32, chem film', '5052-h32'],
    ['5052-H32 .063 THK', '5052-h32', '.063'],
    ['.090" 5052-H32 ALUMINUM SHEET', '5052-h32', '.090"'],
    ['5052-0', '5052-o'],
    ['6061T6', '6061-t6'],
    ['6061-T651', '6061-t6'],
    ['AA 6061 T6', '6061-t6'],
    ['ASTM B209 6061-T6', '6061-t6'],
    ['EN AW-5754 H22', '5754-h22'],
    ['EN AW-5754 [AlMg3] H111', '5754-o'],
    ['AlMg3 H22', '5754-h22'],
    ['AlMg3 G22', '5754-h22'],
    ['ALCLAD 2024-T3', '2024-t3'],
    ['301 1/2H', '301-12h'],
    ['301 half hard', '301-12h'],
    ['301 SS, ½ HARD', '301-12h'],
    ['1.4310+C1000', '301-12h'],
    ['304 annealed', '304'],
    ['304 SST ANNEALED 2B 16 GA', '304', '16 GA'],
    ['C260-H02', 'c260-h02'],
    ['1/2 HARD C110 COPPER', 'c110-h02'],
    ['CRS HALF HARD', 'a109-t2'],
    ['A109 #4', 'a109-t4'],
    ['DC01+LC 1,5 mm', 'dc01-lc', '1,5 mm'],
    ['SPCC-1B', 'spcc-1'],
  ],
  'condition-assumed': [
    ['16 GA CRS', 'crs-a1008-cs', '16 GA'],
    ['crs 16ga', 'crs-a1008-cs', '16ga'],
    ['CRS 0.060', 'crs-a1008-cs', '0.060'],
    ['C.R.S., #18 ga.', 'crs-a1008-cs', '#18 ga.'],
    ['COLD ROLLED STEEL, ZINC PLATED', 'crs-a1008-cs'],
    ['ASTM A1008-15 CS TYPE B', 'crs-a1008-cs'],
    ['HRPO 1/8"', 'hrpo-a1011-cs', '1/8"'],
    ['P&O 7 GA', 'hrpo-a1011-cs', '7 GA'],
    ['1.5mm DC01', 'dc01-lc', '1.5mm'],
    ['DC01 EN 10130:2006', 'dc01-lc'],
    ['1.0330', 'dc01-lc'],
    ['1.033', 'dc01-lc'],
    ['2.0 x 1250 x 2500 DC01', 'dc01-lc', '2.0'],
    ['DX51D+Z275', 'dx51d'],
    ['DX51D+Z275-M-A-C 1.5', 'dx51d', '1.5'],
    ['DX51D + ZF100', 'dx51d'],
    ['ga 16 ga', 'ga-cs', '16 ga'],
    ['GALVANNEAL, 14 GAUGE', 'ga-cs', '14 GAUGE'],
    ['CS A40', 'ga-cs'],
    ['STEEL ZF100', 'ga-cs'],
    ['A653 SS GR 50 G90', 'gi-ss50'],
    ['SECC 1.0t', 'secc', '1.0t'],
    ['EG STEEL', 'secc'],
    ['DC01+ZE25/25', 'dc01ze'],
    ['S355 MC', 's355mc'],
    ['A36 1/4" PLATE', 'a36', '1/4"'],
    ['304', '304'],
    ['304 SS, 18 GA', '304', '18 GA'],
    ['304 2B', '304'],
    ['SS304 BRUSHED', '304'],
    ['SUS304-2B', '304'],
    ['SUS304 t=1.0', '304', '1.0'],
    ['ＳＵＳ３０４', '304'],
    ['INOX 304', '304'],
    ['18-8 stainless', '304'],
    ['18/8', '304'],
    ['X5CrNi18-10 (1.4301)', '304'],
    ['06Cr19Ni10', '304'],
    ['304 COLD ROLLED', '304'],
    ['不锈钢304', '304'],
    ['304\u00a0L', '304l'],
    ['STAINLESS STEEL 316 L', '316l'],
    ['V4A', '316'],
    ['1.431', '301'],
    ['430 BA', '430'],
    ['EN AW-2024', '2024-t3'],
    ['Ti Gr.2', 'ti-gr2'],
    ['H62', 'cuzn37'],
  ],
  vague: [
    ['STEEL', PLAIN],
    ['MS 1.5 mm', PLAIN, '1.5 mm'],
    ['mild steel sheet', PLAIN],
    ['CS 4 mm', PLAIN, '4 mm'],
    ['STAINLESS', STAINLESS],
    ['S/S', STAINLESS],
    ['CRES 18GA', STAINLESS, '18GA'],
    ['SS', `${STAINLESS} ${PLAIN} gi-ss33 gi-ss40 gi-ss50 gi-ss80`],
    ['SS COLD ROLLED', `${STAINLESS} ${PLAIN} gi-ss33 gi-ss40 gi-ss50 gi-ss80`],
    ['ALUM', ALUMINIUM],
    ['Aluminum, black anodized', ALUMINIUM],
    ['AL T6', '6061-t6 6082-t6 7075-t6'],
    ['AL 5052 2.0mm', ALL_5052, '2.0mm'],
    ['5754', ALL_5754],
    ['6061', '6061-o 6061-t4 6061-t6'],
    ['A5052P-H32/H34', '5052-h32 5052-h34'],
    ['5052-H32 OR 6061-T6', '5052-h32 6061-t6'],
    ['5052-H32 or 6061', '5052-h32 6061-o 6061-t4 6061-t6'],
    ['GALV', 'gi-cs dx51d'],
    ['GALV STEEL 16 GA', 'gi-cs dx51d', '16 GA'],
    ['CRS G90', 'gi-cs dx51d'],
    ['galvinized steel', 'gi-cs dx51d'],
    ['Z275', 'gi-cs dx51d'],
    ['ZE25/25', 'secc dc01ze'],
    ['HSLA', 'hslas50 hslas60 hslas80'],
    ['304/304L', '304 304l'],
    ['304 or 316', '304 316'],
    ['301 1/4', '301 301-14h', '1/4'],
    ['T2', COPPER],
    ['COPPER 16 OZ', COPPER, '16 OZ'],
    ['H70', 'c260-o c260-h01 c260-h02 c260-h04 cuzn30'],
    ['PHOSPHOR BRONZE', 'c510-o c510-h02 c510-h04 c510-h06'],
    ['TITANIUM', 'ti-gr1 ti-gr2'],
    ['ALUMINUM 304', `${ALUMINIUM} 304`],
    ['Edelstahl 1,5 mm', STAINLESS, '1,5 mm'],
    ['Stahl verzinkt', 'gi-cs dx51d'],
    ['acier galvanisé', 'gi-cs dx51d'],
    ['tôle acier 2 mm', PLAIN, '2 mm'],
    ['acero inoxidable', STAINLESS],
    ['lamiera zincata', 'gi-cs dx51d'],
    ['aço inoxidável', STAINLESS],
    ['roestvast staal', STAINLESS],
    ['rostfritt stål', STAINLESS],
    ['stal nierdzewna', STAINLESS],
    ['blacha ocynkowana', 'gi-cs dx51d'],
    ['Alumínio', ALUMINIUM],
    ['镀锌板', 'gi-cs dx51d'],
    ['ステンレス', STAINLESS],
    ['アルミ', ALUMINIUM],
    ['Messing', 'c260-o c260-h01 c260-h02 c260-h04 cuzn30 cuzn37'],
    ['laiton', 'c260-o c260-h01 c260-h02 c260-h04 cuzn30 cuzn37'],
    ['Kupfer', COPPER],
  ],
};

describe.each(Object.entries(CELLS))('cells that are %s', (how, cells) => {
  it.each(cells.map(([text, ...expected]) => ({ text, expected })))('$text', ({ text, expected }) => {
    const [candidates, thicknessText] = expected;
    const reading = parseMaterial(text);
    expect(reading.how).toBe(how);
    expect([...reading.candidates].sort()).toEqual(candidates.split(' ').sort());
    expect(reading.thicknessText).toBe(thicknessText);
    expect(reading.text).toBe(text);
  });
});

describe('what stands beside the alloy', () => {
  it.each([
    ['DX51D+Z275', { coating: 'Z275' }],
    ['GALV G90', { coating: 'G90' }],
    ['SECC ZE25/25', { coating: 'ZE25/25' }],
    ['304 2B', { finish: '2B' }],
    ['5052-H32, Clear Anodized', { finish: 'Clear Anodized' }],
    ['CRS powder coated RAL 7035', { finish: 'powder coated RAL 7035' }],
  ] as const)('%s', (text, beside: Partial<MaterialReading>) => {
    expect(parseMaterial(text)).toMatchObject(beside);
  });

  it.each([
    ['ALCLAD 2024-T3', /skin/],
    ['18-8', /302, 303, 304 or 305/],
    ['1.431', /1\.4310/],
    ['304', /No condition is written: judged by ASTM A240, annealed/],
    ['CS', /commercial steel, carbon steel/],
    ['GALVANIZD', /“GALVANIZD” is read as GALVANIZED/],
    ['5052-H32 zorb', /Not understood: “ZORB”|Not understood: “zorb”/],
    ['5052-H36', /H36/],
    ['A40', /coating/],
    ['304/316', /judged against each/],
  ])('%s is remarked on', (text, remark) => {
    expect(parseMaterial(text).remarks.join('\n')).toMatch(remark);
  });

  it.each([
    ['304/316', 'stainless-austenitic'],
    ['STAINLESS', null],
    ['GALV', 'galvanized-steel'],
    ['GA', 'galvannealed-steel'],
    ['STEEL', null],
    ['ALUM', 'aluminium'],
    ['BRASS', 'brass'],
  ])('%s is of the family %s', (text, family) => {
    expect(parseMaterial(text).family).toBe(family);
  });
});

describe('the words', () => {
  it('mean one thing each', () => {
    const clashes = lexiconEntries().filter(([word, meaning]) => {
      const kept = materialLexicon.get(materialKey(word));
      return JSON.stringify(kept) !== JSON.stringify(meaning);
    });
    expect(clashes.map(([word]) => word)).toEqual([]);
  });

  it('stand for entries that exist', () => {
    const rows = aliasTables.flatMap(({ rows }) => rows);
    const ids = [
      ...rows.flatMap(({ entries }) => entries ?? []),
      ...metalWords.flatMap(({ candidates }) => candidates),
      ...Object.values(tempersByAlloy).flatMap((tempers) => Object.values(tempers).flat()),
    ];
    expect(ids.filter((id) => !findAlloy(id))).toEqual([]);
  });

  it('cover only families that they name', () => {
    const strays = metalWords.flatMap(({ candidates, families }) =>
      candidates.filter((id) => !families.includes(findAlloy(id)!.family)),
    );
    expect(strays).toEqual([]);
  });
});

describe('laws', () => {
  it('never throws, and gives candidates exactly where it says that it understood', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (text) => {
        const { candidates, how, family } = parseMaterial(text);
        const understood = how === 'named' || how === 'condition-assumed' || how === 'vague';
        expect(candidates.length > 0).toBe(understood);
        expect(candidates.every((id) => findAlloy(id))).toBe(true);
        if (!understood) expect(family).toBeNull();
      }),
      { numRuns: 300 },
    );
  });

  const cells = Object.values(CELLS).flatMap((list) => list.map(([text]) => text));

  it('does not care about letter case', () => {
    const differing = cells.filter((text) => {
      const read = (written: string) => JSON.stringify(parseMaterial(written).candidates);
      return read(text) !== read(text.toLowerCase()) || read(text) !== read(text.toUpperCase());
    });
    expect(differing).toEqual([]);
  });

  it('is not disturbed by a thickness in front', () => {
    const bare = Object.values(CELLS).flatMap((list) => list.filter(([, , thickness]) => thickness === undefined));
    const differing = bare.filter(([text]) => {
      const beside = parseMaterial(`1.5 mm ${text}`);
      return beside.thicknessText !== '1.5 mm' || beside.how !== parseMaterial(text).how;
    });
    expect(differing.map(([text]) => text)).toEqual([]);
  });
});
