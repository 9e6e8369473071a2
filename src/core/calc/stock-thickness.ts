import type { SheetFamily } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { preferredMetric } from '../reference/thickness/preferred-metric.ts';
import { isAtLeast } from './closeness.ts';
import { gaugeThickness } from './gauge.ts';

const GAUGES = Array.from({ length: 28 }, (_, index) => 30 - index);

/**
 * The thinnest sheet in stock that is at least so thick: a gauge for lists written in gauges or inches, else a preferred metric
 * thickness of that metal. Null where nothing in the tables is thick enough. Source: the gauge tables and the metric series (memory).
 */
export function findStockThickness(
  leastMm: number,
  family: SheetFamily | null,
  writtenIn: ThicknessReading['writtenIn'],
): { readonly mm: number; readonly name: string } | null {
  return (
    (writtenIn === 'gauge' || writtenIn === 'in' ? findGauge(leastMm, family) : null) ?? findMetric(leastMm, family)
  );
}

function findGauge(leastMm: number, family: SheetFamily | null) {
  for (const gauge of GAUGES) {
    const found = gaugeThickness(gauge, family);
    if (found && isAtLeast(found.mm, leastMm)) return { mm: found.mm, name: `${gauge} ga (${found.mm.toFixed(2)} mm)` };
  }
  return null;
}

function findMetric(leastMm: number, family: SheetFamily | null) {
  const series = family === 'aluminium' ? 'European stock, aluminium' : 'European stock, steel';
  const sizes = preferredMetric.rows
    .filter((row) => row.series === series)
    .flatMap(({ thicknessesMm }) => thicknessesMm);
  const mm = sizes.filter((size) => isAtLeast(size, leastMm)).sort((a, b) => a - b)[0];
  return mm === undefined ? null : { mm, name: `${mm.toFixed(2)} mm` };
}
