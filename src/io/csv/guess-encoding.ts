import type { TextEncoding } from '../../core/model/raw.ts';
import { decodeBytes } from './decode-bytes.ts';
import { countHints } from './hint-words.ts';
import { scoreEastAsian } from './score-east-asian.ts';
import { scoreLetters } from './score-letters.ts';

/** The likeliest encoding; not sure when another one reads nearly as well but differently. */
export interface Guess {
  readonly encoding: TextEncoding;
  readonly isSure: boolean;
}

/** The encodings of one country or region that lists come in. On a tie the earlier one wins. */
const CANDIDATES = ['windows-1252', 'shift_jis', 'gb18030', 'windows-1250', 'windows-1251'] as const;
const SAMPLE_BYTES = 32_768;
const FIRST_BEYOND_ASCII = 0x80;
const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;
/** What one known word adds, and how many count. */
const HINT_WORTH = 0.15;
const MOST_HINTS = 4;
const CLEAR_LEAD = 0.35;
const GOOD_SCORE = 0.25;
/** What a character that cannot be meant costs: unassigned, control, private use. */
const MISFIT = 3;

/**
 * Scores what each encoding makes of the lines that hold bytes beyond ASCII: letters that stand in words of one language,
 * kana and common ideographs, signs in their place, known words. A text that comes out the same either way leaves no doubt.
 */
export function guessEncoding(bytes: Uint8Array): Guess {
  const sample = takeSample(bytes);
  const readings = CANDIDATES.map((encoding) => {
    const text = decodeBytes(sample, encoding);
    return { encoding, text, score: score(sample, text, encoding) };
  });
  const [best] = readings.toSorted((a, b) => b.score - a.score);
  if (best === undefined) return { encoding: 'windows-1252', isSure: false };
  const others = readings.filter(({ text }) => text !== best.text).map((reading) => reading.score);
  return {
    encoding: best.encoding,
    isSure: best.score >= GOOD_SCORE && best.score - Math.max(...others) >= CLEAR_LEAD,
  };
}

/** Mean worth of the characters beyond ASCII, about -3 to 1, and what known words add. */
function score(bytes: Uint8Array, text: string, encoding: (typeof CANDIDATES)[number]): number {
  const beyond = text.match(/[^\x00-\x7f]/g)?.length ?? 0;
  if (beyond === 0) return 0;
  const misfits = text.match(/[\x80-\x9f\ue000-\uf8ff\ufffd]/g)?.length ?? 0;
  const worth =
    encoding === 'shift_jis' || encoding === 'gb18030'
      ? scoreEastAsian(bytes, text, encoding)
      : scoreLetters(text, encoding);
  return (worth - MISFIT * misfits) / beyond + HINT_WORTH * Math.min(MOST_HINTS, countHints(text));
}

/** The lines with bytes beyond ASCII, up to a limit: all the others read the same whatever the encoding. */
function takeSample(bytes: Uint8Array): Uint8Array {
  const sample = new Uint8Array(SAMPLE_BYTES);
  let filled = 0;
  let at = 0;
  while (filled < SAMPLE_BYTES) {
    const high = findFrom(bytes, at, (byte) => byte >= FIRST_BEYOND_ASCII);
    if (high >= bytes.length) break;
    let start = high;
    while (start > at && !isLineEnd(bytes[start - 1]!)) start--;
    const end = findFrom(bytes, high, isLineEnd);
    const line = bytes.subarray(start, Math.min(end + 1, start + SAMPLE_BYTES - filled));
    sample.set(line, filled);
    filled += line.length;
    at = start + line.length;
  }
  return sample.subarray(0, filled);
}

function findFrom(bytes: Uint8Array, from: number, isWanted: (byte: number) => boolean): number {
  let at = from;
  while (at < bytes.length && !isWanted(bytes[at]!)) at++;
  return at;
}

function isLineEnd(byte: number): boolean {
  return byte === LINE_FEED || byte === CARRIAGE_RETURN;
}
