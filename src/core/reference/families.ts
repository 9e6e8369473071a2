import type { FastenerClass } from '../model/fastener.ts';
import type { SheetFamily } from '../model/sheet.ts';
import type { Table } from '../model/table.ts';

/** One row of the trade's table: may a fastener of this class go into that sheet metal at all? */
export interface FamilyRow {
  readonly fastener: FastenerClass;
  readonly coldRolled: boolean;
  readonly coated: boolean;
  readonly aluminium: boolean;
  readonly stainless: boolean;
}

/** A yes is necessary, not sufficient: the computed hardness still decides inside a family. */
export const familyTable: Table<FamilyRow> = {
  id: 'family-table',
  title: 'Fastener metals and the sheet metals they hold in',
  sources: [{ document: 'common practice, no source', place: 'spoken rule of the trade', mark: 'memory' }],
  rows: [
    { fastener: 'stainless-400-hardened', coldRolled: true, coated: true, aluminium: true, stainless: true },
    { fastener: 'stainless-ph', coldRolled: true, coated: true, aluminium: true, stainless: true },
    { fastener: 'stainless-300', coldRolled: true, coated: true, aluminium: true, stainless: false },
    { fastener: 'carbon-steel-hardened', coldRolled: true, coated: true, aluminium: true, stainless: false },
    { fastener: 'aluminium', coldRolled: false, coated: false, aluminium: true, stainless: false },
  ],
};

const COLUMN: Readonly<Partial<Record<SheetFamily, 'coldRolled' | 'coated' | 'aluminium' | 'stainless'>>> = {
  'carbon-steel': 'coldRolled',
  'galvanized-steel': 'coated',
  'galvannealed-steel': 'coated',
  aluminium: 'aluminium',
  'stainless-austenitic': 'stainless',
  'stainless-ferritic': 'stainless',
  'stainless-martensitic': 'stainless',
};

/**
 * What the trade's table says of a pair; null where it is silent: other fastener or sheet metals, and hardened stainless in
 * ferritic or martensitic sheet, for which only the refusals of the stainless column are spoken of.
 */
export function findFamilyAnswer(fastener: FastenerClass | null, sheet: SheetFamily): boolean | null {
  const row = familyTable.rows.find((candidate) => candidate.fastener === fastener);
  const column = COLUMN[sheet];
  if (!row || !column) return null;
  const allowed = row[column];
  const beyondTheTable = sheet === 'stainless-ferritic' || sheet === 'stainless-martensitic';
  return allowed && beyondTheTable ? null : allowed;
}
