import type { Mark, Table } from '../../model/table.ts';

export interface SteelIso18265Row {
  readonly hv: number;
  /** Brinell, F/D2 = 30; 0.95 HV throughout. */
  readonly hb: number;
  readonly hrb: number | null;
  readonly hrc: number | null;
  /** Tensile strength. */
  readonly rmMpa: number;
  /** `memory` where the Rockwell B value of the row was not read. */
  readonly mark: Mark;
}

/** Unalloyed and low-alloy steel, HV 80 to 500 here; the standard goes on to HV 940 and, in strength, to 2180 MPa (HV 650). */
export const steelIso18265: Table<SteelIso18265Row> = {
  id: 'iso-18265-table-a1',
  title: 'Unalloyed and low-alloy steel, hardness and tensile strength',
  sources: [
    {
      document: 'ISO 18265:2013, formerly DIN 50150',
      place: 'Table A.1',
      mark: 'printed',
      note: 'Three texts agree. The standard calls the strength column the least reliable. A fourth text headed DIN 50150 prints other Rockwell B values (67.5 at HV 130, 77 at HV 150) and was set aside.',
    },
  ],
  rows: [
    { hv: 80, hb: 76, hrb: null, hrc: null, rmMpa: 255, mark: 'printed' },
    { hv: 85, hb: 80.7, hrb: 41, hrc: null, rmMpa: 270, mark: 'printed' },
    { hv: 90, hb: 85.5, hrb: 48, hrc: null, rmMpa: 285, mark: 'memory' },
    { hv: 95, hb: 90.2, hrb: 52, hrc: null, rmMpa: 305, mark: 'memory' },
    { hv: 100, hb: 95, hrb: 56.2, hrc: null, rmMpa: 320, mark: 'printed' },
    { hv: 110, hb: 105, hrb: 62.3, hrc: null, rmMpa: 350, mark: 'printed' },
    { hv: 115, hb: 109, hrb: null, hrc: null, rmMpa: 370, mark: 'printed' },
    { hv: 120, hb: 114, hrb: 66.7, hrc: null, rmMpa: 385, mark: 'printed' },
    { hv: 125, hb: 119, hrb: null, hrc: null, rmMpa: 400, mark: 'printed' },
    { hv: 130, hb: 124, hrb: 71.2, hrc: null, rmMpa: 415, mark: 'printed' },
    { hv: 135, hb: 128, hrb: null, hrc: null, rmMpa: 430, mark: 'printed' },
    { hv: 140, hb: 133, hrb: 75, hrc: null, rmMpa: 450, mark: 'printed' },
    { hv: 145, hb: 138, hrb: null, hrc: null, rmMpa: 465, mark: 'printed' },
    { hv: 150, hb: 143, hrb: 78.7, hrc: null, rmMpa: 480, mark: 'printed' },
    { hv: 155, hb: 147, hrb: null, hrc: null, rmMpa: 495, mark: 'printed' },
    { hv: 160, hb: 152, hrb: 81.7, hrc: null, rmMpa: 510, mark: 'printed' },
    { hv: 165, hb: 156, hrb: null, hrc: null, rmMpa: 530, mark: 'printed' },
    { hv: 170, hb: 162, hrb: 85, hrc: null, rmMpa: 545, mark: 'printed' },
    { hv: 180, hb: 171, hrb: 87.1, hrc: null, rmMpa: 575, mark: 'printed' },
    { hv: 190, hb: 181, hrb: 89.5, hrc: null, rmMpa: 610, mark: 'printed' },
    { hv: 200, hb: 190, hrb: 91.5, hrc: null, rmMpa: 640, mark: 'printed' },
    { hv: 205, hb: 195, hrb: 92.5, hrc: null, rmMpa: 660, mark: 'printed' },
    { hv: 210, hb: 199, hrb: 93.5, hrc: null, rmMpa: 675, mark: 'printed' },
    { hv: 215, hb: 204, hrb: 94, hrc: null, rmMpa: 690, mark: 'printed' },
    { hv: 220, hb: 209, hrb: 95, hrc: null, rmMpa: 705, mark: 'printed' },
    { hv: 225, hb: 214, hrb: 96, hrc: null, rmMpa: 720, mark: 'printed' },
    { hv: 230, hb: 219, hrb: 96.7, hrc: null, rmMpa: 740, mark: 'printed' },
    { hv: 240, hb: 228, hrb: 98.1, hrc: 20.3, rmMpa: 770, mark: 'printed' },
    { hv: 250, hb: 238, hrb: 99.5, hrc: 22.2, rmMpa: 800, mark: 'printed' },
    { hv: 255, hb: 242, hrb: null, hrc: 23.1, rmMpa: 820, mark: 'printed' },
    { hv: 265, hb: 252, hrb: null, hrc: 24.8, rmMpa: 850, mark: 'printed' },
    { hv: 275, hb: 261, hrb: null, hrc: 26.4, rmMpa: 880, mark: 'printed' },
    { hv: 290, hb: 276, hrb: null, hrc: 28.5, rmMpa: 930, mark: 'printed' },
    { hv: 300, hb: 285, hrb: null, hrc: 29.8, rmMpa: 965, mark: 'printed' },
    { hv: 320, hb: 304, hrb: null, hrc: 32.2, rmMpa: 1030, mark: 'printed' },
    { hv: 350, hb: 333, hrb: null, hrc: 35.5, rmMpa: 1125, mark: 'printed' },
    { hv: 400, hb: 380, hrb: null, hrc: 40.8, rmMpa: 1290, mark: 'printed' },
    { hv: 450, hb: 428, hrb: null, hrc: 45.3, rmMpa: 1455, mark: 'printed' },
    { hv: 500, hb: 475, hrb: null, hrc: 49.1, rmMpa: 1630, mark: 'printed' },
  ],
};
