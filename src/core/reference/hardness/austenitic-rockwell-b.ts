import type { Table } from '../../model/table.ts';

export interface AusteniticRockwellBRow {
  readonly hrb: number;
  /** Brinell, 10 mm ball, 3000 kgf. */
  readonly hbw: number;
}

/** Annealed austenitic stainless plate, HRB 60 to 100. The standard has no Vickers column in this range. */
export const austeniticRockwellB: Table<AusteniticRockwellBRow> = {
  id: 'astm-e140-table-5',
  title: 'Austenitic stainless plate, annealed',
  sources: [
    {
      document: 'ASTM E140-12b',
      place: 'Table 5 and its equation 1/HB = 0.0001304 (130 - HRB)',
      mark: 'memory',
      note: 'The equation reproduces the rows within 0.75 HB. The limit pairs 201 HBW with 92 HRB and 217 with 95 of ASTM A240 lie on it; the pair 187 with 90 of JIS G4305 does not (89.0). Cold-worked austenitics are outside the table.',
    },
  ],
  rows: [
    { hrb: 100, hbw: 256 },
    { hrb: 98, hbw: 240 },
    { hrb: 96, hbw: 226 },
    { hrb: 95, hbw: 219 },
    { hrb: 94, hbw: 213 },
    { hrb: 93, hbw: 207 },
    { hrb: 92, hbw: 202 },
    { hrb: 91, hbw: 197 },
    { hrb: 90, hbw: 192 },
    { hrb: 88, hbw: 183 },
    { hrb: 86, hbw: 174 },
    { hrb: 85, hbw: 170 },
    { hrb: 84, hbw: 167 },
    { hrb: 82, hbw: 160 },
    { hrb: 80, hbw: 153 },
    { hrb: 78, hbw: 147 },
    { hrb: 76, hbw: 142 },
    { hrb: 75, hbw: 139 },
    { hrb: 74, hbw: 137 },
    { hrb: 72, hbw: 132 },
    { hrb: 70, hbw: 128 },
    { hrb: 68, hbw: 124 },
    { hrb: 66, hbw: 120 },
    { hrb: 65, hbw: 118 },
    { hrb: 62, hbw: 113 },
    { hrb: 60, hbw: 110 },
  ],
};
