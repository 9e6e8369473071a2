import type { Table } from '../../model/table.ts';

export interface BendRadiusSteelRow {
  readonly material: string;
  readonly timesThickness: number;
  /** Never less than this. */
  readonly leastMm: number;
}

/** Least inside bend radius of steel sheet. */
export const bendRadiusSteel: Table<BendRadiusSteelRow> = {
  id: 'bend-radius-steel',
  title: 'Least inside bend radius of low-carbon steel',
  sources: [{ document: 'Producibility guideline', place: 'bends', mark: 'printed', note: 'Two copies of one text.' }],
  rows: [{ material: 'low-carbon steel', timesThickness: 0.5, leastMm: 0.8 }],
};
