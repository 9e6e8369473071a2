import { GAUGE_NUMBERS } from './generate-cells.ts';
import type { WrittenList, WrittenRow } from './generate-list.ts';
import type { WrittenPart } from './generate-part.ts';
import type { Thickness } from './judge.ts';
import { GAUGES, hasTolerance, INCH, STOCK_MM, thinnestMm } from './lengths.ts';
import { METALS, type MetalId } from './metals.ts';

const HEADINGS = ['Part number', 'Qty', 'Material', 'Thickness', 'Hole', 'Edge distance'];
const IDS = Object.keys(METALS) as MetalId[];

interface Case {
  readonly metal: MetalId;
  readonly text: string;
  readonly means: Thickness;
  /** Thickness that a minimum is to come within a hundredth of, from both sides. */
  readonly atMm: number;
}

/** Every gauge of every metal, under minima that it only just reaches or misses. */
export function gaugesAtTheEdge(): WrittenList {
  const cases = IDS.flatMap((metal) => {
    const table = METALS[metal].gauges;
    if (table === null) return [];
    return GAUGE_NUMBERS.map(
      (gauge): Case => ({
        metal,
        text: `${gauge} ga`,
        means: { says: 'gauge', gauge },
        atMm: GAUGES[table][gauge] * INCH,
      }),
    );
  });
  return listOf(cases, 'nominal');
}

/** Every stock thickness whose thinnest delivery is known, under minima that the thinnest only just reaches or misses. */
export function thinEndsAtTheEdge(): WrittenList {
  const metals = IDS.filter(hasTolerance);
  const stock = metals.flatMap((metal) =>
    STOCK_MM.map(
      (mm): Case => ({
        metal,
        text: `${mm} mm`,
        means: { says: 'length', mm },
        atMm: thinnestMm(metal, mm, null) ?? mm,
      }),
    ),
  );
  const gauges = metals.flatMap((metal) =>
    GAUGE_NUMBERS.map((gauge): Case => {
      const nominal = GAUGES[METALS[metal].gauges ?? 'steel'][gauge] * INCH;
      const atMm = thinnestMm(metal, nominal, gauge) ?? nominal;
      return { metal, text: `${gauge} ga`, means: { says: 'gauge', gauge }, atMm };
    }),
  );
  return listOf([...stock, ...gauges], 'thinnest');
}

function listOf(cases: readonly Case[], judgeThicknessAt: 'nominal' | 'thinnest'): WrittenList {
  const rows = cases.flatMap((one) => minimaAround(one.atMm).map((sheetMinMm) => rowOf(one, sheetMinMm)));
  const parts = [...new Map(rows.map(({ part }) => [part!.partNumber, part as WrittenPart])).values()];
  return { parts, rows, headings: HEADINGS, shop: { silence: 'note', judgeThicknessAt } };
}

/** The hundredths just below and above; where they meet, a hundredth to either side as well. */
function minimaAround(mm: number): readonly number[] {
  const hundreds = Math.round(mm * 100);
  return [...new Set([Math.floor(mm * 100), Math.ceil(mm * 100), hundreds - 1, hundreds, hundreds + 1])].map(
    (n) => n / 100,
  );
}

function rowOf({ metal, text, means }: Case, sheetMinMm: number): WrittenRow {
  const part = partWith(sheetMinMm);
  const material = [...METALS[metal].names, ...METALS[metal].assumed][0]!;
  return {
    part,
    metals: [metal],
    thickness: means,
    hole: { says: 'blank' },
    edge: { says: 'blank' },
    quantityIsWhole: true,
    cells: [part.partNumber, '4', material, text, '', ''],
  };
}

function partWith(sheetMinMm: number): WrittenPart {
  return {
    partNumber: `QX-${Math.round(sheetMinMm * 100)}`,
    kind: 'clinch nut',
    material: 'stainless-400-hardened',
    classes: ['400'],
    stated: { scale: 'HRC', value: 38 },
    sheetLimitHrb: null,
    sheetMinMm,
    sheetMaxMm: null,
    holeMm: 5.6,
    band: null,
    edgeMm: 6,
  };
}
