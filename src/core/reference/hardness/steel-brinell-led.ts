import type { Mark, Table } from '../../model/table.ts';

export interface SteelBrinellLedRow {
  /** Brinell, 10 mm ball, 3000 kgf. */
  readonly hbw: number;
  readonly hrb: number;
  /** In brackets in the source: above the proper range of Rockwell B, for comparison only. */
  readonly bracketed: boolean;
  readonly hrc: number | null;
  readonly mark: Mark;
}

/** Steel from Brinell, HB 111 to 352, the one table that carries Rockwell B above 100. */
export const steelBrinellLed: Table<SteelBrinellLedRow> = {
  id: 'sae-j417-brinell',
  title: 'Steel from Brinell, with Rockwell B above 100 in brackets',
  sources: [
    {
      document: 'SAE J417, ASTM A370',
      place: 'Conversion from Brinell',
      mark: 'printed',
      note: 'Three texts agree; below HB 163 they give whole points and the tenths are from memory. Against ASTM E140 Table 2 it reads 0.2 points higher at HB 217, 3.2 at HB 111.',
    },
  ],
  rows: [
    { hbw: 352, hrb: 110, bracketed: true, hrc: 37.9, mark: 'printed' },
    { hbw: 341, hrb: 109, bracketed: true, hrc: 36.6, mark: 'printed' },
    { hbw: 331, hrb: 108.5, bracketed: true, hrc: 35.5, mark: 'printed' },
    { hbw: 321, hrb: 108, bracketed: true, hrc: 34.3, mark: 'printed' },
    { hbw: 311, hrb: 107.5, bracketed: true, hrc: 33.1, mark: 'printed' },
    { hbw: 302, hrb: 107, bracketed: true, hrc: 32.1, mark: 'printed' },
    { hbw: 293, hrb: 106, bracketed: true, hrc: 30.9, mark: 'printed' },
    { hbw: 285, hrb: 105.5, bracketed: true, hrc: 29.9, mark: 'printed' },
    { hbw: 277, hrb: 104.5, bracketed: true, hrc: 28.8, mark: 'printed' },
    { hbw: 269, hrb: 104, bracketed: true, hrc: 27.6, mark: 'printed' },
    { hbw: 262, hrb: 103, bracketed: true, hrc: 26.6, mark: 'printed' },
    { hbw: 255, hrb: 102, bracketed: true, hrc: 25.4, mark: 'printed' },
    { hbw: 248, hrb: 101, bracketed: true, hrc: 24.2, mark: 'printed' },
    { hbw: 241, hrb: 100, bracketed: false, hrc: 22.8, mark: 'printed' },
    { hbw: 235, hrb: 99, bracketed: false, hrc: 21.7, mark: 'printed' },
    { hbw: 229, hrb: 98.2, bracketed: false, hrc: 20.5, mark: 'printed' },
    { hbw: 223, hrb: 97.3, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 217, hrb: 96.4, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 212, hrb: 95.5, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 207, hrb: 94.6, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 201, hrb: 93.8, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 197, hrb: 92.8, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 192, hrb: 91.9, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 187, hrb: 90.7, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 183, hrb: 90, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 179, hrb: 89, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 174, hrb: 87.8, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 170, hrb: 86.8, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 167, hrb: 86, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 163, hrb: 85, bracketed: false, hrc: null, mark: 'printed' },
    { hbw: 156, hrb: 82.9, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 149, hrb: 80.8, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 143, hrb: 78.7, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 137, hrb: 76.4, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 131, hrb: 74, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 126, hrb: 72, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 121, hrb: 69.8, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 116, hrb: 67.6, bracketed: false, hrc: null, mark: 'memory' },
    { hbw: 111, hrb: 65.7, bracketed: false, hrc: null, mark: 'memory' },
  ],
};
