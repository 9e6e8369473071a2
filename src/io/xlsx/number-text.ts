import type { NumberFormat } from './number-format.ts';

/** A cell shows about eleven characters of a decimal number; what lies beyond is noise of binary arithmetic. */
const SHOWN_DIGITS = 10;
const ZERO = 48;
const POINT = 46;
/** Long numbers are written out with the fifteen digits that spreadsheets keep. */
const LARGE: Intl.NumberFormatOptions = { useGrouping: false, maximumSignificantDigits: 15 };

/**
 * A number as its cell shows it, but no less exact than without its format: leading zeros, units and signs are kept
 * (`0007`, `3.5 mm`, `123-456`), roundings, thousands separators and exponents are not.
 */
export function showNumber(value: number, format: NumberFormat): string {
  if (format.kind !== 'number') return showGeneral(value);
  const { prefix, suffix, digits } = format;
  const sign = value < 0 ? '-' : '';
  const size = Math.abs(value);
  if (digits.length > 0 && Number.isInteger(size))
    return sign + prefix + fillPattern(showGeneral(size), digits) + suffix;
  const shown = padDecimals(showGeneral(format.isPercent ? size * 100 : size), format.decimals);
  return `${sign}${prefix}${shown}${suffix}`;
}

/** A number without format: whole numbers with all their digits, decimals without float noise, no exponent if avoidable. */
export function showGeneral(value: number): string {
  const plain = String(value);
  if (plain.length <= SHOWN_DIGITS && !plain.includes('e')) return plain;
  if (Math.abs(value) >= 10 ** SHOWN_DIGITS) return value.toLocaleString('en', LARGE);
  const wholeDigits = Math.max(1, Math.floor(Math.log10(Math.abs(value))) + 1);
  const scale = 10 ** (SHOWN_DIGITS - wholeDigits);
  const rounded = Math.round(value * scale) / scale;
  return String(rounded === 0 ? Number(value.toPrecision(SHOWN_DIGITS)) : rounded);
}

function padDecimals(text: string, decimals: number): string {
  if (decimals === 0 || text.includes('e')) return text;
  const point = text.indexOf('.');
  const shown = point < 0 ? 0 : text.length - point - 1;
  if (shown >= decimals) return text;
  return `${text}${point < 0 ? '.' : ''}${'0'.repeat(decimals - shown)}`;
}

/** Fills a pattern such as `000-000` from the right; surplus digits go in front, missing ones are 0 where it says so. */
function fillPattern(number: string, pattern: readonly string[]): string {
  let rest = number;
  let shown = '';
  for (const token of pattern.toReversed()) {
    if (token !== '0' && token !== '#') shown = token + shown;
    else if (rest !== '') {
      shown = rest.slice(-1) + shown;
      rest = rest.slice(0, -1);
    } else if (token === '0') shown = `0${shown}`;
  }
  return rest + shown;
}

/**
 * Whether a stored number is written just as a cell without format shows it: `12.5`, but neither `12.50` nor `1E3` nor more
 * digits than are shown. Most numbers are, and need not be read as numbers at all.
 */
export function isPlainNumber(stored: string): boolean {
  const { length } = stored;
  if (length === 0 || length > SHOWN_DIGITS) return false;
  let point = -1;
  for (let at = 0; at < length; at++) {
    const code = stored.charCodeAt(at);
    if (code === POINT && point < 0 && at > 0) point = at;
    else if (!(code >= ZERO && code <= ZERO + 9)) return false;
  }
  const leads = stored.charCodeAt(0) === ZERO;
  if (point < 0) return !leads || length === 1;
  const last = stored.charCodeAt(length - 1);
  return last !== ZERO && last !== POINT && (!leads || (point === 1 && stored.charCodeAt(2) !== ZERO));
}
