import type { TextEncoding } from '../../core/model/raw.ts';

/** The text of a file, how its bytes were read, and what the user should know about it. */
export interface Decoded {
  readonly text: string;
  readonly encoding: TextEncoding;
  readonly notice?: string;
}

/** What 0x80 to 0x9F mean in Windows-1252; five of them are unassigned and stay control characters. */
const WESTERN_80_TO_9F = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
const UNASSIGNED = /[\u0081\u008d\u008f\u0090\u009d]/;
const BYTE_ORDER_MARK = 0xfeff;
const SNIFFED_BYTES = 4096;

/**
 * Bytes to text: strict UTF-8 with or without byte order mark, UTF-16 by its mark or by where the zero bytes stand,
 * else Windows-1252. `chosen` overrides the guess. One leading byte order mark is dropped. Never throws: bytes that do
 * not fit become U+FFFD and a notice.
 */
export function decodeText(bytes: Uint8Array, file: string, chosen?: TextEncoding): Decoded {
  const encoding = chosen ?? findMark(bytes) ?? findWide(bytes) ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252');
  const decoded = encoding === 'windows-1252' ? decodeWestern(bytes) : decodeUnicode(bytes, encoding);
  const text = decoded.charCodeAt(0) === BYTE_ORDER_MARK ? decoded.slice(1) : decoded;
  const notice = describe(text, file, encoding, chosen !== undefined);
  return notice === undefined ? { text, encoding } : { text, encoding, notice };
}

function findMark(bytes: Uint8Array): TextEncoding | undefined {
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) return 'utf-8';
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return undefined;
}

/** UTF-16 without a mark: Latin letters, digits and separators put their zero bytes all on odd or all on even places. */
function findWide(bytes: Uint8Array): TextEncoding | undefined {
  const sample = bytes.subarray(0, SNIFFED_BYTES);
  const zeros = [0, 0];
  sample.forEach((byte, at) => {
    if (byte === 0) zeros[at % 2] = zeros[at % 2]! + 1;
  });
  const [even, odd] = zeros as [number, number];
  const many = sample.length / 10;
  const few = sample.length / 100;
  if (odd > many && even <= few) return 'utf-16le';
  if (even > many && odd <= few) return 'utf-16be';
  return undefined;
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

function decodeUnicode(bytes: Uint8Array, encoding: TextEncoding): string {
  return new TextDecoder(encoding, { ignoreBOM: true }).decode(bytes);
}

/** By our own table: some runtimes read Windows-1252 as Latin-1 and lose the euro sign and curly inch marks. */
function decodeWestern(bytes: Uint8Array): string {
  const units = Uint16Array.from(bytes, (byte) =>
    byte >= 0x80 && byte <= 0x9f ? WESTERN_80_TO_9F.charCodeAt(byte - 0x80) : byte,
  );
  const step = 8192;
  let text = '';
  for (let at = 0; at < units.length; at += step) text += String.fromCharCode(...units.subarray(at, at + step));
  return text;
}

function describe(text: string, file: string, encoding: TextEncoding, isChosen: boolean): string | undefined {
  if (encoding !== 'windows-1252') {
    if (!text.includes('\ufffd')) return undefined;
    return `Some characters of ‘${file}’ do not fit ${encoding.toUpperCase()} and are shown as \ufffd; choose another encoding or save the list as UTF-8.`;
  }
  if (isChosen) return undefined;
  if (looksGarbled(text)) {
    return `‘${file}’ is neither UTF-8 nor Western European text, so names and notes may be garbled; save it as CSV UTF-8 and load it again.`;
  }
  return `‘${file}’ is not UTF-8 and was read as Windows-1252 (Western European); if letters or signs look wrong, choose another encoding.`;
}

/** Western text has few letters above ASCII; East Asian text read as Western has little else. */
function looksGarbled(text: string): boolean {
  const sample = text.slice(0, SNIFFED_BYTES);
  if (UNASSIGNED.test(sample)) return true;
  const high = sample.match(/[^\x00-\x7f]/g)?.length ?? 0;
  return high > sample.length / 5;
}
