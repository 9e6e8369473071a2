import { type HardnessToken, type HardnessUnit, tokenizeHardness } from './hardness-tokens.ts';

/**
 * Scales in which hardness is stated. HB is split by test load because aluminium is tested with 500 kgf and steel with
 * 3000 kgf; "MPa" stands for tensile strength where only that is published.
 */
export type HardnessScale = 'HRB' | 'HRC' | 'HV' | 'HB3000' | 'HB500' | 'HRF' | 'HRE' | 'HR30T' | 'MPa';

/** A hardness as it was stated. */
export interface Hardness {
  readonly scale: HardnessScale;
  readonly value: number;
}

/** Megapascals in a thousand pounds per square inch. */
export const MPA_PER_KSI = 6.894757;

/** What a Brinell number without a written load means: 3000 kgf for steel, 500 kgf for aluminium and copper alloys. */
export type BrinellDefault = 'HB3000' | 'HB500';

/**
 * One hardness from text: "HRC 38", "38 HRC", "Rb 80", "300 HV10", "150 HBW 10/3000", "95 HB (500 kgf)", "310 MPa
 * tensile", "45 ksi". A word for a limit ("HRC 38 min", "≤ HRB 80") is read over; who needs the limit's sense calls
 * `parseHardnessMin` or `parseHardnessMax`. Null for a bare number, a range, a scale that is not ours, or anything left over.
 */
export function parseHardness(text: string, brinell: BrinellDefault = 'HB3000'): Hardness | null {
  const stated = readStatement(text, brinell);
  return stated !== null && stated.low === stated.high ? stated.low : null;
}

/** The least hardness that the text promises: "HRC 34-45" gives HRC 34. Null for an upper limit ("HRB 80 max"), which promises none. */
export function parseHardnessMin(text: string, brinell: BrinellDefault = 'HB3000'): Hardness | null {
  const stated = readStatement(text, brinell);
  return stated === null || stated.bound === 'max' ? null : stated.low;
}

/** The greatest hardness that the text allows: "HRC 34-45" gives HRC 45. Null for a lower limit ("HRC 38 min"), which allows any. */
export function parseHardnessMax(text: string, brinell: BrinellDefault = 'HB3000'): Hardness | null {
  const stated = readStatement(text, brinell);
  return stated === null || stated.bound === 'min' ? null : stated.high;
}

/** "HRC 38", "HB 150", "HB 95 (500 kgf)", "310 MPa tensile"; at most one decimal. `parseHardness` reads it back. */
export function showHardness({ scale, value }: Hardness): string {
  const number = String(Math.round(value * 10) / 10);
  if (scale === 'MPa') return `${number} MPa tensile`;
  if (scale === 'HB3000') return `HB ${number}`;
  if (scale === 'HB500') return `HB ${number} (500 kgf)`;
  return `${scale} ${number}`;
}

interface Statement {
  readonly low: Hardness;
  /** The same object as `low` where one value was stated. */
  readonly high: Hardness;
  readonly bound: 'min' | 'max' | null;
}

function readStatement(text: string, brinell: BrinellDefault): Statement | null {
  const { rest: unbound, bound } = takeBound(tidy(text));
  const { rest, scale } = takeBrinellLoad(unbound, brinell);
  const tokens = tokenizeHardness(takeVickersLoad(takeFiller(rest)));
  const ends = tokens === null || scale === null ? null : readEnds(tokens, scale);
  if (ends === null) return null;
  const [low, high] = ends;
  return low !== high && bound !== null ? null : { low, high, bound };
}

/** One spelling for dashes and comparisons; "99,5" is a decimal and "1,030" a thousand. */
function tidy(text: string): string {
  return text
    .normalize('NFKC')
    .toUpperCase()
    .replace(/[‐-―−]/g, '-')
    .replace(/(\d),(?=\d{3}(?!\d))/g, '$1')
    .replace(/(\d),(?=\d)/g, '$1.')
    .replace(/>=|≥|>/g, ' MIN ')
    .replace(/<=|≤|</g, ' MAX ')
    .replace(/[:=;]/g, ' ');
}

const MIN_WORDS = /\b(?:MIN(?:IMUM)?\b\.?|AT LEAST\b|OR (?:HARDER|MORE|OVER|ABOVE)\b)|(?<=[\dA-Z])\s*\+\s*$/g;
const MAX_WORDS =
  /\b(?:MAX(?:IMUM)?\b\.?|AT MOST\b|UP TO\b|OR (?:SOFTER|LESS|UNDER|BELOW)\b|NO(?:T)? (?:HARDER THAN|OVER|MORE THAN|ABOVE)\b)/g;

/** Takes the words for a limit away. Both kinds in one cell are left standing, so that nothing is read from them. */
function takeBound(text: string): { rest: string; bound: 'min' | 'max' | null } {
  const withoutMin = text.replace(MIN_WORDS, ' ');
  const withoutMax = text.replace(MAX_WORDS, ' ');
  if (withoutMin === text) return { rest: withoutMax, bound: withoutMax === text ? null : 'max' };
  return withoutMax === text ? { rest: withoutMin, bound: 'min' } : { rest: text, bound: null };
}

const BALL_AND_LOAD = /(?<![\d.])(10|5|2\.5|2|1)\s*\/\s*(\d+(?:\.\d+)?)(?:\/\d+)?(?![\d.])/;
const LOAD = /(?:\/\s*)?\b(\d+)\s*KGF?\b(?:\s*LOAD\b)?|(?<=HB[WS]?|BHN)\s*\/\s*(500|3000)\b(?!\s*KG)/;

/** Takes "10/500" or "500 kgf" from a Brinell number and says which of our two loads it is; scale null for another load. */
function takeBrinellLoad(text: string, assumed: BrinellDefault): { rest: string; scale: BrinellDefault | null } {
  if (!/HB|BHN|BRINELL/.test(text)) return { rest: text, scale: assumed };
  const ball = BALL_AND_LOAD.exec(text);
  const withoutBall = text.replace(BALL_AND_LOAD, ' ');
  const load = LOAD.exec(withoutBall);
  const written = [
    ...(ball === null ? [] : [scaleOfRatio(Number(ball[2]) / Number(ball[1]) ** 2)]),
    ...(load === null ? [] : [scaleOfRatio(Number(load[1] ?? load[2]) / 100)]),
  ];
  const scale = written[0] === undefined ? assumed : written[0];
  return { rest: withoutBall.replace(LOAD, ' '), scale: written.every((one) => one === scale) ? scale : null };
}

/** Load over ball diameter squared: 30 is the steel test; 5, and 10 in the European sheet standards, the aluminium test. */
function scaleOfRatio(ratio: number): BrinellDefault | null {
  if (ratio === 30) return 'HB3000';
  return ratio === 5 || ratio === 10 ? 'HB500' : null;
}

/** Takes words and brackets that add nothing. Words for tensile strength count as such only beside a unit of stress. */
function takeFiller(text: string): string {
  const plain = text.replace(/\bHARDNESS\b|\bROCKWELL\s*(?=HR)|[()@,]|(?<!\s)\.(?!\d)/g, ' ');
  if (!/MPA|N\/MM2|KSI/.test(plain)) return plain;
  return plain.replace(/\bULTIMATE\b|\bTENSILE(?: STRENGTH)?\b|\bUTS\b|\bRM\b/g, ' ');
}

/** Takes the load symbol of "300 HV 10" and "HV10 300". "HV10" alone keeps its number out: it is a scale, not a value. */
function takeVickersLoad(text: string): string {
  return text
    .replace(/(\d\s*HV)\s*\d+(?:\.\d+)?(?:\/\d+)?\s*$/, '$1')
    .replace(/\bHV(?:0\.\d+|1|2|3|5|10|20|30)(?:\/\d+)?(?![\d.])/, 'HV');
}

/** Lower and upper end of the few shapes that state a hardness (S scale, N number); the same object twice for a single value. */
function readEnds(tokens: readonly HardnessToken[], brinell: BrinellDefault): readonly [Hardness, Hardness] | null {
  const shape = tokens.map((token) => (typeof token === 'string' ? token : 'number' in token ? 'N' : 'S')).join('');
  const [a, b] = tokens.flatMap((token) => (typeof token === 'object' && 'number' in token ? [token.number] : []));
  const [first, second = first] = tokens.flatMap((token) =>
    typeof token === 'object' && 'unit' in token ? [token.unit] : [],
  );
  if (first === undefined || second === undefined || a === undefined) return null;
  if (/^(SN|NS|S-N)$/.test(shape)) {
    const only = hardness(first, a, brinell);
    return only === null ? null : [only, only];
  }
  if (b === undefined) return null;
  if (/^(SN±N|N±NS)$/.test(shape)) return inOrder(hardness(first, a - b, brinell), hardness(first, a + b, brinell));
  if (!/^(SN-S?N|NS?-NS)$/.test(shape)) return null;
  return inOrder(hardness(first, a, brinell), hardness(second, b, brinell));
}

function hardness(unit: HardnessUnit, number: number, brinell: BrinellDefault): Hardness | null {
  if (!Number.isFinite(number) || number <= 0) return null;
  if (unit === 'ksi') return { scale: 'MPa', value: Math.round(number * MPA_PER_KSI) };
  // A plus-minus leaves the noise of binary fractions behind.
  return { scale: unit === 'HB' ? brinell : unit, value: Number(number.toFixed(6)) };
}

/** A range runs upwards in one scale, or from Rockwell B into Rockwell C ("HRB 95 - HRC 32"). */
function inOrder(low: Hardness | null, high: Hardness | null): readonly [Hardness, Hardness] | null {
  if (low === null || high === null) return null;
  const rises = low.scale === high.scale ? low.value < high.value : low.scale === 'HRB' && high.scale === 'HRC';
  return rises ? [low, high] : null;
}
