import type { ShopSettings } from '../model/shop.ts';
import type { Table } from '../model/table.ts';
import { en10051 } from '../reference/thickness/en-10051.ts';
import { en10051CategoryA } from '../reference/thickness/en-10051-category-a.ts';
import { en10131 } from '../reference/thickness/en-10131.ts';
import { en10131HigherYield } from '../reference/thickness/en-10131-higher-yield.ts';
import { en10143 } from '../reference/thickness/en-10143.ts';
import { en10259 } from '../reference/thickness/en-10259.ts';
import type { BandRow } from '../reference/thickness/row-types.ts';
import { aluminiumTables } from './aluminium-group.ts';
import type { MillTolerance, OrderedSheet } from './thinnest.ts';
import { isInBand, toleranceAtWidth } from './tolerance-band.ts';

/**
 * Thickness tolerance by the EN tables: normal tolerances, thickness in mm. Where the table of the stronger grades does not reach,
 * that of the softer ones stands in, and `assumed` says so. Null where no table covers the sheet.
 */
export function enMillTolerance(sheet: OrderedSheet, width: ShopSettings['sheetWidth']): MillTolerance | null {
  for (const { table, assumed } of enTables(sheet)) {
    const row = table.rows.find(({ lowMm, highMm, bounds }) => isInBand(sheet.mm, lowMm, highMm, bounds));
    if (!row) continue;
    const columns = { narrow: row.narrowMm, medium: row.mediumMm, wide: row.wideMm };
    const found = toleranceAtWidth(columns, width);
    const phrases = [assumed, found.assumed].filter((phrase) => phrase !== null);
    return { minusMm: found.plusMinus, table: table.id, assumed: phrases.join('; ') || null };
  }
  return null;
}

type Choice = { readonly table: Table<BandRow>; readonly assumed: string | null };

const SOFTER = 'the tolerance of softer grades';

function enTables({ mm, family, alloy, hotRolled, structural = false }: OrderedSheet): readonly Choice[] {
  if (family === 'galvanized-steel' || family === 'galvannealed-steel') {
    return [{ table: en10143, assumed: structural ? SOFTER : null }];
  }
  if (family === 'carbon-steel') return carbonSteelTables(hotRolled, structural);
  if (hotRolled) return [];
  if (family === 'aluminium') return aluminiumTables(alloy, mm);
  return family.startsWith('stainless') ? [{ table: en10259, assumed: null }] : [];
}

function carbonSteelTables(hotRolled: boolean, structural: boolean): readonly Choice[] {
  if (hotRolled) return [{ table: structural ? en10051CategoryA : en10051, assumed: null }];
  if (!structural) return [{ table: en10131, assumed: null }];
  return [
    { table: en10131HigherYield, assumed: null },
    { table: en10131, assumed: SOFTER },
  ];
}
