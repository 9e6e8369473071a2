import type { FastenerClass } from '../model/fastener.ts';
import type { SheetFamily } from '../model/sheet.ts';
import type { Mark, Table } from '../model/table.ts';
import type { Hardness } from '../units/hardness.ts';

/** One fastener material, property class or condition with the hardness that its document promises. */
export interface FastenerMaterialEntry {
  /** Kebab-case, unique. The classes come first; of these "aluminium-2024-t4" alone is not named like its class. */
  readonly id: string;
  readonly standard: string;
  /** How a person would name it in one phrase. */
  readonly name: string;
  /** Null: not one of the classes of the trade's table of families, such as unhardened carbon steel. */
  readonly fastenerClass: FastenerClass | null;
  /** The metal, which decides how its hardness is converted. */
  readonly family: SheetFamily;
  /** Null: no minimum is published. The class minimum is then no substitute: soft conditions of a class have none either. */
  readonly hardnessMin: Hardness | null;
  readonly hardnessMax: Hardness | null;
  readonly mark: Mark;
  readonly note?: string;
}

type Row = readonly [id: string, name: string, min: Hardness | null, max: Hardness | null, note?: string];

type Metal = Pick<FastenerMaterialEntry, 'fastenerClass' | 'family'>;

const UNHARDENED: Metal = { fastenerClass: null, family: 'carbon-steel' };
const HARDENED: Metal = { fastenerClass: 'carbon-steel-hardened', family: 'carbon-steel' };
const AUSTENITIC: Metal = { fastenerClass: 'stainless-300', family: 'stainless-austenitic' };
const SOFT_400: Metal = { fastenerClass: null, family: 'stainless-martensitic' };
const HARDENED_400: Metal = { fastenerClass: 'stainless-400-hardened', family: 'stainless-martensitic' };
const FERRITIC: Metal = { fastenerClass: null, family: 'stainless-ferritic' };
const PRECIPITATION: Metal = { fastenerClass: 'stainless-ph', family: 'stainless-martensitic' };
const PRECIPITATION_AUSTENITIC: Metal = { fastenerClass: 'stainless-ph', family: 'stainless-austenitic' };
const ALUMINIUM: Metal = { fastenerClass: 'aluminium', family: 'aluminium' };
const COPPER: Metal = { fastenerClass: null, family: 'copper' };
const BRASS: Metal = { fastenerClass: 'brass', family: 'brass' };
const BRONZE: Metal = { fastenerClass: 'bronze', family: 'bronze' };

/** Materials of fasteners. */
export const fastenerMaterials: Table<FastenerMaterialEntry> = {
  id: 'fastener-materials',
  title: 'Fastener materials and their hardness',
  sources: [
    {
      document: 'ISO 898-1, 898-2, 898-5 and 898-6, ISO 2702',
      place: 'Hardness by property class',
      mark: 'memory',
      note: 'Only the fine-thread nut classes were read.',
    },
    { document: 'SAE J429', place: 'Hardness by grade', mark: 'printed', note: 'SAE J995 for nuts is from memory.' },
    {
      document: 'ASTM F593',
      place: 'Hardness by condition',
      mark: 'printed',
      note: 'Read for the annealed and cold-worked conditions of the 300 series; the others are from memory. ISO 3506-1 states no hardness for austenitic classes.',
    },
    { document: 'JIS G4305', place: 'SUS630 by condition', mark: 'printed' },
    {
      document: 'ASTM F468 and F467',
      place: 'Hardness of aluminium and copper alloys',
      mark: 'memory',
      note: 'The hardness column was not read.',
    },
  ],
  rows: [
    // Classes, for a fastener whose catalogue names no hardness
    ...entries('class minimum', HARDENED, 'memory', [
      [
        'carbon-steel-hardened',
        'hardened carbon steel',
        hrc(26),
        null,
        'the least of nuts of property class 10 (ISO 898-2)',
      ],
    ]),
    ...entries('class minimum', AUSTENITIC, 'printed', [
      ['stainless-300', '300-series stainless', hrb(95), null, 'cold-worked condition CW1 of ASTM F593'],
    ]),
    ...entries('class minimum', HARDENED_400, 'memory', [
      ['stainless-400-hardened', 'hardened 400-series stainless', hrc(34), null, 'condition HT of ASTM F593'],
    ]),
    ...entries('class minimum', PRECIPITATION, 'derived', [
      [
        'stainless-ph',
        'precipitation-hardened stainless',
        hrc(38),
        null,
        'two points below the HRC 40 of condition H900; overaged conditions are softer',
      ],
    ]),
    ...entries('class minimum', ALUMINIUM, 'memory', [
      ['aluminium-2024-t4', '2024-T4 aluminium', hrb(70), hrb(85), 'ASTM F468'],
    ]),
    ...entries('class minimum', BRASS, 'memory', [
      ['brass', 'brass', null, null, 'alloys and tempers differ too far for one minimum'],
    ]),
    ...entries('class minimum', BRONZE, 'memory', [
      ['bronze', 'bronze', null, null, 'alloys and tempers differ too far for one minimum'],
    ]),
    // Carbon and alloy steel; unhardened classes belong to none of our classes
    ...entries('ISO 898-1', UNHARDENED, 'memory', [
      ['iso-898-1-4-6', 'property class 4.6', hrb(67), hrb(95)],
      ['iso-898-1-4-8', 'property class 4.8', hrb(71), hrb(95)],
      ['iso-898-1-5-6', 'property class 5.6', hrb(79), hrb(95)],
      ['iso-898-1-5-8', 'property class 5.8', hrb(82), hrb(95)],
      ['iso-898-1-6-8', 'property class 6.8', hrb(89), hrb(99.5)],
    ]),
    ...entries('ISO 898-1', HARDENED, 'memory', [
      ['iso-898-1-8-8', 'property class 8.8 to M16', hrc(22), hrc(32)],
      ['iso-898-1-8-8-over-m16', 'property class 8.8 above M16', hrc(23), hrc(34)],
      ['iso-898-1-9-8', 'property class 9.8', hrc(28), hrc(37)],
      ['iso-898-1-10-9', 'property class 10.9', hrc(32), hrc(39)],
      ['iso-898-1-12-9', 'property class 12.9', hrc(39), hrc(44)],
    ]),
    ...entries('ISO 898-2', UNHARDENED, 'memory', [
      ['iso-898-2-5', 'nut class 5', hv(130), hrc(30)],
      ['iso-898-2-6', 'nut class 6', hv(150), hrc(30)],
      [
        'iso-898-2-8',
        'nut class 8',
        hv(188),
        hrc(30),
        '188 for small sizes of style 1, 200 otherwise; need not be hardened',
      ],
    ]),
    ...entries('ISO 898-2', HARDENED, 'memory', [
      ['iso-898-2-10', 'nut class 10', hrc(26), hrc(36)],
      ['iso-898-2-12', 'nut class 12', hv(272), hrc(36), '295 for some sizes and styles'],
    ]),
    ...entries('ISO 898-6', UNHARDENED, 'printed', [
      ['iso-898-6-04', 'thin nut class 04, fine thread', hv(188), hrc(30)],
    ]),
    ...entries('ISO 898-6', HARDENED, 'printed', [
      ['iso-898-6-05', 'thin nut class 05, fine thread', hrc(26), hrc(36)],
    ]),
    ...entries('ISO 898-6', UNHARDENED, 'printed', [
      ['iso-898-6-5', 'nut class 5, fine thread M8 to M16', hv(175), hrc(30)],
    ]),
    ...entries('ISO 898-5', UNHARDENED, 'memory', [['iso-898-5-14h', 'set screw 14H', hrb(75), hrb(105)]]),
    ...entries('ISO 898-5', HARDENED, 'memory', [
      ['iso-898-5-22h', 'set screw 22H', hrb(95), hrc(30)],
      ['iso-898-5-33h', 'set screw 33H', hrc(33), hrc(44)],
      ['iso-898-5-45h', 'set screw 45H', hrc(45), hrc(53)],
    ]),
    ...entries('SAE J429', UNHARDENED, 'printed', [
      ['sae-j429-1', 'grade 1', hrb(70), hrb(100)],
      ['sae-j429-2', 'grade 2, 1/4 to 3/4 in', hrb(80), hrb(100)],
      ['sae-j429-2-over-3-4-in', 'grade 2 above 3/4 in', hrb(70), hrb(100)],
    ]),
    ...entries('SAE J429', HARDENED, 'printed', [
      ['sae-j429-5', 'grade 5, 1/4 to 1 in', hrc(25), hrc(34)],
      [
        'sae-j429-5-over-1-in',
        'grade 5 above 1 in',
        hrc(19),
        hrc(30),
        'HRC 19 lies below the foot of the Rockwell C conversion',
      ],
      ['sae-j429-5-2', 'grade 5.2', hrc(26), hrc(36)],
      ['sae-j429-8', 'grade 8', hrc(33), hrc(39)],
    ]),
    ...entries('SAE J995', UNHARDENED, 'memory', [
      ['sae-j995-2', 'nut grade 2', null, hrc(32)],
      ['sae-j995-5', 'nut grade 5', null, hrc(32)],
    ]),
    ...entries('SAE J995', HARDENED, 'memory', [['sae-j995-8', 'nut grade 8, 1/4 to 5/8 in', hrc(24), hrc(32)]]),
    ...entries('ISO 2702', HARDENED, 'memory', [
      [
        'case-hardened-steel',
        'case-hardened low-carbon steel',
        hrc(45),
        null,
        'hardness of the surface; the core is softer',
      ],
    ]),
    // Stainless
    ...entries('ASTM F593', AUSTENITIC, 'printed', [
      ['astm-f593-af', '300 series, headed and annealed (AF)', null, hrb(85)],
      ['astm-f593-a', '300 series, machined from annealed (A)', hrb(65), hrb(95)],
      ['astm-f593-cw1', '300 series, cold worked (CW1, 1/4 to 5/8 in)', hrb(95), hrc(32)],
      ['astm-f593-cw2', '300 series, cold worked (CW2, 3/4 to 1 1/2 in)', hrb(80), hrc(32)],
    ]),
    ...entries('ASTM F593', AUSTENITIC, 'memory', [
      ['astm-f593-sh1', '300 series, strain hardened (SH1)', hrc(24), hrc(36)],
    ]),
    ...entries('ASTM F593', HARDENED_400, 'memory', [
      ['astm-f593-410-h', '410 or 416 hardened and tempered (H)', hrc(20), hrc(30)],
      ['astm-f593-410-ht', '410 or 416 hardened and tempered (HT)', hrc(34), hrc(45)],
    ]),
    ...entries('ASTM F593', FERRITIC, 'memory', [['astm-f593-430', '430 annealed (A)', null, hrb(98)]]),
    ...entries('ASTM F593', PRECIPITATION, 'memory', [
      ['astm-f593-630-ah', '17-4 PH age hardened (AH)', hrc(28), hrc(38)],
    ]),
    ...entries('ISO 3506-1', AUSTENITIC, 'printed', [
      ['iso-3506-1-a-50', 'A1, A2 or A4, class 50 (soft)', null, null, 'the standard states strength only (500 MPa)'],
      [
        'iso-3506-1-a-70',
        'A1, A2 or A4, class 70 (cold worked)',
        null,
        null,
        'the standard states strength only (700 MPa); typical HRB 95 to HRC 30, from memory',
      ],
      [
        'iso-3506-1-a-80',
        'A2 or A4, class 80 (highly cold worked)',
        null,
        null,
        'the standard states strength only (800 MPa); typical HRC 24 to 32, from memory',
      ],
    ]),
    ...entries('ISO 3506-1', SOFT_400, 'memory', [['iso-3506-1-c1-50', 'C1-50 (410 type, soft)', hv(155), hv(220)]]),
    ...entries('ISO 3506-1', HARDENED_400, 'memory', [
      ['iso-3506-1-c1-70', 'C1-70 (410 type, quenched and tempered)', hrc(20), hrc(34)],
      ['iso-3506-1-c1-110', 'C1-110 (410 type, quenched and tempered)', hrc(36), hrc(45)],
      ['iso-3506-1-c3-80', 'C3-80 (431 type, quenched and tempered)', hrc(21), hrc(35)],
      ['iso-3506-1-c4-70', 'C4-70 (416 type, quenched and tempered)', hrc(20), hrc(34)],
    ]),
    ...entries('ISO 3506-1', FERRITIC, 'memory', [['iso-3506-1-f1-45', 'F1-45 (430 type)', hv(135), hv(220)]]),
    ...entries('ISO 3506-3', AUSTENITIC, 'memory', [
      ['iso-3506-3-12h', 'austenitic set screw 12H', hv(125), hv(209)],
      ['iso-3506-3-21h', 'austenitic set screw 21H', hv(210), null],
    ]),
    ...entries('ISO 3506-4', AUSTENITIC, 'memory', [
      ['iso-3506-4-20h', 'austenitic tapping screw 20H', hv(200), null],
      ['iso-3506-4-25h', 'austenitic tapping screw 25H', hv(250), null],
      ['iso-3506-4-30h', 'austenitic tapping screw 30H', hv(300), null],
    ]),
    ...entries('JIS G4305', SOFT_400, 'printed', [
      ['sus630-s', 'SUS630 solution treated', null, hrc(38), 'not yet aged'],
    ]),
    ...entries('JIS G4305', PRECIPITATION, 'printed', [
      ['sus630-h900', 'SUS630 H900', hrc(40), null, '375 HB'],
      ['sus630-h1025', 'SUS630 H1025', hrc(35), null, '331 HB'],
      ['sus630-h1075', 'SUS630 H1075', hrc(31), null, '302 HB'],
      ['sus630-h1150', 'SUS630 H1150', hrc(28), null, '277 HB'],
    ]),
    ...entries('ASTM A693', PRECIPITATION, 'memory', [['astm-a693-630-h900', '630 H900', hrc(40), hrc(48), '388 HB']]),
    ...entries('AMS 5731', PRECIPITATION_AUSTENITIC, 'memory', [
      ['a286-aged', 'A286 solution treated and aged', hrc(24), hrc(37)],
    ]),
    ...entries('ASTM A276', HARDENED_400, 'printed', [
      [
        '410-as-quenched',
        '410 as quenched',
        hrc(35),
        null,
        'what the steel must be able to reach; parts are tempered afterwards',
      ],
    ]),
    ...entries('data sheet', HARDENED_400, 'printed', [
      ['410-tempered', '410 tempered at high temperature', null, null, 'typical HRC 24.5 (HV 266); no minimum'],
    ]),
    ...entries('data sheet', SOFT_400, 'printed', [
      ['410-annealed', '410 annealed', null, null, 'typical HRB 82; no minimum'],
    ]),
    ...entries('trade practice', HARDENED_400, 'memory', [['416-hardened', '416 hardened', hrc(35), hrc(42)]]),
    // Aluminium, copper, brass and bronze
    ...entries('ASTM F468', ALUMINIUM, 'memory', [
      ['2024-t4', '2024-T4 bolts', hrb(70), hrb(85)],
      ['6061-t6', '6061-T6', hrb(40), hrb(50)],
      ['7075-t73', '7075-T73', hrb(80), hrb(90)],
    ]),
    ...entries('data sheet', ALUMINIUM, 'printed', [
      ['7075-t6', '7075-T6', null, null, 'not in ASTM F468; typical 150 HB (500 kgf), no minimum'],
    ]),
    ...entries('ASTM F467', ALUMINIUM, 'memory', [['6262-t9', '6262-T9 nuts', hrb(60), null]]),
    ...entries('ASTM F468', COPPER, 'memory', [['c11000', 'copper C11000', hrf(65), hrf(90)]]),
    ...entries('ASTM F468', BRASS, 'memory', [
      ['c26000', 'cartridge brass C26000', hrf(55), hrf(80)],
      ['c27000', 'yellow brass C27000', hrf(55), hrf(80)],
      ['c46200', 'naval brass C46200', hrb(65), hrb(90)],
      ['c46400', 'naval brass C46400', hrb(55), hrb(75)],
    ]),
    ...entries('ASTM F468', BRONZE, 'memory', [
      ['c51000', 'phosphor bronze C51000', hrb(60), hrb(95)],
      ['c65100', 'silicon bronze C65100', hrb(70), hrb(95)],
      ['c65500', 'silicon bronze C65500', hrb(60), hrb(80)],
      ['c61300', 'aluminium bronze C61300 or C61400', hrb(70), hrb(95)],
    ]),
  ],
};

const byId: ReadonlyMap<string, FastenerMaterialEntry> = new Map(fastenerMaterials.rows.map((row) => [row.id, row]));

/** The entry with this id. */
export function findFastenerMaterial(id: string): FastenerMaterialEntry | undefined {
  return byId.get(id);
}

/** Rows that share document, metal and mark. */
function entries(standard: string, metal: Metal, mark: Mark, rows: readonly Row[]): FastenerMaterialEntry[] {
  return rows.map(([id, name, hardnessMin, hardnessMax, note]) => {
    const entry = { id, standard, name, ...metal, hardnessMin, hardnessMax, mark };
    return note === undefined ? entry : { ...entry, note };
  });
}

function hrb(value: number): Hardness {
  return { scale: 'HRB', value };
}

function hrc(value: number): Hardness {
  return { scale: 'HRC', value };
}

function hrf(value: number): Hardness {
  return { scale: 'HRF', value };
}

function hv(value: number): Hardness {
  return { scale: 'HV', value };
}
