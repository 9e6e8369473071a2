import { finiteOrNull } from './finite.ts';

/**
 * Sample size for accepting on zero defects: n = ln(1 - confidence) / ln(1 - defective), rounded up. Both are fractions between 0
 * and 1; null outside. A large lot is assumed. Source: binomial law.
 */
export function zeroAcceptanceSample(confidence: number, defective: number): number | null {
  const sound = confidence > 0 && confidence < 1 && defective > 0 && defective < 1;
  return sound ? finiteOrNull(Math.ceil(Math.log1p(-confidence) / Math.log1p(-defective))) : null;
}
