import { DOUBT, METALS, type Metal, type MetalId, type Scale } from './metals.ts';
import { type Outcome, together } from './outcomes.ts';

/** Material classes of the fastener, as the family table has them and beyond. */
export type FastenerClass = 'hardened-steel' | '300' | '400' | 'ph' | 'aluminium' | 'brass';

export interface Stated {
  readonly scale: 'HRB' | 'HRC' | 'HV';
  readonly value: number;
}

/** What a catalogue says about hardness. No class: the catalogue does not say what the fastener is made of. */
export interface FastenerHardness {
  readonly classes: readonly FastenerClass[];
  readonly stated: Stated | null;
  readonly sheetLimitHrb: number | null;
}

/** Least hardness of a class, taken where the catalogue gives none. */
const CLASS_MINIMUM: Readonly<Record<FastenerClass, Stated | null>> = {
  'hardened-steel': { scale: 'HRC', value: 26 },
  300: { scale: 'HRB', value: 95 },
  400: { scale: 'HRC', value: 34 },
  ph: { scale: 'HRC', value: 38 },
  aluminium: { scale: 'HRB', value: 70 },
  brass: null,
};

const NEEDED = 20;
const FOOT = 35;
const TOP = 110;

/** Bracketed steel values above HRB 100, by HRC; below HRC 22.8 the scales meet at HV 240. */
const ABOVE_100: readonly (readonly [hrc: number, hrb: number])[] = [
  [22.8, 100],
  [24.2, 101],
  [25.4, 102],
  [26.6, 103],
  [27.6, 104],
  [28.8, 104.5],
  [29.9, 105.5],
  [30.9, 106],
  [32.1, 107],
  [33.1, 107.5],
  [34.3, 108],
  [35.5, 108.5],
  [36.6, 109],
  [37.9, TOP],
];
/** Vickers of HRC 24 to 38, and of HRB 85 to 100, steel. */
const VICKERS_OF_C: readonly (readonly [hv: number, hrc: number])[] = [
  [254, 23],
  [260, 24],
  [266, 25],
  [272, 26],
  [279, 27],
  [286, 28],
  [294, 29],
  [302, 30],
  [310, 31],
  [318, 32],
  [327, 33],
  [336, 34],
  [345, 35],
  [354, 36],
  [363, 37],
  [372, 38],
];
const VICKERS_OF_B: readonly (readonly [hv: number, hrb: number])[] = [
  [165, 85],
  [185, 90],
  [210, 95],
  [216, 96],
  [222, 97],
  [228, 98],
  [234, 99],
  [240, 100],
];

/** Is the pair in the family table? `outside`: the table does not speak of it. */
export function familySays(fastener: FastenerClass, { kind }: Metal): 'yes' | 'no' | 'outside' {
  if (kind === 'other' || fastener === 'brass') return 'outside';
  if (fastener === 'aluminium') return kind === 'aluminium' ? 'yes' : 'no';
  if (fastener === '400' || fastener === 'ph') return kind === 'ferritic' ? 'outside' : 'yes';
  return kind === 'austenitic' || kind === 'ferritic' ? 'no' : 'yes';
}

export function judgeFamily(classes: readonly FastenerClass[], metals: readonly MetalId[]): Outcome {
  if (classes.length === 0 || metals.length === 0) return 'unknown';
  const meaning = { yes: 'holds', no: 'fails', outside: 'note' } as const;
  return together(classes.flatMap((fastener) => metals.map((metal) => meaning[familySays(fastener, METALS[metal])])));
}

export function judgeHardness(fastener: FastenerHardness, metals: readonly MetalId[]): Outcome {
  const { classes, stated, sheetLimitHrb } = fastener;
  if (metals.length === 0) return 'unknown';
  if (sheetLimitHrb !== null)
    return together(
      (classes.length === 0 ? [null] : classes).flatMap((one) =>
        metals.map((metal) => capped(one, METALS[metal], againstLimit(sheetLimitHrb, METALS[metal]))),
      ),
    );
  const candidates = classes.length === 0 ? [null] : classes;
  return together(candidates.flatMap((one) => metals.map((metal) => compare(one, stated, METALS[metal]))));
}

function againstLimit(limit: number, { typical, max }: Metal): Outcome {
  if (typical !== null && typical > limit) return 'fails';
  const highest = max === 'none' ? (typical ?? FOOT) + NEEDED : (max ?? FOOT);
  return highest <= limit ? 'holds' : 'marginal';
}

function compare(fastener: FastenerClass | null, stated: Stated | null, sheet: Metal): Outcome {
  const minimum = stated ?? (fastener === null ? null : CLASS_MINIMUM[fastener]);
  if (minimum === null) return 'unknown';
  const family = fastener === null ? 'outside' : familySays(fastener, sheet);
  const outcome = capped(fastener, sheet, weigh(minimum, sheet, family === 'yes' && sheet.commercial));
  return outcome === 'fails' && stated === null && family !== 'no' ? 'marginal' : outcome;
}

/** A pair that the family table forbids never holds, whatever the numbers say. */
function capped(fastener: FastenerClass | null, sheet: Metal, outcome: Outcome): Outcome {
  const isForbidden = fastener !== null && familySays(fastener, sheet) === 'no';
  return isForbidden && outcome === 'holds' ? 'marginal' : outcome;
}

/** The margin rule itself. Practice lends weight to a pair that the family table allows in sheet as it is sold, once the typical margin is met in full. */
function weigh(minimum: Stated, sheet: Metal, practice: boolean): Outcome {
  const hrb = rockwellB(minimum);
  const scatter = (scale: Scale) => Math.max(2, Math.hypot(DOUBT[minimum.scale], DOUBT[scale]));
  const typicalMargin = hrb - (sheet.typical ?? FOOT);
  if (sheet.typical !== null && typicalMargin < NEEDED - scatter(sheet.typicalScale)) return 'fails';
  // Below the foot the margin is "more than": that proves no failure, and with too little of it no hold.
  if (sheet.max === 'none') return typicalMargin >= 2 * NEEDED + scatter(sheet.typicalScale) ? 'holds' : 'marginal';
  const worstMargin = hrb - (sheet.max ?? FOOT);
  const wanted =
    practice && typicalMargin >= NEEDED ? NEEDED - scatter(sheet.maxScale) : NEEDED + scatter(sheet.maxScale);
  return worstMargin >= wanted ? 'holds' : 'marginal';
}

/** On the common scale; for the values that the tests use (HRB, HRC 23 to 45, HV 165 to 372). */
export function rockwellB({ scale, value }: Stated): number {
  if (scale === 'HRB') return Math.min(value, TOP);
  if (scale === 'HRC') return between(ABOVE_100, value);
  if (value <= 240) return between(VICKERS_OF_B, value);
  return value < 254 ? 100 : between(ABOVE_100, between(VICKERS_OF_C, value));
}

function between(pairs: readonly (readonly [number, number])[], at: number): number {
  const above = pairs.findIndex(([x]) => x >= at);
  if (above === -1) return pairs.at(-1)![1];
  const [x1, y1] = pairs[above]!;
  const [x0, y0] = pairs[Math.max(above - 1, 0)]!;
  return x1 === x0 ? y1 : y0 + ((at - x0) / (x1 - x0)) * (y1 - y0);
}
