import type { QuantityReading } from '../model/line.ts';

/**
 * Reads a quantity per parent: `4`, `4.0`, `1,000`, `4 pcs`, `12 ea.`. What is not plainly one number of single pieces is
 * `unreadable` ("as needed", "8-10", "1 set", "0.75 m"), and so is `1.000`, which is one or a thousand depending on the sender.
 */
export function parseQuantity(text: string): QuantityReading {
  const plain = text.normalize('NFKC').replace(/\s+/g, ' ').trim();
  if (BLANK.test(plain)) return { text, how: 'blank', value: null };
  const value = readCount(plain.replace(PIECES, '').trim());
  if (value === null) return { text, how: 'unreadable', value: null };
  if (value === 0) return { text, how: 'zero', value };
  return { text, how: Number.isInteger(value) ? 'whole' : 'not-whole', value };
}

/** Pieces that can be ordered: a whole number above zero, else null. */
export function countable(pieces: number | null): number | null {
  return pieces !== null && Number.isSafeInteger(pieces) && pieces > 0 ? pieces : null;
}

const BLANK = /^(?:[-‐-―−]*|n\/?a|none)$/i;

/** Words for single pieces; a set, pair or pack is none, because its content is not said. */
const PIECES =
  /\s*(?:pcs|pcs?\.|pces?|pieces?|ea|ea\.|each|nos?\.?|off|units?|stk\.?|st\.?|stück|szt\.?|pz\.?|pezzi|uds?\.?|个|個|件|只|支)$|^(?:qty|x)[ :.]*(?=\d)|\s*x$/i;

function readCount(text: string): number | null {
  if (/^\d+(?:[.,]\d{1,2}|[.,]0{4,})?$/.test(text)) return finite(text.replace(',', '.'));
  if (/^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(text)) return finite(text.replaceAll(',', ''));
  if (/^[1-9]\d{0,2}(?:\.\d{3}){2,}(?:,\d+)?$|^[1-9]\d{0,2}\.\d{3},\d+$/.test(text)) {
    return finite(text.replaceAll('.', '').replace(',', '.'));
  }
  if (/^[1-9]\d{0,2}(?:[ '’]\d{3})+$/.test(text)) return finite(text.replace(/[ '’]/g, ''));
  return /^0?[.,]\d+$/.test(text) ? finite(text.replace(',', '.')) : null;
}

function finite(text: string): number | null {
  const value = Number(text);
  return Number.isFinite(value) ? value : null;
}
