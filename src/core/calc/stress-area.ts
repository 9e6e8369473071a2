import { finiteOrNull } from './finite.ts';

/**
 * Tensile stress area of a metric thread in mm2: As = (pi / 4) (d - 0.938194 P)^2, from diameter and pitch in mm. Null unless both
 * are positive and the pitch is less than the diameter. Agrees with printed areas within their rounding. Source: ISO 898-1.
 */
export function metricStressAreaMm2(diameterMm: number, pitchMm: number): number | null {
  return areaOf(diameterMm, pitchMm, 0.938194);
}

/**
 * Tensile stress area of a Unified thread in square inches: At = (pi / 4) (D - 0.9743 / n)^2, from diameter in inches and threads
 * per inch. Null under the same conditions. Agrees with printed areas to one unit of the last digit. Source: ASME B1.1.
 */
export function unifiedStressAreaIn2(diameterIn: number, threadsPerInch: number): number | null {
  return areaOf(diameterIn, 1 / threadsPerInch, 0.9743);
}

function areaOf(diameter: number, pitch: number, share: number): number | null {
  return pitch > 0 && diameter > pitch ? finiteOrNull((Math.PI / 4) * (diameter - share * pitch) ** 2) : null;
}
