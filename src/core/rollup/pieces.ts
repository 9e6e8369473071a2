import { countable } from '../intake/quantity.ts';
import type { AuditedLine } from '../model/audited.ts';

/** Pieces of a row in one product, through every level above it; null where that is no whole number above zero. */
export function piecesOf({ extendedQuantity }: AuditedLine): number | null {
  return countable(extendedQuantity);
}

/** Why a row cannot be counted, in a phrase. */
export function whyNotCounted({ line, findings }: AuditedLine): string {
  if (line.quantity.how === 'whole') return 'A quantity above the row, or its multiplier, cannot be used';
  return findings.find(({ rule }) => rule === 'list/quantity')?.brief ?? 'Quantity cannot be used';
}

/** How many pieces a share of them adds, rounded up; hundredths of a per cent that only arithmetic brings in do not count. */
export function sparesFor(pieces: number, percent: number): number {
  return Math.ceil(Number(((pieces * percent) / 100).toFixed(6)));
}
