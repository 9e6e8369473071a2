import { describe, expect, it } from 'vitest';
import { parseMaterial } from '../../src/core/intake/material.ts';

const COLOURS = [
  'red',
  'BLACK',
  'White, gloss',
  'SILVER',
  'GOLD',
  'STEELBLUE',
  'STEEL BLUE',
  'Steel Grey',
  'COPPER BROWN',
  'WHITE ALUMINIUM RAL 9006',
  'grey aluminium',
  'BRONZE METALLIC',
  'RAL 9005',
  'RAL 5052',
  'RAL 3011 matt',
  'Pantone 430 C',
  'ANTHRACITE',
  'noir',
  'schwarz',
  '黑色',
];
const FINISHES = [
  'ZINC',
  'Zn',
  'ZP',
  'zinc plated',
  'NICKEL PLATED',
  'CHROME',
  'ANODIZED',
  'clear anodised',
  'BRONZE ANODIZED',
  'BRASS FINISH',
  'COPPER PLATED',
  'STAINLESS LOOK',
  'aluminum paint',
  'POWDER COAT BLACK',
  'Powder coated RAL 7035',
  'CHEM FILM',
  'No.4',
  '2B',
  'BLACK OXIDE',
  'passivated',
];
const OTHER_MATERIALS = [
  'ABS',
  'BRASS FINISH ABS',
  'PC/ABS, steel grey',
  'POLYCARBONATE',
  'ACRYLIC 3mm',
  'PVC',
  'NYLON 66 PA66',
  'HDPE',
  'FR4',
  'FR4, 1 oz copper',
  'PLYWOOD',
  'oak',
  'MDF 18 mm',
  'RUBBER',
  'steel wool',
  'carbon fiber',
  'GLASS',
  'silicone, red',
  'Holz',
  'foam tape',
];
const OPEN = [
  'SEE DRAWING',
  'see dwg',
  'per drawing',
  'VARIOUS',
  'TBD',
  'TBC',
  'N/A',
  'as noted',
  'see note',
  'unknown',
  'customer supplied',
  'SHEET METAL',
  'siehe Zeichnung',
];
/** Metals and words of which nothing is held, and cells that could be read as more than they say. */
const UNREADABLE = [
  'A2',
  'A4 STAINLESS',
  'A2-70',
  '18-Aug',
  '4-Jan',
  '17-4 PH',
  '303 SS',
  '302',
  '304/303',
  '1.4571',
  'SUS304J1',
  'SUS304-CSP',
  '304X9',
  'XM304Q',
  '316Ti',
  'SPRING STEEL',
  'TOOL STEEL A2',
  'STEEL 4130',
  '1075 STEEL',
  'S700MC',
  'HSLA GR 100',
  'A1008 SS GR 33',
  '410 HARDENED',
  '304 cold worked',
  '316 1/2 HARD',
  '5052-H36',
  '6061-T5',
  '6063-T5',
  '5083-H321',
  '2014-T6',
  'ALUMINUM 2219',
  'cast aluminum',
  'ALUMINIZED STEEL',
  'NICKEL SILVER',
  'beryllium copper',
  'ALUMINUM BRONZE',
  'Ti-6Al-4V',
  'TITANIUM GRADE 5',
  'A40',
  'STEEL AZ150',
  'ALCLAD',
  'STEEL zorbium',
  'zorbium 9',
  'HOPPER',
  'STEALTH',
  'GALVESTON',
  'BRASSERIE',
  'COPPERFIELD',
  'STAINED',
  'ALUMNI',
  '12345',
  '1.5',
  '?',
];

describe('words that name no metal', () => {
  it.each([...COLOURS, ...FINISHES, ...OTHER_MATERIALS, ...OPEN])('%s', (text) => {
    expect(parseMaterial(text)).toMatchObject({ candidates: [], how: 'not-a-material', family: null });
  });
});

describe('words that are not judged as a metal of like name', () => {
  it.each(UNREADABLE)('%s', (text) => {
    expect(parseMaterial(text)).toMatchObject({ candidates: [], how: 'unreadable', family: null });
  });
});

describe('cells with nothing in them', () => {
  it.each(['', '  ', '-', '—', '\u00a0'])('%j', (text) => {
    expect(parseMaterial(text)).toMatchObject({ candidates: [], how: 'blank', family: null });
  });
});
