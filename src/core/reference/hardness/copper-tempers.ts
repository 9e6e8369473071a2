import type { Table } from '../../model/table.ts';

export interface CopperTemperRow {
  /** Temper as ASTM B601 writes it. */
  readonly temper: string;
  /** Tensile strength in thousand pounds per square inch. */
  readonly utsKsi: number;
  /** Null: too soft for Rockwell B. */
  readonly hrb: number | null;
  readonly hrf: number;
  readonly hr30t: number | null;
}

/** Measured pairs on tough-pitch copper flat products: not a standard's conversion, but the only figures at hand for copper. */
export const copperTempers: Table<CopperTemperRow> = {
  id: 'copper-tempers',
  title: 'Tough-pitch copper flat products by temper',
  sources: [
    {
      document: 'Copper Development Association, alloy data',
      place: 'C12700, flat products, typical properties',
      mark: 'printed',
      note: 'Silver-bearing tough pitch; taken for C11000, whose own figures were not read. The conversion for copper in ASTM E140 Table 7 was not at hand.',
    },
  ],
  rows: [
    { temper: 'OS025', utsKsi: 34, hrb: null, hrf: 45, hr30t: null },
    { temper: 'H00', utsKsi: 36, hrb: 10, hrf: 60, hr30t: 25 },
    { temper: 'H02', utsKsi: 42, hrb: 40, hrf: 84, hr30t: 50 },
    { temper: 'H04', utsKsi: 50, hrb: 50, hrf: 90, hr30t: 57 },
    { temper: 'H08', utsKsi: 55, hrb: 60, hrf: 94, hr30t: 63 },
    { temper: 'H10', utsKsi: 57, hrb: 62, hrf: 95, hr30t: 64 },
  ],
};
