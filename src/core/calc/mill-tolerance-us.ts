import type { ShopSettings } from '../model/shop.ts';
import type { Table } from '../model/table.ts';
import { astmA480Inch } from '../reference/thickness/astm-a480-inch.ts';
import { astmB209 } from '../reference/thickness/astm-b209.ts';
import type { GaugeToleranceRow, InchBandRow } from '../reference/thickness/row-types.ts';
import { usColdRolledTolerance } from '../reference/thickness/us-cold-rolled-tolerance.ts';
import { usGalvanizedTolerance } from '../reference/thickness/us-galvanized-tolerance.ts';
import { usHotRolledTolerance } from '../reference/thickness/us-hot-rolled-tolerance.ts';
import { inchesOf, mmOf } from '../units/length.ts';
import type { MillTolerance, OrderedSheet } from './thinnest.ts';
import { isInBand, toleranceAtWidth } from './tolerance-band.ts';

// A gauge written in mm to two or three decimals is still that gauge.
const SAME_INCH = 0.0001;

/** Thickness tolerance by the US tables. Null where no table covers the sheet. */
export function usMillTolerance(sheet: OrderedSheet, width: ShopSettings['sheetWidth']): MillTolerance | null {
  const { family, hotRolled } = sheet;
  const inch = inchesOf(sheet.mm);
  if (family === 'galvanized-steel' || family === 'galvannealed-steel') return byGauge(usGalvanizedTolerance, inch);
  if (family === 'carbon-steel') return byGauge(hotRolled ? usHotRolledTolerance : usColdRolledTolerance, inch);
  if (hotRolled) return null;
  if (family === 'aluminium') return byBand(astmB209, inch, width);
  return family.startsWith('stainless') ? byBand(astmA480Inch, inch, width) : null;
}

// The steel tables step by gauge. A decimal between two gauges gets the thicker one's row: its tolerance is the wider or the same.
function byGauge(table: Table<GaugeToleranceRow>, inch: number): MillTolerance | null {
  const thinToThick = [...table.rows].sort((a, b) => a.inch - b.inch);
  const thinnestInch = thinToThick[0]?.inch ?? Number.NaN;
  const row = thinToThick.find((candidate) => inch <= candidate.inch + SAME_INCH);
  if (!row || !(inch >= thinnestInch - SAME_INCH)) return null;
  const between = Math.abs(row.inch - inch) > SAME_INCH;
  return {
    minusMm: mmOf(row.plusMinusInch, 'in'),
    table: table.id,
    assumed: between ? `the tolerance of ${row.gauge} gauge, the next thicker` : null,
  };
}

function byBand(table: Table<InchBandRow>, inch: number, width: ShopSettings['sheetWidth']): MillTolerance | null {
  const row = table.rows.find(({ lowInch, highInch, bounds }) => isInBand(inch, lowInch, highInch, bounds));
  const usable = row ?? findNextThicker(table, inch);
  if (!usable) return null;
  const columns = { narrow: usable.narrowInch, medium: usable.mediumInch, wide: usable.wideInch };
  const { plusMinus, assumed } = toleranceAtWidth(columns, width);
  return { minusMm: mmOf(plusMinus, 'in'), table: table.id, assumed };
}

// Bands printed in whole thousandths leave gaps (0.028, then 0.029): what falls between takes the thicker band.
function findNextThicker(table: Table<InchBandRow>, inch: number): InchBandRow | undefined {
  const thinnestInch = table.rows[0]?.lowInch ?? Number.NaN;
  return inch > thinnestInch ? table.rows.find(({ lowInch }) => inch < lowInch && lowInch - inch < 0.001) : undefined;
}
