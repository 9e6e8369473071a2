import { ENCODING_NAMES, type TextEncoding } from '../../core/model/raw.ts';
import { decodeBytes } from './decode-bytes.ts';
import { type Guess, guessEncoding } from './guess-encoding.ts';

/** The text of a file, how its bytes were read, and what the user should know about it. */
export interface Decoded {
  readonly text: string;
  readonly encoding: TextEncoding;
  readonly notice?: string;
}

const BYTE_ORDER_MARK = 0xfeff;
const SNIFFED_BYTES = 4096;
/** So many fitting characters for one that does not: UTF-8 with a damaged place rather than something else. */
const FITTING_PER_MISFIT = 4;

/**
 * Bytes to text: by byte order mark, by where the zero bytes of UTF-16 stand, by strict UTF-8, else by the likeliest of
 * the encodings of one country. `chosen` overrides the guess. One leading byte order mark is dropped. Never throws: bytes
 * that do not fit become U+FFFD and a notice, and so does a guess that is not sure.
 */
export function decodeText(bytes: Uint8Array, file: string, chosen?: TextEncoding): Decoded {
  const found = chosen === undefined ? findEncoding(bytes) : { encoding: chosen, isSure: true };
  const { encoding, isSure } = found;
  const decoded = found.text ?? decodeBytes(bytes, encoding);
  const text = decoded.charCodeAt(0) === BYTE_ORDER_MARK ? decoded.slice(1) : decoded;
  const notice = describe(text, file, encoding, isSure);
  return notice === undefined ? { text, encoding } : { text, encoding, notice };
}

/** `text` where finding out has decoded the bytes already. */
function findEncoding(bytes: Uint8Array): Guess & { readonly text?: string } {
  const known = findMark(bytes) ?? findWide(bytes);
  if (known !== undefined) return { encoding: known, isSure: true };
  const text = readUtf8(bytes);
  return text === null ? guessEncoding(bytes) : { encoding: 'utf-8', isSure: true, text };
}

function findMark(bytes: Uint8Array): TextEncoding | undefined {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return 'utf-8';
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return undefined;
}

/**
 * UTF-16 without a mark: Latin letters, digits, separators and line ends put their zero bytes nearly all on odd or all on
 * even places, even where the words themselves are in another script.
 */
function findWide(bytes: Uint8Array): TextEncoding | undefined {
  const sample = bytes.subarray(0, SNIFFED_BYTES);
  const zeros = [0, 0];
  sample.forEach((byte, at) => {
    if (byte === 0) zeros[at % 2] = zeros[at % 2]! + 1;
  });
  const [even, odd] = zeros as [number, number];
  const many = sample.length / 50;
  if (odd > many && even <= odd / 10) return 'utf-16le';
  if (even > many && odd <= even / 10) return 'utf-16be';
  return undefined;
}

/** Null: it is something else. */
function readUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    const text = decodeBytes(bytes, 'utf-8');
    return count(text, isBeyondAscii) > count(text, isMisfit) * (FITTING_PER_MISFIT + 1) ? text : null;
  }
}

const isBeyondAscii = (code: number) => code > 0x7f;
const isMisfit = (code: number) => code === 0xfffd;

/** A list of all matches of a pattern would take many times the room of the text. */
function count(text: string, isCounted: (code: number) => boolean): number {
  let counted = 0;
  for (let at = 0; at < text.length; at++) if (isCounted(text.charCodeAt(at))) counted += 1;
  return counted;
}

function describe(text: string, file: string, encoding: TextEncoding, isSure: boolean): string | undefined {
  const name = ENCODING_NAMES[encoding];
  if (text.includes('\ufffd')) {
    return `Some characters of ‘${file}’ do not fit ${name} and are shown as \ufffd; choose another encoding or save the list as UTF-8.`;
  }
  if (isSure) return undefined;
  return `‘${file}’ is not UTF-8 and was read as ${name}, which is a guess; if letters or signs look wrong, choose another encoding or save the list as UTF-8.`;
}
