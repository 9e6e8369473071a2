import { mmOf, parseLength } from './length.ts';
import { METRIC_SIZES, type MetricSize, UNIFIED_SIZES, type UnifiedSize } from './thread-sizes.ts';

/** A screw thread. */
export interface Thread {
  /** One name for all spellings: "M4" (coarse), "M8x1" (fine), "8-32", "1/4-20", "#8" where the threads per inch are not written. */
  readonly name: string;
  readonly system: 'metric' | 'unified';
  readonly majorMm: number;
  /** Metric: null unless written. Unified: follows from the threads per inch. */
  readonly pitchMm: number | null;
  /** Threads per inch; null for metric threads and where they are not written. */
  readonly tpi: number | null;
  readonly series: 'UNC' | 'UNF' | null;
  /** Null: not said. A metric thread without a pitch is coarse (ISO 261). */
  readonly coarse: boolean | null;
}

/** A thread and the length that was written behind it: "M4x12", "#6-32 x 3/8". */
export interface ThreadAndLength {
  readonly thread: Thread;
  /** Null: none written, or more than one ("M3x12/14"). */
  readonly lengthMm: number | null;
}

/**
 * The first thread in a text: `M4`, `M4x0.7-6H`, `M8 X 1`, `8-32`, `#8-32 UNC-2B`, `NO. 8`, `1/4"-20`, `.164-32`, alone or among
 * other words. In `M4x12` the 12 is a length. Null where there is none; `M1` and `M12A` are reference designators and no threads.
 * Range: M1.6 to M24, #0 to 1/2, in the pitches of their standards.
 */
export function parseThread(text: string): Thread | null {
  return parseThreadAndLength(text)?.thread ?? null;
}

/** The first thread in a text with the length written behind it, in mm; a bare length is in the unit of the thread. */
export function parseThreadAndLength(text: string): ThreadAndLength | null {
  const plain = plainText(text);
  const found = [findMetric(plain), findUnified(plain)].flatMap((one) => one ?? []);
  const first = found.sort((a, b) => a.start - b.start)[0];
  if (!first) return null;
  return { thread: first.thread, lengthMm: readLength(plain.slice(first.end), first.thread.system) };
}

/** A thread for people: "M4", "M8x1", "8-32 UNC"; reads back as the same thread. */
export function showThread({ name, series }: Thread): string {
  return series ? `${name} ${series}` : name;
}

interface Found {
  readonly thread: Thread;
  readonly start: number;
  readonly end: number;
}

function plainText(text: string): string {
  return text
    .replace(/(\d)([¼-¾⅓-⅞])/gu, '$1 $2')
    .normalize('NFKC')
    .replace(/[‐-―−]/g, '-')
    .replace(/[⁄∕]/g, '/')
    .replace(/[×*]/g, 'x')
    .replace(/[“”„″]|''/g, '"');
}

// Between words only, so that no part of a longer code is taken for a thread; "M 4" needs the capital, "3 m 4 pcs" being no thread.
const METRIC = /(?<![\p{L}\d.])(?:[Mm]|M )(\d{1,2})(?:([.,])(\d{1,2}))?(?!\d|[.,]\d|\p{L}(?<![xX]))/gu;
const PITCH = /^(?: ?x ?|-(?=\d+[.,]\d))(\d+(?:[.,]\d+)?|[.,]\d+)(?! ?(?:mm|"|in\b))(?![\d/.]\d)/i;

function findMetric(text: string): Found | null {
  for (const match of text.matchAll(METRIC)) {
    const [all, whole = '', mark, decimals = ''] = match;
    // "M3,12" lists two things; a point never does.
    const full = metricSize(Number(`${whole}.${decimals || 0}`));
    const size = full ?? (mark === ',' ? metricSize(Number(whole)) : undefined);
    if (!size) continue;
    const end = match.index + all.length - (full || !mark ? 0 : 1 + decimals.length);
    const [written = '', pitchText] = PITCH.exec(text.slice(end)) ?? [];
    const pitchMm = pitchText === undefined ? null : pitchOf(pitchText, size);
    return {
      thread: metricThread(size, pitchMm),
      start: match.index,
      end: end + (pitchMm === null ? 0 : written.length),
    };
  }
  return null;
}

function metricSize(diameterMm: number): MetricSize | undefined {
  return METRIC_SIZES.find((size) => size.diameterMm === diameterMm);
}

// What is neither a pitch of this size nor less than any screw is long is a length.
function pitchOf(text: string, { coarseMm, fineMm }: MetricSize): number | null {
  const value = Number(text.replace(',', '.'));
  return value === coarseMm || fineMm.includes(value) || (value > 0 && value < 1) ? value : null;
}

function metricThread({ diameterMm, coarseMm }: MetricSize, pitchMm: number | null): Thread {
  const coarse = pitchMm === null || pitchMm === coarseMm;
  const name = coarse ? `M${diameterMm}` : `M${diameterMm}x${pitchMm}`;
  return { name, system: 'metric', majorMm: diameterMm, pitchMm, tpi: null, series: null, coarse };
}

const INCH_SIZE = String.raw`(?<fraction>\d{1,2}\/\d{1,2})|(?<decimal>0?[.,]\d{3,4})|(?<mark>#|\bno\.? ?|\bn° ?) ?(?<marked>\d{1,2})|(?<bare>\d{1,2})`;
const INCH_UNIT = String.raw`(?: ?(?:"|in\b\.?))?`;
const UNIFIED = new RegExp(
  String.raw`(?<![\p{L}\d./,-])(?:${INCH_SIZE})${INCH_UNIT}(?:(?<dash> ?- ?)(?<tpi>\d{2})(?!\d|[.,/]\d|-\d(?![AB])))?`,
  'giu',
);

function findUnified(text: string): Found | null {
  for (const match of text.matchAll(UNIFIED)) {
    const { fraction, decimal, marked, bare, dash, tpi } = match.groups ?? {};
    const size =
      decimal === undefined ? namedSize(fraction ?? marked ?? bare) : sizeNear(Number(decimal.replace(',', '.')));
    const end = match.index + match[0].length;
    if (!size || (tpi === undefined && (marked === undefined || !standsAlone(text, match.index, end)))) continue;
    // "8 - 32" among other words may be a range.
    if (bare !== undefined && dash?.includes(' ') && text.trim() !== match[0].trim() && !/^ ?UN/i.test(text.slice(end)))
      continue;
    const thread = unifiedThread(size, tpi === undefined ? null : Number(tpi));
    const [series = ''] = /^[ -]?UN[CFJR]*(?:[ -]?[123][AB])?/i.exec(text.slice(end)) ?? [];
    if (thread) return { thread, start: match.index, end: end + series.length };
  }
  return null;
}

// "#8" without threads per inch: not the eighth item, and not part of a longer code.
function standsAlone(text: string, start: number, end: number): boolean {
  const counts = /(?:\b(?:item|pos|ref|rev|line|part|note|find|detail|step|op|drill|dwg|drawing)\b\.? ?)$/i.test(
    text.slice(0, start),
  );
  const isWord = text.charAt(start) !== '#';
  const goesOn = /^(?:[\p{L}\d/]|[-.,]\d)/u.test(text.slice(end).replace(/^x(?= ?[\d.])/i, ' '));
  return !counts && !goesOn && (!isWord || start === text.search(/\S/));
}

function namedSize(name: string | undefined): UnifiedSize | undefined {
  return UNIFIED_SIZES.find(({ size }) => size === name?.replace(/^0(?=\d)/, ''));
}

// ".312" and ".313" both stand for 5/16.
function sizeNear(inch: number): UnifiedSize | undefined {
  return UNIFIED_SIZES.find((size) => Math.abs(size.inch - inch) < 0.0006);
}

function unifiedThread({ size, inch, unc, unf }: UnifiedSize, tpi: number | null): Thread | null {
  const majorMm = mmOf(inch, 'in');
  if (tpi === null)
    return { name: `#${size}`, system: 'unified', majorMm, pitchMm: null, tpi, series: null, coarse: null };
  const series = tpi === unc ? 'UNC' : tpi === unf ? 'UNF' : null;
  if (!series) return null;
  return {
    name: `${size}-${tpi}`,
    system: 'unified',
    majorMm,
    pitchMm: mmOf(1 / tpi, 'in'),
    tpi,
    series,
    coarse: series === 'UNC',
  };
}

const LENGTH_BEHIND =
  /^(?:-\d[a-z]\d?[a-z]?)? ?(?:x ?|(?:- ?)?(?=[\d., /-]+ ?(?:mm|")))((?:\d+[ -])?\d+\/(?:2|4|8|16|32|64)|\d+(?:[.,]\d+)?|[.,]\d+)( ?(?:mm|cm|"|in\b|inch\b))?(?! ?[/\d]|[a-z]{2})/i;

function readLength(behind: string, system: Thread['system']): number | null {
  const [, number, unit] = LENGTH_BEHIND.exec(behind) ?? [];
  if (number === undefined) return null;
  return parseLength(`${number} ${unit?.trim() ?? (system === 'metric' ? 'mm' : 'in')}`)?.mm ?? null;
}
