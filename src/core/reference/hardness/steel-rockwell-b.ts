import type { Table } from '../../model/table.ts';

export interface SteelRockwellBRow {
  readonly hrb: number;
  readonly hv: number;
  /** Brinell, 10 mm ball, 3000 kgf. */
  readonly hbw: number;
  /** Knoop, 500 gf and over. */
  readonly hk: number;
  /** Null where this transcription has no value, not where the standard has none. */
  readonly hra: number | null;
  readonly hr30t: number | null;
}

/** Carbon, low-alloy, ferritic and martensitic steel, HRB 55 to 100. Vickers and Brinell are equal in every row. */
export const steelRockwellB: Table<SteelRockwellBRow> = {
  id: 'astm-e140-table-2',
  title: 'Non-austenitic steel, Rockwell B range',
  sources: [
    {
      document: 'ASTM E140-12b',
      place: 'Table 2',
      mark: 'memory',
      note: 'HRB 96 to 100 were also read in a printed extract. The standard asks for converted Rockwell numbers to be rounded to whole points. ISO 18265 Table A.1 reads 1 to 2 points lower in HV from 140 on and up to 4 points higher in HB near 105.',
    },
    {
      document: 'ASTM A370',
      place: 'Straight-line fits HB against HRB in four ranges',
      mark: 'printed',
      note: 'Every row agrees with the fits within 1.6 HB.',
    },
  ],
  rows: [
    { hrb: 100, hv: 240, hbw: 240, hk: 251, hra: 61.5, hr30t: 83.1 },
    { hrb: 99, hv: 234, hbw: 234, hk: 246, hra: 60.9, hr30t: 82.5 },
    { hrb: 98, hv: 228, hbw: 228, hk: 241, hra: 60.2, hr30t: 81.8 },
    { hrb: 97, hv: 222, hbw: 222, hk: 236, hra: 59.5, hr30t: 81.1 },
    { hrb: 96, hv: 216, hbw: 216, hk: 231, hra: 58.9, hr30t: 80.4 },
    { hrb: 95, hv: 210, hbw: 210, hk: 226, hra: 58.3, hr30t: 79.8 },
    { hrb: 94, hv: 205, hbw: 205, hk: 221, hra: 57.6, hr30t: 79.1 },
    { hrb: 93, hv: 200, hbw: 200, hk: 216, hra: 57.0, hr30t: 78.4 },
    { hrb: 92, hv: 195, hbw: 195, hk: 211, hra: 56.4, hr30t: 77.8 },
    { hrb: 91, hv: 190, hbw: 190, hk: 206, hra: 55.8, hr30t: 77.1 },
    { hrb: 90, hv: 185, hbw: 185, hk: 201, hra: 55.2, hr30t: 76.4 },
    { hrb: 89, hv: 180, hbw: 180, hk: 196, hra: 54.6, hr30t: 75.8 },
    { hrb: 88, hv: 176, hbw: 176, hk: 192, hra: 54.0, hr30t: 75.1 },
    { hrb: 87, hv: 172, hbw: 172, hk: 188, hra: 53.4, hr30t: 74.4 },
    { hrb: 86, hv: 169, hbw: 169, hk: 184, hra: 52.8, hr30t: 73.8 },
    { hrb: 85, hv: 165, hbw: 165, hk: 180, hra: 52.3, hr30t: 73.1 },
    { hrb: 84, hv: 162, hbw: 162, hk: 176, hra: 51.7, hr30t: 72.4 },
    { hrb: 83, hv: 159, hbw: 159, hk: 173, hra: 51.1, hr30t: 71.8 },
    { hrb: 82, hv: 156, hbw: 156, hk: 170, hra: 50.6, hr30t: 71.1 },
    { hrb: 81, hv: 153, hbw: 153, hk: 167, hra: 50.0, hr30t: 70.4 },
    { hrb: 80, hv: 150, hbw: 150, hk: 164, hra: 49.5, hr30t: 69.7 },
    { hrb: 79, hv: 147, hbw: 147, hk: 161, hra: 48.9, hr30t: null },
    { hrb: 78, hv: 144, hbw: 144, hk: 158, hra: 48.4, hr30t: null },
    { hrb: 77, hv: 141, hbw: 141, hk: 155, hra: 47.9, hr30t: null },
    { hrb: 76, hv: 139, hbw: 139, hk: 152, hra: 47.3, hr30t: null },
    { hrb: 75, hv: 137, hbw: 137, hk: 150, hra: 46.8, hr30t: null },
    { hrb: 74, hv: 135, hbw: 135, hk: 147, hra: 46.3, hr30t: null },
    { hrb: 73, hv: 132, hbw: 132, hk: 145, hra: 45.8, hr30t: null },
    { hrb: 72, hv: 130, hbw: 130, hk: 143, hra: 45.3, hr30t: null },
    { hrb: 71, hv: 127, hbw: 127, hk: 141, hra: 44.8, hr30t: null },
    { hrb: 70, hv: 125, hbw: 125, hk: 139, hra: 44.3, hr30t: null },
    { hrb: 69, hv: 123, hbw: 123, hk: 137, hra: null, hr30t: null },
    { hrb: 68, hv: 121, hbw: 121, hk: 135, hra: null, hr30t: null },
    { hrb: 67, hv: 119, hbw: 119, hk: 133, hra: null, hr30t: null },
    { hrb: 66, hv: 117, hbw: 117, hk: 131, hra: null, hr30t: null },
    { hrb: 65, hv: 116, hbw: 116, hk: 129, hra: null, hr30t: null },
    { hrb: 64, hv: 114, hbw: 114, hk: 127, hra: null, hr30t: null },
    { hrb: 63, hv: 112, hbw: 112, hk: 125, hra: null, hr30t: null },
    { hrb: 62, hv: 110, hbw: 110, hk: 124, hra: null, hr30t: null },
    { hrb: 61, hv: 108, hbw: 108, hk: 122, hra: null, hr30t: null },
    { hrb: 60, hv: 107, hbw: 107, hk: 120, hra: null, hr30t: null },
    { hrb: 59, hv: 106, hbw: 106, hk: 118, hra: null, hr30t: null },
    { hrb: 58, hv: 104, hbw: 104, hk: 117, hra: null, hr30t: null },
    { hrb: 57, hv: 103, hbw: 103, hk: 115, hra: null, hr30t: null },
    { hrb: 56, hv: 101, hbw: 101, hk: 114, hra: null, hr30t: null },
    { hrb: 55, hv: 100, hbw: 100, hk: 112, hra: null, hr30t: null },
  ],
};
