import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseFastenerMaterial } from '../../src/core/catalogue/fastener-material.ts';
import type { FastenerClass } from '../../src/core/model/fastener.ts';
import { findFastenerMaterial } from '../../src/core/reference/fastener-materials.ts';

/** The candidates of these words, and the class of each. */
const candidates = (text: string) => parseFastenerMaterial(text).candidates;
const classes = (text: string) => new Set(candidates(text).map((id) => findFastenerMaterial(id)!.fastenerClass));

const oneEntry: readonly (readonly [id: string, fastenerClass: FastenerClass | null, ...words: readonly string[]])[] = [
  [
    'carbon-steel-hardened',
    'carbon-steel-hardened',
    'carbon-steel-hardened',
    'hardened carbon steel',
    'Heat-Treated Steel',
    'heat treated carbon steel',
    'steel, hardened',
    'STEEL - HT',
    'alloy steel Q&T',
    'hardened steel, zinc plated',
    'Stahl, vergütet',
  ],
  [
    'stainless-300',
    'stainless-300',
    'stainless-300',
    '300 series SS',
    '300-series stainless',
    'stainless steel 300 series',
    '18-8',
    '18/8 stainless',
    'A2',
    'A4',
    'A2-70',
    'A4-80',
    '303',
    '304',
    '305',
    '316L',
    '302HQ',
    'AISI 303',
    'SUS303',
    '1.4305',
    'S30300',
    'austenitic stainless',
    'Edelstahl A2',
  ],
  [
    'stainless-400-hardened',
    'stainless-400-hardened',
    'stainless-400-hardened',
    'hardened 400 series',
    '416 hardened',
    '410 HT',
    '416 SS hardened, passivated',
  ],
  [
    'stainless-ph',
    'stainless-ph',
    'stainless-ph',
    '17-4 PH',
    '17-4PH',
    'PH SS',
    '630',
    '1.4542',
    'precipitation-hardened stainless',
  ],
  ['sus630-h1150', 'stainless-ph', '17-4 PH H1150', '17-4PH cond. H1150'],
  ['sus630-s', null, '17-4 PH annealed'],
  ['aluminium-2024-t4', 'aluminium', '2024-T4', 'aluminum 2024-T4', 'AL2024-T4'],
  ['6061-t6', 'aluminium', '6061-T6', 'Aluminium 6061-T651', '6061'],
  ['7075-t73', 'aluminium', '7075-T73'],
  ['brass', 'brass', 'brass', 'nickel plated brass', 'Messing'],
  ['bronze', 'bronze', 'bronze'],
  ['c51000', 'bronze', 'phosphor bronze', 'PH bronze'],
  ['iso-898-1-10-9', 'carbon-steel-hardened', 'class 10.9', '10.9', '10,9 steel'],
  ['iso-898-1-4-8', null, '4.8', 'property class 4.8'],
  ['iso-898-2-8', null, 'class 8'],
  ['iso-3506-1-a-50', 'stainless-300', 'A2-50'],
  ['astm-f593-a', 'stainless-300', '303 annealed'],
  ['astm-f593-430', null, '430'],
  ['c11000', null, 'copper'],
];

describe('words that mean one material', () => {
  for (const [id, fastenerClass, ...words] of oneEntry) {
    it.each(words)(`"%s" is ${id}`, (word) => {
      expect(candidates(word)).toEqual([id]);
      expect(findFastenerMaterial(id)!.fastenerClass).toBe(fastenerClass);
    });
  }
});

describe('vague words', () => {
  it.each(['stainless', 'Stainless Steel', 'SS', 'CRES', 'inox', 'rostfreier Stahl'])(
    '"%s" may be any of the three classes',
    (word) => {
      expect(candidates(word)).toEqual(['stainless-300', 'stainless-400-hardened', 'stainless-ph']);
    },
  );

  it('hardened stainless is not of the 300 series', () => {
    expect(candidates('hardened stainless steel')).toEqual(['stainless-400-hardened', 'stainless-ph']);
  });

  it.each(['aluminium', 'ALUMINUM', 'alum', 'Al alloy'])('"%s" may be any of three alloys', (word) => {
    expect(candidates(word)).toEqual(['aluminium-2024-t4', '6061-t6', '7075-t73']);
  });

  it.each(['steel', 'carbon steel', 'steel, zinc plated', 'brass plated steel', '12L14', 'CS'])(
    '"%s" does not say hardened',
    (word) => {
      expect(classes(word)).toEqual(new Set(['carbon-steel-hardened', null]));
      expect(candidates(word)).toEqual(['carbon-steel-hardened', 'iso-898-1-4-8', 'iso-898-1-5-8']);
    },
  );

  it.each(['unhardened steel', 'steel, not hardened', 'non-heat-treated steel', 'mild steel'])(
    '"%s" says that it is soft',
    (word) => {
      expect(classes(word)).toEqual(new Set([null]));
    },
  );

  it.each(['416', '400 series', '410 stainless'])('"%s" does not say hardened', (word) => {
    expect(candidates(word)).toEqual(['stainless-400-hardened', 'iso-3506-1-c1-50']);
  });

  it('a grade number is shared by bolts and nuts', () => {
    expect(candidates('grade 8')).toEqual(['sae-j429-8', 'sae-j995-8']);
    expect(classes('grade 8')).toEqual(new Set(['carbon-steel-hardened']));
  });

  it('two metals in one cell are both candidates', () => {
    expect(candidates('303 or brass')).toEqual(['brass', 'stainless-300']);
  });

  it('case-hardened steel may be as soft as the class below its surface', () => {
    expect(candidates('case hardened steel')).toEqual(['carbon-steel-hardened', 'case-hardened-steel']);
  });
});

describe('words that name no material of ours', () => {
  it.each([
    '',
    ' ',
    '-',
    'see drawing',
    'zinc',
    'hardened',
    'black',
    'nylon',
    '18-Aug',
    'titanium gr 5',
    'A2 tool steel',
    'beryllium copper',
    '1.7225',
    '5056-H32',
    'aluminium 2024-T3',
  ])('"%s" gives nothing', (word) => {
    expect(candidates(word)).toEqual([]);
  });
});

describe('every word', () => {
  it.each([
    'class 4.6',
    'class 5.6',
    'class 5.8',
    'class 6.8',
    'class 8.8',
    'class 9.8',
    'class 12.9',
    'class 04',
    'class 05',
    'class 5',
    'class 6',
    'class 10',
    'class 12',
    'grade 1',
    'grade 2',
    'grade 5',
    'grade 5.2',
    'SAE J429 grade 8',
    'SAE J995 grade 5',
    '14H',
    '22H',
    '33H',
    '45H',
    '12H',
    '21H',
    '20H',
    '25H',
    '30H',
    'C1',
    'C1-50',
    'C1-70',
    'C1-110',
    'C3-80',
    'C4-70',
    'F1-45',
    'A286',
    '17-4 PH H900',
    '17-4 PH H1025',
    '630 H1075',
    'C26000',
    'C270',
    'C46200',
    'C464',
    'naval brass',
    'C651',
    'C65500',
    'silicon bronze',
    'C61400',
    '7075',
    '7075-T6',
    '6262-T9',
    'carburized steel',
  ])('"%s" leads to an entry', (word) => {
    expect(candidates(word)).not.toEqual([]);
    for (const id of candidates(word)) expect(findFastenerMaterial(id), id).toBeDefined();
  });

  it('keeps the text as listed and reads the same in any case', () => {
    const words = oneEntry.flatMap(([, , ...listed]) => listed);
    fc.assert(
      fc.property(fc.constantFrom(...words), (word) => {
        expect(parseFastenerMaterial(word).text).toBe(word);
        expect(candidates(word.toUpperCase())).toEqual(candidates(word));
        expect(candidates(`  ${word.toLowerCase()}  `)).toEqual(candidates(word));
      }),
    );
  });

  it('any text gives entries that exist, each once', () => {
    const pieces = fc.constantFrom(
      'stainless',
      'steel',
      '303',
      '416',
      'hardened',
      'class',
      '8',
      '8.8',
      'grade',
      '5',
      'A2',
      '-70',
      'brass',
      'plated',
      '6061',
      '-T6',
      'PH',
      'un',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(pieces, { maxLength: 5 }).map((some) => some.join(' ')),
    );
    fc.assert(
      fc.property(text, (any) => {
        const ids = candidates(any);
        expect(new Set(ids).size).toBe(ids.length);
        for (const id of ids) expect(findFastenerMaterial(id), id).toBeDefined();
      }),
      { numRuns: 500 },
    );
  });
});
