import type { Table } from '../../model/table.ts';

export interface SteelRockwellCRow {
  readonly hrc: number;
  readonly hv: number;
  /** Brinell, 10 mm ball, 3000 kgf; null above HRC 65 and in brackets in the standard above HRC 59. */
  readonly hbw: number | null;
}

/** Carbon, low-alloy and martensitic steel, HRC 20 to 68. */
export const steelRockwellC: Table<SteelRockwellCRow> = {
  id: 'astm-e140-table-1',
  title: 'Non-austenitic steel, Rockwell C range',
  sources: [
    {
      document: 'ASTM E140-12b',
      place: 'Table 1',
      mark: 'printed',
      note: 'Four texts agree; HRC 62 is HV 746 in two of them and 745 in one. Table 1 and Table 2 meet in HV (238 and 240), not in Brinell (226 and 240).',
    },
  ],
  rows: [
    { hrc: 20, hv: 238, hbw: 226 },
    { hrc: 21, hv: 243, hbw: 231 },
    { hrc: 22, hv: 248, hbw: 237 },
    { hrc: 23, hv: 254, hbw: 243 },
    { hrc: 24, hv: 260, hbw: 247 },
    { hrc: 25, hv: 266, hbw: 253 },
    { hrc: 26, hv: 272, hbw: 258 },
    { hrc: 27, hv: 279, hbw: 264 },
    { hrc: 28, hv: 286, hbw: 271 },
    { hrc: 29, hv: 294, hbw: 279 },
    { hrc: 30, hv: 302, hbw: 286 },
    { hrc: 31, hv: 310, hbw: 294 },
    { hrc: 32, hv: 318, hbw: 301 },
    { hrc: 33, hv: 327, hbw: 311 },
    { hrc: 34, hv: 336, hbw: 319 },
    { hrc: 35, hv: 345, hbw: 327 },
    { hrc: 36, hv: 354, hbw: 336 },
    { hrc: 37, hv: 363, hbw: 344 },
    { hrc: 38, hv: 372, hbw: 353 },
    { hrc: 39, hv: 382, hbw: 362 },
    { hrc: 40, hv: 392, hbw: 371 },
    { hrc: 41, hv: 402, hbw: 381 },
    { hrc: 42, hv: 412, hbw: 390 },
    { hrc: 43, hv: 423, hbw: 400 },
    { hrc: 44, hv: 434, hbw: 409 },
    { hrc: 45, hv: 446, hbw: 421 },
    { hrc: 46, hv: 458, hbw: 432 },
    { hrc: 47, hv: 471, hbw: 443 },
    { hrc: 48, hv: 484, hbw: 455 },
    { hrc: 49, hv: 498, hbw: 469 },
    { hrc: 50, hv: 513, hbw: 481 },
    { hrc: 52, hv: 544, hbw: 512 },
    { hrc: 55, hv: 595, hbw: 560 },
    { hrc: 58, hv: 653, hbw: 615 },
    { hrc: 60, hv: 697, hbw: 654 },
    { hrc: 62, hv: 746, hbw: 688 },
    { hrc: 65, hv: 832, hbw: 739 },
    { hrc: 68, hv: 940, hbw: null },
  ],
};
