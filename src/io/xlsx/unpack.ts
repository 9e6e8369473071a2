import { Inflate } from 'fflate';
import { crc32 } from './crc32.ts';
import type { ZipEntry } from './zip-directory.ts';

/** The next bytes of a part and the share of it that was read with them. */
export interface Unpacked {
  readonly bytes: Uint8Array;
  readonly share: number;
}

const STORED = 0;
const DEFLATED = 8;
/** Packed bytes taken at once: what they unpack to is held for a moment. */
const BITE = 64 * 1024;

/**
 * Unpacks a part piece by piece, and never more than it announces.
 * @throws Error when its bytes are spoilt, or are not the ones that were packed.
 */
export function* unpack(zip: Uint8Array, entry: ZipEntry): Generator<Unpacked> {
  const { start, packedSize, size, method } = entry;
  if (method !== STORED && method !== DEFLATED) throw new Error('packed in an unknown way');
  let crc = 0;
  let length = 0;
  let bytes: Uint8Array = new Uint8Array();
  const take = (piece: Uint8Array) => {
    bytes = piece;
  };
  const inflate = method === DEFLATED ? new Inflate(take) : undefined;
  for (let at = 0; at < packedSize; at += BITE) {
    const end = Math.min(at + BITE, packedSize);
    const bite = zip.subarray(start + at, start + end);
    if (inflate === undefined) bytes = bite;
    else inflate.push(bite, end === packedSize);
    length += bytes.length;
    if (length > size) throw new Error('more than announced');
    crc = crc32(bytes, crc);
    yield { bytes, share: end / packedSize };
  }
  if (length !== size || crc !== entry.crc) throw new Error('not what was packed');
}
