/** Exact by definition of the inch. */
export const MM_PER_INCH = 25.4;

/** Units in which lists state lengths; `mil` is a thousandth of an inch. */
export type LengthWord = 'mm' | 'in' | 'cm' | 'm' | 'um' | 'mil';

const MM_PER: Readonly<Record<LengthWord, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  um: 0.001,
  in: MM_PER_INCH,
  mil: 0.0254,
};

/** A length as it was written. */
export interface Length {
  /** The number in its own unit; feet are given as inches. */
  readonly value: number;
  /** Null: a bare number. */
  readonly unit: LengthWord | null;
  /** Null while the unit is unknown. */
  readonly mm: number | null;
  /** Written as `1/8` or `1 1/4`, which without a unit points to inches. */
  readonly fraction: boolean;
}

/**
 * Reads a length with or without a unit: `1.5 mm`, `.060"`, `1/8 in.`, `60 mil`, `1500 µm`, `0,06 Zoll`. The whole text must be
 * used up; null for anything else.
 */
export function parseLength(text: string): Length | null {
  const { numberText, unit, factor } = splitUnit(withPlainDigits(text).trim());
  const number = parseNumber(numberText);
  if (number === null) return null;
  const value = tidy(number * factor);
  return { value, unit, mm: unit === null ? null : mmOf(value, unit), fraction: isFraction(numberText) };
}

/**
 * Reads a number as lists write it: decimal point or comma, `.060`, `1/8`, `1 1/4`, `1-1/4`, `1½`, a true minus sign. Thousands
 * separators count only where they cannot be anything else (`1,234.5`, `1.234.567`, `1'234`, a no-break space), so `1,234` is a little over one.
 * The whole text must be a number: null otherwise, never NaN.
 */
export function parseNumber(text: string): number | null {
  const plain = markHardSpaces(spellFractions(text))
    .normalize('NFKC')
    .replaceAll('−', '-')
    .replace(/[⁄∕]/g, '/')
    .trim();
  const [, sign = '', body = ''] = /^([+-]?)(.*)$/.exec(plain) ?? [];
  const size = readFraction(body) ?? readDecimal(body);
  if (size === null || !Number.isFinite(size)) return null;
  return sign === '-' && size !== 0 ? -size : size;
}

/** Millimetres of a number in a unit, freed of binary noise: 0.06 in is 1.524 mm exactly. */
export function mmOf(value: number, unit: LengthWord): number {
  return tidy(value * MM_PER[unit]);
}

/** Inches of a length in millimetres, freed of binary noise. */
export function inchesOf(mm: number): number {
  return tidy(mm / MM_PER_INCH);
}

/** Shows a length without its unit: two decimals in mm, four in inches unless told otherwise; `?` for what is no number. */
export function showLength(mm: number, system: 'mm' | 'in', digits = system === 'mm' ? 2 : 4): string {
  if (!Number.isFinite(mm)) return '?';
  const shown = (system === 'mm' ? mm : inchesOf(mm)).toFixed(digits);
  return Number(shown) === 0 ? shown.replace('-', '') : shown;
}

// Twelve digits keep every real size and drop what binary arithmetic added.
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

const UNIT_WORDS: readonly (readonly [RegExp, LengthWord, number])[] = [
  [/^(mm|m\.m|millimet(er|re)s?|мм|毫米|公厘|ミリ)\.?$/, 'mm', 1],
  [/^(cm|centimet(er|re)s?|см|厘米)\.?$/, 'cm', 1],
  [/^(m|met(er|re)s?)$/, 'm', 1],
  [/^([µμu]m|microns?)$/, 'um', 1],
  [/^(mils?|thous?)\.?$/, 'mil', 1],
  [/^(in|ins|inch|inches|zoll|pouces?|pulgadas?|pollic[ei]|duim|英寸|インチ)\.?$/, 'in', 1],
  [/^(["”“„″ʺ〃＂]|''|’’|′′|´´)$/, 'in', 1],
  [/^(['’′´]|ft|foot|feet)\.?$/, 'in', 12],
];

function splitUnit(text: string): { numberText: string; unit: LengthWord | null; factor: number } {
  const [, head = '', tail = ''] = /^(.*?[\d.¼-¾⅓-⅞])\s*([^\d¼-¾⅓-⅞\s][^\d¼-¾⅓-⅞]*)$/u.exec(text) ?? [];
  const word = tail.trim().toLowerCase();
  const known = UNIT_WORDS.find(([pattern]) => pattern.test(word) || pattern.test(word.normalize('NFKC')));
  return known ? { numberText: head, unit: known[1], factor: known[2] } : { numberText: text, unit: null, factor: 1 };
}

const VULGAR: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

// Done before any normalising, which would turn 1½ into 11/2.
function spellFractions(text: string): string {
  return text.replace(/(\d?)([\s-]*)([¼-¾⅓-⅞])/gu, (_, digit: string, gap: string, sign: string) => {
    const spelled = VULGAR[sign] ?? sign;
    return digit === '' ? gap + spelled : `${digit}${gap.trim() === '' ? ' ' : gap}${spelled}`;
  });
}

// Full-width forms of East Asian keyboards; done by code, since normalising would also take vulgar fractions apart.
function withPlainDigits(text: string): string {
  return text.replace(/[！-～]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0));
}

// No-break and thin spaces between groups of three do what the Swiss apostrophe does; a plain space may part two numbers.
function markHardSpaces(text: string): string {
  return text.replace(/(?<=\d)[\u00a0\u2009\u202f](?=\d{3}(?!\d))/g, "'");
}

function isFraction(text: string): boolean {
  return /[/⁄∕¼-¾⅓-⅞]/u.test(text);
}

function readFraction(text: string): number | null {
  const [, whole, over, under] = /^(?:(\d{1,4})(?: +|-))?(\d{1,3})\/(\d{1,3})$/.exec(text) ?? [];
  if (over === undefined || under === undefined) return null;
  const part = Number(over) / Number(under);
  if (whole === undefined) return part;
  return part < 1 ? Number(whole) + part : null;
}

function readDecimal(text: string): number | null {
  const plain = withoutThousands(text);
  return /^(\d+[.]?|\d*[.,]\d+)$/.test(plain) ? Number(plain.replace(',', '.')) : null;
}

// Groups of three are thousands only where the other mark, a repeat, or a mark that is never a decimal one shows it.
function withoutThousands(text: string): string {
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d*$|^[1-9]\d{0,2}(,\d{3}){2,}$/.test(text)) return text.replaceAll(',', '');
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$|^[1-9]\d{0,2}(\.\d{3}){2,}$/.test(text)) return text.replaceAll('.', '');
  if (/^[1-9]\d{0,2}(['’]\d{3})+([.,]\d+)?$/.test(text)) return text.replace(/['’]/g, '');
  return text;
}
