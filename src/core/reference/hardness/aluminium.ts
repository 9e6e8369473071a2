import type { Table } from '../../model/table.ts';

export interface AluminiumRow {
  /** Brinell, 10 mm ball, 500 kgf. */
  readonly hb: number;
  readonly hv: number;
  /** Null where the metal is off the Rockwell B scale. */
  readonly hrb: number | null;
  /** Null where this transcription has no value. */
  readonly hre: number | null;
}

/** Wrought aluminium, HB 40 to 160 with 500 kgf. Below about HB 75 Rockwell B says nothing useful. */
export const aluminiumHardness: Table<AluminiumRow> = {
  id: 'astm-e140-table-9',
  title: 'Wrought aluminium',
  sources: [
    {
      document: 'ASTM E140-12b',
      place: 'Table 9',
      mark: 'memory',
      note: 'The Vickers column agrees with handbook data sheets at HB 60 (HV 68) and HB 95 (HV 107 to 111). At HB 95 the data sheets give HRB 60, this table 56.',
    },
  ],
  rows: [
    { hb: 160, hv: 189, hrb: 91, hre: null },
    { hb: 155, hv: 183, hrb: 90, hre: null },
    { hb: 150, hv: 177, hrb: 89, hre: null },
    { hb: 145, hv: 171, hrb: 87, hre: null },
    { hb: 140, hv: 165, hrb: 86, hre: null },
    { hb: 135, hv: 159, hrb: 84, hre: null },
    { hb: 130, hv: 153, hrb: 81, hre: null },
    { hb: 125, hv: 147, hrb: 79, hre: null },
    { hb: 120, hv: 141, hrb: 76, hre: 101 },
    { hb: 115, hv: 135, hrb: 72, hre: 100 },
    { hb: 110, hv: 129, hrb: 69, hre: 99 },
    { hb: 105, hv: 123, hrb: 65, hre: 98 },
    { hb: 100, hv: 117, hrb: 60, hre: null },
    { hb: 95, hv: 111, hrb: 56, hre: 96 },
    { hb: 90, hv: 105, hrb: 51, hre: 94 },
    { hb: 85, hv: 98, hrb: 46, hre: 91 },
    { hb: 80, hv: 92, hrb: 40, hre: 88 },
    { hb: 75, hv: 86, hrb: 34, hre: 84 },
    { hb: 70, hv: 80, hrb: 28, hre: 80 },
    { hb: 65, hv: 74, hrb: null, hre: 75 },
    { hb: 60, hv: 68, hrb: null, hre: 70 },
    { hb: 55, hv: 62, hrb: null, hre: 65 },
    { hb: 50, hv: 56, hrb: null, hre: 59 },
    { hb: 45, hv: 50, hrb: null, hre: 53 },
    { hb: 40, hv: 44, hrb: null, hre: 46 },
  ],
};
