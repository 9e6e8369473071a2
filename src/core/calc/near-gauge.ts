import { rememberText } from '../caching/remember.ts';
import type { SheetFamily } from '../model/sheet.ts';
import { stainlessStockedGauge } from '../reference/thickness/stainless-stocked-gauge.ts';
import { inchesOf } from '../units/length.ts';
import { gaugeTablesOf } from './gauge-family.ts';

/** Farther from a gauge than this, a thickness is no longer that gauge: the spread of decimals stocked under one number. */
const SNAP_INCH = 0.0015;

/**
 * The gauge of this metal that a thickness in mm stands for, within 0.0015 in; the nearest where several do. Null: none is near.
 * Source of the distance: stocked decimals of aluminium against the Brown & Sharpe gauge.
 */
export function nearGauge(mm: number, family: SheetFamily): { gauge: number; table: string } | null {
  const distance = (inch: number) => Math.abs(inchesOf(mm) - inch);
  const near = gaugeInches(family).filter(({ inch }) => distance(inch) <= SNAP_INCH + 1e-9);
  const [nearest] = near.sort((a, b) => distance(a.inch) - distance(b.inch));
  return nearest ? { gauge: nearest.gauge, table: nearest.table } : null;
}

/** A thickness that goes by a gauge number in one table. */
export interface GaugeInch {
  readonly gauge: number;
  readonly inch: number;
  readonly table: string;
}

/** Every thickness that goes by a gauge number in this metal, from all tables in use for it. */
export const gaugeInches: (family: SheetFamily) => readonly GaugeInch[] = rememberText(listGauges);

function listGauges(family: SheetFamily): readonly GaugeInch[] {
  return gaugeTablesOf(family).flatMap(({ id, rows }) => {
    const listed = rows.map(({ gauge, inch }) => ({ gauge, inch, table: id }));
    if (id !== stainlessStockedGauge.id) return listed;
    const second = stainlessStockedGauge.rows.map(({ gauge, secondInch }) => ({ gauge, inch: secondInch, table: id }));
    return [...listed, ...second];
  });
}
