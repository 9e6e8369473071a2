import { split } from './designation.ts';

/** Temper words by the code under which `tempersByAlloy` lists them. */
export const temperWords: readonly (readonly [code: string, words: readonly string[]])[] = [
  [
    'O',
    split(
      `
        O; SOFT; ANN; ANN.; ANLD; ANNEALED; ANEALED; FULLY ANNEALED; SOLUTION ANNEALED; SOLUTION TREATED;
        DEAD SOFT; W19; O60; OS025; OS035; OS050; OS070; GEGLUEHT; WEICH; RECUIT; RECOCIDO; RICOTTO; ZACHT; 软; 退火`,
    ),
  ],
  ['1/8H', split('1/8H; 1/8 HARD; EIGHTH HARD')],
  ['1/4H', split('1/4H; 1/4 HARD; QH; QUARTER HARD; QTR HARD; 1/4HARD; VIERTELHART')],
  ['1/2H', split('1/2H; 1/2 HARD; HH; HALF HARD; HALF-HARD; 1/2HARD; HALBHART; DEMI-DUR; 半硬')],
  ['3/4H', split('3/4H; 3/4 HARD; THREE QUARTER HARD; 3/4HARD; TQH')],
  ['H', split('FH; FULL HARD; HARD; F.H.; FULLHARD; HART; 硬')],
  ['EH', split('EH; EXTRA HARD')],
  ['SH', split('SH; SPRING; SPRING TEMPER; SPRING HARD')],
  ['SKIN', split('SKIN PASSED; SKIN ROLLED; SKIN PASS; SKINPASSED; TEMPER ROLLED')],
  ['F', split('F; AS FABRICATED')],
  [
    'HT',
    split(
      'HT; HARDENED; HEAT TREATED; HEAT-TREATED; Q&T; QUENCHED; QUENCHED AND TEMPERED; TEMPERED; CASE HARDENED; VERGUTET; GEHARTET',
    ),
  ],
  ['CW', split('CW; COLD WORKED; WORK HARDENED; STRAIN HARDENED; STRAIN-HARDENED; HARD ROLLED')],
  ...'H12 H14 H16 H18 H22 H24 H26 H28 H32 H34 H36 H38 H111 H112 H116 H321 T3 T4 T5 T6 T73 T7351 T8 T81'
    .split(' ')
    .map((word) => [word, [word]] as const),
  ['H22', ['G22']],
  ['H24', ['G24']],
  ['T3', ['T351']],
  ['T4', ['T42', 'T451']],
  ['T6', ['T651', 'T6511', 'T62']],
  ...'H00 H01 H02 H03 H04 H06 H08'.split(' ').map((word) => [word, [word]] as const),
  ...'R200 R240 R360'.split(' ').map((word) => [word, [word]] as const),
  ...'C290 C340 C390 C440 C490 C590 C690 LC'.split(' ').map((word) => [word, [word]] as const),
  ...'C700 C850 C1000 C1150 C1300 CP350 CP500 CP700 CP900 CP1100 CP1300'
    .split(' ')
    .map((word) => [word, [word, `+${word}`]] as const),
];

type Tempers = Readonly<Record<string, readonly string[]>>;

const one = (tempers: Readonly<Record<string, string>>): Tempers =>
  Object.fromEntries(Object.entries(tempers).map(([code, ids]) => [code, ids.split(' ')]));

const A109 = one({ O: 'a109-t5', '1/4H': 'a109-t3', '1/2H': 'a109-t2', H: 'a109-t1', SKIN: 'a109-t4' });

/** Entry ids of an alloy by temper code. A temper that is not listed has no hardness here. European strip tempers of 1.4310 go to the temper of like strength. */
export const tempersByAlloy: Readonly<Record<string, Tempers>> = {
  crs: A109,
  a109: A109,
  dc01: one({
    O: 'dc01-a',
    SKIN: 'dc01-lc',
    LC: 'dc01-lc',
    C290: 'dc01-c290',
    C340: 'dc01-c340',
    C390: 'dc01-c390',
    C440: 'dc01-c440',
    C490: 'dc01-c490',
    C590: 'dc01-c590',
    C690: 'dc01-c690',
  }),
  dc03: one({ O: 'dc03-a', SKIN: 'dc03-lc', LC: 'dc03-lc' }),
  dc04: one({ SKIN: 'dc04-lc', LC: 'dc04-lc' }),
  spcc: one({ O: 'spcc-a', SKIN: 'spcc-s', '1/8H': 'spcc-8', '1/4H': 'spcc-4', '1/2H': 'spcc-2', H: 'spcc-1' }),
  'gi-ss80': one({ H: 'gi-ss80' }),
  gi: one({ H: 'gi-ss80' }),
  '301': one({
    O: '301',
    '1/4H': '301-14h',
    '1/2H': '301-12h',
    '3/4H': '301-34h',
    H: '301-fh',
    C700: '301 301-14h',
    C850: '301-14h',
    C1000: '301-12h',
    C1150: '301-34h',
    C1300: '301-fh',
  }),
  '304': one({ O: '304', '1/8H': '304-18h', '1/4H': '304-14h' }),
  '304l': one({ O: '304l' }),
  '316': one({ O: '316' }),
  '316l': one({ O: '316l' }),
  '430': one({ O: '430' }),
  '410': one({ O: '410' }),
  '409': one({ O: '409' }),
  '1100': one({ H14: '1100-h14' }),
  '1050a': one({ H14: '1050a-h14' }),
  '3003': one({ H14: '3003-h14' }),
  '5005': one({ H34: '5005-h34' }),
  '5052': one({ O: '5052-o', H32: '5052-h32', H22: '5052-h32', H34: '5052-h34', H24: '5052-h34', H38: '5052-h38' }),
  '5754': one({
    O: '5754-o',
    H111: '5754-o',
    H12: '5754-h12',
    H14: '5754-h14',
    H18: '5754-h18',
    H22: '5754-h22',
    H32: '5754-h22',
    H24: '5754-h24',
    H34: '5754-h24',
  }),
  '5083': one({ O: '5083-o', H111: '5083-o', H112: '5083-h112', H116: '5083-h116', H12: '5083-h12' }),
  '6061': one({ O: '6061-o', T4: '6061-t4', T6: '6061-t6' }),
  '6082': one({ O: '6082-o', T4: '6082-t4', T6: '6082-t6' }),
  '2024': one({ T3: '2024-t3' }),
  '7075': one({ O: '7075-o', T6: '7075-t6' }),
  c110: one({
    O: 'c110-o',
    H00: 'c110-h00',
    '1/8H': 'c110-h00',
    H02: 'c110-h02',
    '1/2H': 'c110-h02',
    H04: 'c110-h04',
    H: 'c110-h04',
    R200: 'cu-r200',
    R240: 'cu-r240',
    R360: 'cu-r360',
  }),
  c260: one({
    O: 'c260-o',
    H01: 'c260-h01',
    '1/4H': 'c260-h01',
    H02: 'c260-h02',
    '1/2H': 'c260-h02',
    H04: 'c260-h04',
    H: 'c260-h04',
  }),
  cuzn37: one({
    O: 'cuzn37',
    '1/4H': 'cuzn37',
    '1/2H': 'cuzn37',
    H01: 'cuzn37',
    H02: 'cuzn37',
    H04: 'cuzn37',
    H: 'cuzn37',
  }),
  c510: one({
    O: 'c510-o',
    H02: 'c510-h02',
    '1/2H': 'c510-h02',
    H04: 'c510-h04',
    H: 'c510-h04',
    H06: 'c510-h06',
    EH: 'c510-h06',
  }),
  'ti-gr1': one({ O: 'ti-gr1' }),
  'ti-gr2': one({ O: 'ti-gr2' }),
};
