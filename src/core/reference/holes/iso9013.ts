import type { Table } from '../../model/table.ts';

export interface Iso9013Row {
  /** Sheet thickness above this. */
  readonly overMm: number;
  readonly toMm: number;
  /** Plus or minus, for nominal sizes up to 3 mm. */
  readonly nominalTo3Mm: number;
  readonly nominalTo10Mm: number;
  readonly nominalTo35Mm: number;
}

/** Limit deviations of thermal cutting, class 1: what a laser normally reaches. */
export const iso9013Class1: Table<Iso9013Row> = {
  id: 'iso-9013-class-1',
  title: 'Thermal cutting, class 1: limit deviations',
  sources: [
    {
      document: 'ISO 9013',
      place: 'class 1',
      mark: 'printed',
      note: 'Read in one text. Too wide for a one-sided band of 0.08 mm.',
    },
  ],
  rows: [
    { overMm: 0, toMm: 1, nominalTo3Mm: 0.075, nominalTo10Mm: 0.1, nominalTo35Mm: 0.1 },
    { overMm: 1, toMm: 3.15, nominalTo3Mm: 0.1, nominalTo10Mm: 0.15, nominalTo35Mm: 0.2 },
    { overMm: 3.15, toMm: 6.3, nominalTo3Mm: 0.2, nominalTo10Mm: 0.2, nominalTo35Mm: 0.25 },
  ],
};
