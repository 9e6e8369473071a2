import type { Mark, Table } from '../../model/table.ts';

export interface AluminiumDataSheetRow {
  readonly alloy: string;
  /** Brinell, 10 mm ball, 500 kgf. */
  readonly hb: number;
  readonly hrb: number;
  readonly mark: Mark;
}

/** Single points that handbook data sheets give beside the standard's table. Not a curve: nothing lies between them. */
export const aluminiumDataSheets: Table<AluminiumDataSheetRow> = {
  id: 'asm-aluminium-points',
  title: 'Wrought aluminium, converted hardness on data sheets',
  sources: [
    {
      document: 'ASM data sheets, wrought aluminium',
      place: 'Hardness, Rockwell B, converted from Brinell',
      mark: 'printed',
      note: 'Only the 6061-T6 sheet was read, as quoted; the other two points are from memory.',
    },
  ],
  rows: [
    { alloy: '6061-T6', hb: 95, hrb: 60, mark: 'printed' },
    { alloy: '2024-T3', hb: 120, hrb: 75, mark: 'memory' },
    { alloy: '7075-T6', hb: 150, hrb: 87, mark: 'memory' },
  ],
};
