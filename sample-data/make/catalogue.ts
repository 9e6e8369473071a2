import { dimensionsOf } from './dimensions.ts';
import { hardnessOf, METALS } from './metals.ts';
import { type Part, parts } from './parts.ts';
import { superseded } from './ranges.ts';
import { strengthOf } from './strength.ts';
import { isThread } from './threads.ts';
import { termsOf } from './trade-terms.ts';

/** Headings of the catalogue table, in its order. */
const HEADINGS = [
  ...['partNumber', 'kind', 'thread', 'lengthMm', 'material', 'hardnessMin', 'finish', 'sheetMinMm', 'sheetMaxMm'],
  ...['shankMm', 'flush', 'holeMm', 'holePlusMm', 'holeMinusMm', 'edgeMm', 'spacingMm', 'sheetHardnessMax'],
  ...['flangeMm', 'heightMm', 'forceSteelKn', 'forceAluminiumKn', 'pushOutSteelN', 'pushOutAluminiumN'],
  ...['torqueOutSteelNm', 'torqueOutAluminiumNm', 'stocked', 'packSize', 'moq', 'unitPrice', 'currency', 'leadDays'],
  ...['supersededBy', 'supplier', 'source', 'sourceDate', 'note'],
];

type Row = Readonly<Record<string, string | number | null>>;

/** The demo catalogue as a table of cells, headings first. */
export function catalogueCells(): string[][] {
  const rows = [...parts.map(current), ...superseded.map(firstDesign)];
  return [HEADINGS, ...rows.map((row) => HEADINGS.map((heading) => String(row[heading] ?? '')))];
}

function current(part: Part): Row {
  const { material, finish } = METALS[part.material];
  return {
    partNumber: part.partNumber,
    kind: part.kind,
    thread: isThread(part.size) ? part.size : null,
    lengthMm: part.lengthMm,
    material,
    finish,
    ...hardnessOf(part),
    ...dimensionsOf(part),
    holePlusMm: 0.08,
    holeMinusMm: 0,
    ...strengthOf(part),
    ...termsOf(part),
    supplier: 'Invented Supply',
    source: 'invented for demonstration',
    sourceDate: '2025-01-15',
    note: 'demo: not for production',
  };
}

/** The superseded first design of a part: the same dimensions, no longer stocked. */
function firstDesign(partNumber: string): Row {
  const part = parts.find((one) => one.partNumber === partNumber);
  if (!part) throw new Error(`no part ${partNumber} to supersede anything`);
  return { ...current(part), partNumber: `${partNumber}-A`, stocked: 'no', leadDays: 90, supersededBy: partNumber };
}
