import { roundTo } from './dimensions.ts';
import type { Part } from './parts.ts';
import type { MaterialCode } from './ranges.ts';
import { diameterMm } from './threads.ts';

/** What a material adds to the price of a piece, in EUR. */
const SURCHARGE: Readonly<Record<MaterialCode, number>> = { CS: 0, S3: 0.06, S4: 0.12, AL: 0.04, PH: 0.3 };

/** Parts whose stock the demo tells a story about. */
const FIXED_STOCK: Readonly<Record<string, string>> = { 'NUT-M4-10-S4': '3200', 'NUT-M4-08-CS': '5000' };

/** Invented stock, pack, minimum order, price and lead time: the same at every run. */
export function termsOf(part: Part) {
  const stocked = stockOf(part.partNumber);
  const packSize = diameterMm(part.size) < 5 ? 500 : 200;
  return {
    stocked,
    packSize,
    moq: stocked === 'no' ? packSize * 4 : packSize,
    unitPrice: priceOf(part),
    currency: 'EUR',
    leadDays: stocked === 'no' ? 42 : 5,
  };
}

/** A quantity, a bare "yes" or "no", scattered over the parts by their numbers. */
function stockOf(partNumber: string): string {
  const fixed = FIXED_STOCK[partNumber];
  if (fixed !== undefined) return fixed;
  const scatter = [...partNumber].reduce((sum, letter, at) => (sum * 31 + letter.charCodeAt(0) + at) % 9973, 7);
  if (scatter % 6 === 0) return 'no';
  return scatter % 6 === 1 ? 'yes' : String(((scatter % 45) + 1) * 100);
}

function priceOf(part: Part): string {
  const kindFactor = part.kind === 'captive screw' || part.kind === 'floating nut' ? 4 : 1;
  const base = (0.06 + 0.01 * diameterMm(part.size)) * kindFactor + 0.005 * (part.lengthMm ?? 0);
  return roundTo(base + SURCHARGE[part.material], 0.01).toFixed(2);
}
