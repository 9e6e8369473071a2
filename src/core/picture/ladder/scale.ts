import type { BandGroup } from './bands.ts';

/** Ends of the drawn part of the Rockwell B scale. */
export interface HardnessScaleEnds {
  readonly from: number;
  readonly to: number;
}

const STEP = 10;
const LEAST_SPAN = 60;
const BESIDE = 4;

/** Whole tens around everything that is shown, at least sixty points; null where there is nothing to show. */
export function scaleEnds(groups: readonly BandGroup[]): HardnessScaleEnds | null {
  const shown = groups
    .flatMap(({ fastenerHrb, limitHrb, scatter, bands }) => [
      fastenerHrb,
      limitHrb,
      limitHrb !== null && scatter !== null ? limitHrb - scatter : null,
      ...bands.flatMap(({ typicalHrb, maxHrb }) => [typicalHrb, maxHrb]),
    ])
    .filter((value): value is number => value !== null && Number.isFinite(value));
  if (shown.length === 0) return null;
  const to = Math.ceil((Math.max(...shown) + BESIDE) / STEP) * STEP;
  const from = Math.floor((Math.min(...shown) - BESIDE) / STEP) * STEP;
  return { from: Math.min(from, to - LEAST_SPAN), to };
}

/** Rockwell B points with at most one decimal. */
export function showPoints(hrb: number): string {
  return String(Number(hrb.toFixed(1)));
}

/** The tens between the ends. */
export function scaleSteps({ from, to }: HardnessScaleEnds): readonly number[] {
  return Array.from({ length: Math.round((to - from) / STEP) + 1 }, (_, at) => from + at * STEP);
}
