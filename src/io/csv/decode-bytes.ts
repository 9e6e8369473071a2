import type { TextEncoding } from '../../core/model/raw.ts';

/** What 0x80 to 0x9F mean in Windows-1252; five of them are unassigned and stay control characters. */
const WESTERN_80_TO_9F = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** Bytes to text by one encoding. Bytes that do not fit become U+FFFD; a byte order mark is kept. */
export function decodeBytes(bytes: Uint8Array, encoding: TextEncoding): string {
  if (encoding === 'windows-1252') return decodeWestern(bytes);
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
