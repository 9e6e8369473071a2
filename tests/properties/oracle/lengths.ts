import type { MetalId } from './metals.ts';

/** Lengths this close count as equal, in mm. */
export const SAME = 0.0015;
export const INCH = 25.4;

/** Gauge numbers in inches, by the metal's own table; two tables are in use for stainless, the thinner (as stocked) judges. */
export const GAUGES = {
  steel: { 11: 0.1196, 12: 0.1046, 14: 0.0747, 16: 0.0598, 18: 0.0478, 20: 0.0359, 22: 0.0299, 24: 0.0239 },
  galvanized: { 11: 0.1233, 12: 0.1084, 14: 0.0785, 16: 0.0635, 18: 0.0516, 20: 0.0396, 22: 0.0336, 24: 0.0276 },
  stainless: { 11: 0.12, 12: 0.1054, 14: 0.0751, 16: 0.0595, 18: 0.048, 20: 0.0355, 22: 0.0293, 24: 0.0235 },
  aluminium: { 11: 0.0907, 12: 0.0808, 14: 0.0641, 16: 0.0508, 18: 0.0403, 20: 0.032, 22: 0.0253, 24: 0.0201 },
} as const;

/** Thicknesses in which sheet is stocked. */
export const STOCK_MM: readonly number[] = [0.5, 0.6, 0.8, 0.9, 1, 1.2, 1.25, 1.4, 1.5, 1.6, 1.8, 2, 2.5, 3];

export type GaugeNumber = keyof (typeof GAUGES)['steel'];

type Step = readonly [upToMm: number, plusMinusMm: number];

/** EN 10131, width to 1200 mm: the step's upper end belongs to it. */
const COLD_ROLLED: readonly Step[] = [
  [0.6, 0.03],
  [0.8, 0.04],
  [1.0, 0.05],
  [1.2, 0.06],
  [1.6, 0.08],
  [2.0, 0.1],
  [2.5, 0.12],
  [3.0, 0.15],
];
/** EN 10259, width below 1000 mm: the upper end belongs to the next step. */
const STAINLESS: readonly Step[] = [
  [0.6, 0.045],
  [0.8, 0.05],
  [1.0, 0.055],
  [1.2, 0.06],
  [1.5, 0.07],
  [2.0, 0.08],
  [2.5, 0.09],
  [3.0, 0.11],
  [4.0, 0.13],
];
/** EN 485-4, group II, width to 1000 mm: the upper end belongs to the step. */
const ALUMINIUM: readonly Step[] = [
  [0.5, 0.03],
  [0.6, 0.04],
  [0.8, 0.04],
  [1.0, 0.05],
  [1.2, 0.05],
  [1.5, 0.07],
  [1.8, 0.08],
  [2.0, 0.09],
  [2.5, 0.1],
  [3.0, 0.11],
];
/** By gauge, in inches: US cold-rolled steel, ASTM A480 by the stocked thickness, ASTM B209 to 36 in wide. */
const STEEL_BY_GAUGE = { 11: 0.006, 12: 0.006, 14: 0.005, 16: 0.005, 18: 0.004, 20: 0.003, 22: 0.003, 24: 0.003 };
const STAINLESS_BY_GAUGE = { 11: 0.01, 12: 0.009, 14: 0.007, 16: 0.006, 18: 0.005, 20: 0.004, 22: 0.004, 24: 0.003 };
const ALUMINIUM_BY_GAUGE = {
  11: 0.0035,
  12: 0.0035,
  14: 0.003,
  16: 0.003,
  18: 0.0025,
  20: 0.002,
  22: 0.002,
  24: 0.002,
};

interface Tolerance {
  readonly steps: readonly Step[];
  readonly endBelongs: boolean;
  readonly byGauge: Readonly<Record<GaugeNumber, number>>;
}

const STEEL: Tolerance = { steps: COLD_ROLLED, endBelongs: true, byGauge: STEEL_BY_GAUGE };
/** Metals whose mill tolerance is written down here. */
const TOLERANCES: Readonly<Partial<Record<MetalId, Tolerance>>> = {
  crs: STEEL,
  dc01: STEEL,
  ss304: { steps: STAINLESS, endBelongs: false, byGauge: STAINLESS_BY_GAUGE },
  al5052: { steps: ALUMINIUM, endBelongs: true, byGauge: ALUMINIUM_BY_GAUGE },
};
export const hasTolerance = (metal: MetalId) => TOLERANCES[metal] !== undefined;

/** Thinnest sheet that the mill may deliver, in mm, from 0.5 mm up; null where no tolerance is written down here. */
export function thinnestMm(metal: MetalId, nominalMm: number, gauge: GaugeNumber | null): number | null {
  const tolerance = TOLERANCES[metal];
  if (!tolerance) return null;
  if (gauge !== null) return nominalMm - tolerance.byGauge[gauge] * INCH;
  const { steps, endBelongs } = tolerance;
  const step = steps.find(([end]) => nominalMm < end - 1e-6 || (endBelongs && nominalMm < end + 1e-6));
  return nominalMm >= 0.5 && step ? nominalMm - step[1] : null;
}
