import { type FastenerHardness, judgeFamily, judgeHardness } from './hardness.ts';
import { GAUGES, type GaugeNumber, INCH, SAME, thinnestMm } from './lengths.ts';
import { METALS, type MetalId } from './metals.ts';
import { type Outcome, together, type Verdict, worst } from './outcomes.ts';

/** A part as its catalogue describes it; null where the catalogue is silent. */
export interface Part extends FastenerHardness {
  readonly partNumber: string;
  readonly sheetMinMm: number | null;
  readonly sheetMaxMm: number | null;
  readonly holeMm: number | null;
  readonly band: { readonly plusMm: number; readonly minusMm: number } | null;
  readonly edgeMm: number | null;
}

/** What a cell says, known to whoever made it up. */
export type Size =
  | { readonly says: 'blank' }
  | { readonly says: 'nonsense' }
  | { readonly says: 'size'; readonly mm: number; readonly lowMm: number | null; readonly highMm: number | null };
export type Thickness =
  | { readonly says: 'blank' }
  | { readonly says: 'nonsense' }
  | { readonly says: 'length'; readonly mm: number }
  | { readonly says: 'gauge'; readonly gauge: GaugeNumber };

export interface Row {
  readonly part: Part | null;
  /** Metals that the material cell could mean; none when it says nothing. */
  readonly metals: readonly MetalId[];
  readonly thickness: Thickness;
  readonly hole: Size;
  readonly edge: Size;
  readonly quantityIsWhole: boolean;
}

export interface Shop {
  readonly silence: 'note' | 'unknown';
  readonly judgeThicknessAt: 'nominal' | 'thinnest';
}

export const CORE_RULES = [
  'part/listed',
  'sheet/material',
  'sheet/thickness-read',
  'clinch/family',
  'clinch/hardness',
  'clinch/sheet-thickness',
  'clinch/hole',
  'clinch/edge',
  'list/quantity',
] as const;
export type CoreRule = (typeof CORE_RULES)[number];

/** The trade's judgement of one row. An unlisted part has no limits, so the checks against the part do not apply. */
export function judge(row: Row, shop: Shop): { verdict: Verdict; outcomes: Partial<Record<CoreRule, Outcome>> } {
  const outcomes: Partial<Record<CoreRule, Outcome>> = {
    'part/listed': row.part ? 'holds' : 'unknown',
    'sheet/material': judgeMaterial(row.metals),
    'sheet/thickness-read': judgeReading(row),
    'list/quantity': row.quantityIsWhole ? 'holds' : 'note',
    ...(row.part && {
      'clinch/family': judgeFamily(row.part.classes, row.metals),
      'clinch/hardness': judgeHardness(row.part, row.metals),
      'clinch/sheet-thickness': judgeThickness(row.part, row, shop),
      'clinch/hole': judgeHole(row.part, row.hole, shop),
      'clinch/edge': judgeEdge(row.part, row.edge, shop),
    }),
  };
  return { verdict: worst(Object.values(outcomes)), outcomes };
}

function judgeMaterial(metals: readonly MetalId[]): Outcome {
  if (metals.length === 0) return 'unknown';
  return metals.length === 1 ? 'holds' : 'note';
}

function judgeReading({ thickness, metals }: Row): Outcome {
  if (thickness.says === 'length') return 'holds';
  return thickness.says === 'gauge' && nominals(thickness, metals).length > 0 ? 'holds' : 'unknown';
}

function judgeThickness({ sheetMinMm, sheetMaxMm }: Part, { thickness, metals }: Row, shop: Shop): Outcome {
  const sheets = nominals(thickness, metals);
  if (sheets.length === 0) return 'unknown';
  const gauge = thickness.says === 'gauge' ? thickness.gauge : null;
  return together(
    sheets.map(({ metal, mm }) => {
      if (sheetMinMm !== null && mm < sheetMinMm - SAME) return 'fails';
      if (sheetMaxMm !== null && mm > sheetMaxMm + SAME) return 'fails';
      if (sheetMinMm === null) return 'unknown';
      const thinnest = metal === null ? null : thinnestMm(metal, mm, gauge);
      const mayBeThin = thinnest !== null && thinnest < sheetMinMm - SAME;
      return shop.judgeThicknessAt === 'thinnest' && mayBeThin ? 'marginal' : 'holds';
    }),
  );
}

/** The thickness for each metal that it could be; a length is the same whatever the metal. */
function nominals(thickness: Thickness, metals: readonly MetalId[]): { metal: MetalId | null; mm: number }[] {
  if (thickness.says === 'length')
    return (metals.length === 0 ? [null] : metals).map((metal) => ({ metal, mm: thickness.mm }));
  if (thickness.says !== 'gauge') return [];
  return metals.flatMap((metal) => {
    const table = METALS[metal].gauges;
    return table === null ? [] : [{ metal, mm: GAUGES[table][thickness.gauge] * INCH }];
  });
}

function judgeHole({ holeMm, band }: Part, hole: Size, { silence }: Shop): Outcome {
  if (hole.says === 'nonsense' || holeMm === null) return 'unknown';
  if (hole.says !== 'size') return silence;
  const low = holeMm - (band?.minusMm ?? 0) - SAME;
  const high = holeMm + (band?.plusMm ?? 0.08) + SAME;
  if (hole.mm < low || hole.mm > high) return 'fails';
  return (hole.lowMm ?? hole.mm) < low || (hole.highMm ?? hole.mm) > high ? 'marginal' : 'holds';
}

function judgeEdge({ edgeMm }: Part, edge: Size, { silence }: Shop): Outcome {
  if (edge.says === 'nonsense' || edgeMm === null) return 'unknown';
  if (edge.says !== 'size') return silence;
  return edge.mm < edgeMm - SAME ? 'fails' : 'holds';
}
