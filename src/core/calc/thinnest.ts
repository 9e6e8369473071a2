import type { SheetFamily } from '../model/sheet.ts';
import type { ShopSettings } from '../model/shop.ts';
import { enMillTolerance } from './mill-tolerance-en.ts';
import { usMillTolerance } from './mill-tolerance-us.ts';

/** A sheet as ordered. */
export interface OrderedSheet {
  /** Nominal thickness. */
  readonly mm: number;
  readonly family: SheetFamily;
  /** Alloy without its condition: "5052", "304". Decides the group of aluminium alloys. */
  readonly alloy: string;
  readonly hotRolled: boolean;
  /** Structural or higher-strength steel: the wider tolerances apply where a table has them. */
  readonly structural?: boolean;
  readonly writtenIn: 'mm' | 'in' | 'gauge' | 'ounces';
}

/** What the mill may take off, and where that stands. */
export interface MillTolerance {
  readonly minusMm: number;
  /** Id of the table. */
  readonly table: string;
  /** What had to be taken for granted, in a phrase; null: nothing. */
  readonly assumed: string | null;
}

/**
 * The thinnest sheet that the mill may deliver for a nominal thickness. As written: inches and gauges by the US tables, millimetres
 * by the EN tables. Null where no table covers it: copper alloys, titanium, hot-rolled stainless or aluminium, sizes outside the tables.
 */
export function thinnest(
  sheet: OrderedSheet,
  settings: { standard: ShopSettings['thicknessStandard']; width: ShopSettings['sheetWidth'] },
): ({ mm: number } & MillTolerance) | null {
  const european = settings.standard === 'en' || (settings.standard === 'as-written' && sheet.writtenIn === 'mm');
  const tolerance = (european ? enMillTolerance : usMillTolerance)(sheet, settings.width);
  if (!tolerance) return null;
  const mm = Number((sheet.mm - tolerance.minusMm).toPrecision(12));
  return mm > 0 ? { mm, ...tolerance } : null;
}
