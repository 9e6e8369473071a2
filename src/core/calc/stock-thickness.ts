import type { SheetFamily } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { preferredMetric } from '../reference/thickness/preferred-metric.ts';
import { isAtLeast } from './closeness.ts';
import { gaugeThickness } from './gauge.ts';

const GAUGES = Array.from({ length: 28 }, (_, index) => 30 - index);

/** A thickness in which sheet is stocked; `gauge` where it goes by a gauge number. */
export interface StockThickness {
  readonly mm: number;
  readonly name: string;
  readonly gauge: number | null;
}

/**
 * The thinnest sheet in stock that is at least so thick: a gauge for lists written in gauges or inches, else a preferred metric
 * thickness of that metal. Null where nothing in the tables is thick enough. Source: the gauge tables and the metric series (memory).
 */
export function findStockThickness(
  leastMm: number,
  family: SheetFamily | null,
  writtenIn: ThicknessReading['writtenIn'],
): StockThickness | null {
  const isThickEnough = ({ mm }: StockThickness) => isAtLeast(mm, leastMm);
  return stockThicknesses(family, writtenIn).find(isThickEnough) ?? metricSteps(family).find(isThickEnough) ?? null;
}

/** Every thickness of that metal in stock, thin to thick: gauges for lists written in gauges or inches, else metric. */
export function stockThicknesses(
  family: SheetFamily | null,
  writtenIn: ThicknessReading['writtenIn'],
): readonly StockThickness[] {
  const gauges = writtenIn === 'gauge' || writtenIn === 'in' ? gaugeSteps(family) : [];
  return gauges.length > 0 ? gauges : metricSteps(family);
}

function gaugeSteps(family: SheetFamily | null): readonly StockThickness[] {
  return GAUGES.flatMap((gauge) => {
    const found = gaugeThickness(gauge, family);
    return found ? { mm: found.mm, name: `${gauge} ga (${found.mm.toFixed(2)} mm)`, gauge } : [];
  });
}

function metricSteps(family: SheetFamily | null): readonly StockThickness[] {
  const series = family === 'aluminium' ? 'European stock, aluminium' : 'European stock, steel';
  const sizes = preferredMetric.rows
    .filter((row) => row.series === series)
    .flatMap(({ thicknessesMm }) => thicknessesMm);
  return [...sizes].sort((a, b) => a - b).map((mm) => ({ mm, name: `${mm.toFixed(2)} mm`, gauge: null }));
}
