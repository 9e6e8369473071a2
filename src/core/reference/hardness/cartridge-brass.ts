import type { Table } from '../../model/table.ts';

export interface CartridgeBrassRow {
  readonly hv: number;
  readonly hrb: number;
  /** Null where this transcription has no value. */
  readonly hrf: number | null;
  /** Brinell, 10 mm ball, 500 kgf. */
  readonly hb: number;
}

/** Cartridge brass (70 % copper, 30 % zinc), HRB 10 to 93.5. */
export const cartridgeBrass: Table<CartridgeBrassRow> = {
  id: 'astm-e140-table-4',
  title: 'Cartridge brass',
  sources: [
    {
      document: 'ASTM E140-12b',
      place: 'Table 4',
      mark: 'memory',
      note: 'No printed text of these numbers was read.',
    },
  ],
  rows: [
    { hv: 196, hrb: 93.5, hrf: 110, hb: 169 },
    { hv: 190, hrb: 92.5, hrf: 109, hb: 164 },
    { hv: 180, hrb: 90, hrf: 107.5, hb: 156 },
    { hv: 170, hrb: 87, hrf: null, hb: 147 },
    { hv: 160, hrb: 83.5, hrf: null, hb: 139 },
    { hv: 150, hrb: 80, hrf: null, hb: 131 },
    { hv: 140, hrb: 76, hrf: 100.5, hb: 122 },
    { hv: 130, hrb: 72, hrf: 98, hb: 114 },
    { hv: 126, hrb: 70, hrf: 97, hb: 112 },
    { hv: 120, hrb: 67, hrf: 95.5, hb: 106 },
    { hv: 110, hrb: 62, hrf: 92.6, hb: 97 },
    { hv: 100, hrb: 56, hrf: 89, hb: 88 },
    { hv: 90, hrb: 47.5, hrf: 84.4, hb: 80 },
    { hv: 80, hrb: 37.5, hrf: 78.6, hb: 72 },
    { hv: 70, hrb: 24.5, hrf: 71.8, hb: 63 },
    { hv: 60, hrb: 10, hrf: 62.5, hb: 55 },
  ],
};
