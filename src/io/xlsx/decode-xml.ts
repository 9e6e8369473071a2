const CONTINUES = 0x80;
const LEADS = 0xc0;
const GREATER = 62;

/** Bytes of an XML part as text. */
export function decodeXmlBytes(bytes: Uint8Array): string {
  return new TextDecoder(encodingOf(bytes)).decode(bytes);
}

/** The same for a part that comes in pieces. The texts end behind a tag where they can, so that whoever walks them need not join them. */
export function* decodeXmlPieces(pieces: Iterable<Uint8Array>): Generator<string> {
  let rest: Uint8Array = new Uint8Array();
  let decoder: TextDecoder | undefined;
  for (const piece of pieces) {
    const bytes = rest.length === 0 ? piece : concat(rest, piece);
    decoder ??= new TextDecoder(encodingOf(bytes), { ignoreBOM: true });
    // The decoder's own way of keeping a rest is many times slower for UTF-8.
    const isWide = decoder.encoding !== 'utf-8';
    const end = isWide ? bytes.length : bytes.lastIndexOf(GREATER) + 1 || wholeCharacters(bytes);
    rest = bytes.slice(end);
    yield decoder.decode(bytes.subarray(0, end), { stream: isWide });
  }
  if (rest.length > 0) yield new TextDecoder().decode(rest);
}

function encodingOf(bytes: Uint8Array): 'utf-8' | 'utf-16le' | 'utf-16be' {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
}

/** How many bytes there are before a character that the end cuts. */
function wholeCharacters(bytes: Uint8Array): number {
  const { length } = bytes;
  for (let back = 1; back <= Math.min(4, length); back++) {
    const byte = bytes[length - back]!;
    if (byte < CONTINUES) return length;
    if (byte >= LEADS) return back < lengthOf(byte) ? length - back : length;
  }
  return length;
}

/** How many bytes the character takes that begins so. */
function lengthOf(lead: number): number {
  if (lead >= 0xf0) return 4;
  return lead >= 0xe0 ? 3 : 2;
}

function concat(first: Uint8Array, second: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(first.length + second.length);
  bytes.set(first);
  bytes.set(second, first.length);
  return bytes;
}
