import type { Fastener } from '../model/fastener.ts';
import { sparesFor } from './pieces.ts';

/** From what is needed to what is ordered, all in pieces. */
export interface Order {
  /** What the builds use up. */
  readonly used: number;
  readonly spares: number;
  /** Used and spares together. */
  readonly need: number;
  /** Stock as the catalogue states it; null: no number given, and none taken off. */
  readonly stock: number | null;
  /** What stock does not cover. */
  readonly toOrder: number;
  readonly packSize: number | null;
  readonly moq: number | null;
  /** Whole packs; null where the catalogue gives no pack. */
  readonly packs: number | null;
  /** What is ordered: at least the minimum order quantity, in whole packs. Zero where nothing is to be ordered. */
  readonly order: number;
}

/** What has to be ordered of one part. `used` is a whole number of pieces, `sparesPercent` zero or more. */
export function orderOf(used: number, sparesPercent: number, part: Fastener): Order {
  const spares = sparesFor(used, sparesPercent);
  const need = used + spares;
  const stock = stockOf(part);
  const toOrder = Math.max(0, need - (stock ?? 0));
  const packSize = positive(part.packSize);
  const moq = positive(part.moq);
  const least = toOrder === 0 ? 0 : Math.ceil(Math.max(toOrder, moq ?? 0));
  const packs = packSize === null ? null : Math.ceil(Number((least / packSize).toFixed(6)));
  const order = packs === null || packSize === null ? least : packs * packSize;
  return { used, spares, need, stock, toOrder, packSize, moq, packs, order };
}

/** Price of so many pieces to two decimals, half a hundredth going up; null without a usable price. */
export function priceOf(pieces: number, unitPrice: number | null): number | null {
  if (unitPrice === null || !Number.isFinite(unitPrice) || unitPrice < 0) return null;
  return Math.round(Number((pieces * unitPrice * 100).toFixed(6))) / 100;
}

/** A number of pieces in stock; "not stocked" is none, "stocked" without a number is not known. */
function stockOf({ stocked }: Fastener): number | null {
  if (!stocked) return null;
  if (!stocked.yes) return 0;
  const { quantity } = stocked;
  return quantity !== null && Number.isFinite(quantity) ? Math.max(0, Math.floor(quantity)) : null;
}

function positive(value: number | null): number | null {
  return value !== null && Number.isFinite(value) && value > 0 ? value : null;
}
