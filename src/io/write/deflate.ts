/** What is around packed bytes (RFC 1952): a header of fixed length, as nothing is named in it, and behind them checksum and length. */
const HEADER = 10;
const TRAILER = 8;
/** Characters packed at once. */
const BITE = 1 << 16;
const encoder = new TextEncoder();

/** Bytes packed by deflate (RFC 1951), with the checksum (CRC-32) and the length of what was packed. */
export interface Deflated {
  readonly bytes: Uint8Array;
  readonly crc: number;
  readonly size: number;
}

/**
 * Packs a text that comes in pieces by the platform's own means, which may work beside this thread; no more than a few pieces are held
 * unpacked. What making a piece throws comes out.
 */
export async function deflateText(text: Iterable<string>): Promise<Deflated> {
  const { writable, readable } = new CompressionStream('gzip');
  const [, packed] = await Promise.all([writeBites(writable.getWriter(), text), joinPieces(readable.getReader())]);
  const trailer = new DataView(packed.buffer, packed.length - TRAILER);
  return {
    bytes: packed.subarray(HEADER, -TRAILER),
    crc: trailer.getUint32(0, true),
    size: trailer.getUint32(4, true),
  };
}

/** While one bite is packed, the next is made. */
async function writeBites(writer: WritableStreamDefaultWriter<BufferSource>, text: Iterable<string>): Promise<void> {
  let packed = Promise.resolve();
  try {
    for (const bite of bitesOf(text)) {
      const bytes = encoder.encode(bite);
      await packed;
      packed = writer.write(bytes);
    }
    await packed;
    await writer.close();
  } catch (error) {
    await Promise.allSettled([packed, writer.abort(error)]);
    throw error;
  }
}

/** Pieces of text put together to bites worth packing. */
function* bitesOf(text: Iterable<string>): Generator<string> {
  let bite = '';
  for (const piece of text) {
    bite += piece;
    if (bite.length < BITE) continue;
    yield bite;
    bite = '';
  }
  yield bite;
}

async function joinPieces(reader: ReadableStreamDefaultReader<Uint8Array>): Promise<Uint8Array<ArrayBuffer>> {
  const pieces: Uint8Array[] = [];
  for (let next = await reader.read(); !next.done; next = await reader.read()) pieces.push(next.value);
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
}
