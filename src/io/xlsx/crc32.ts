/** Checksum of a zip part (CRC-32, ISO 3309) over several pieces: begin with 0, pass on what came back. */
export function crc32(bytes: Uint8Array, before: number): number {
  let crc = ~before;
  let at = 0;
  for (const last = bytes.length - 4; at <= last; at += 4) {
    crc ^= bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16) | (bytes[at + 3]! << 24);
    crc = FOURTH[crc & 255]! ^ THIRD[(crc >>> 8) & 255]! ^ SECOND[(crc >>> 16) & 255]! ^ FIRST[crc >>> 24]!;
  }
  for (; at < bytes.length; at++) crc = FIRST[(crc ^ bytes[at]!) & 255]! ^ (crc >>> 8);
  return ~crc >>> 0;
}

/** What one byte does to the checksum; the other tables tell what it does one, two and three bytes later. */
const FIRST = Int32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb8_8320 : crc >>> 1;
  return crc;
});
const SECOND = FIRST.map(oneByteLater);
const THIRD = SECOND.map(oneByteLater);
const FOURTH = THIRD.map(oneByteLater);

function oneByteLater(crc: number): number {
  return FIRST[crc & 255]! ^ (crc >>> 8);
}
