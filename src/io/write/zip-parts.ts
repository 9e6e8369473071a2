import { deflateText } from './deflate.ts';

const LOCAL = 0x0403_4b50;
const CENTRAL = 0x0201_4b50;
const END = 0x0605_4b50;
const LOCAL_LENGTH = 30;
const CENTRAL_LENGTH = 46;
const END_LENGTH = 22;
/** Where a line of the directory names the place of its part. */
const PLACE_AT = 42;
/** Version 2.0 with names in UTF-8, packed by deflate. */
const NEEDS = 20;
const UTF8_NAME = 0x800;
const DEFLATED = 8;
/** 1 January 1980: zips have no time zone, and a fixed day makes two runs give the same bytes. */
const DAY = 0x0021;
const encoder = new TextEncoder();

/** A part of a zip as it is stored. */
export interface StoredPart {
  readonly name: string;
  /** Header, packed bytes and what follows them, up to the next part, in pieces. */
  readonly stored: readonly Uint8Array[];
  /** Its line in the directory. */
  readonly listed: Uint8Array;
}

/** Packs a text that comes in pieces; no more than a few of them are held unpacked. */
export async function packPart(name: string, text: Iterable<string>): Promise<StoredPart> {
  const { bytes, crc, size } = await deflateText(text);
  const header = headerOf([UTF8_NAME, DEFLATED, 0, DAY], [crc, bytes.length, size], encoder.encode(name));
  return { name, stored: [header.local, bytes], listed: header.listed };
}

/** The zip of parts in their order. */
export function joinParts(parts: readonly StoredPart[], comment: Uint8Array = new Uint8Array()): Uint8Array {
  const body = parts.reduce((sum, { stored }) => sum + lengthOf(stored), 0);
  const directory = parts.reduce((sum, { listed }) => sum + listed.length, 0);
  const bytes = new Uint8Array(body + directory + END_LENGTH + comment.length);
  const view = new DataView(bytes.buffer);
  let at = 0;
  let line = body;
  for (const { stored, listed } of parts) {
    bytes.set(listed, line);
    view.setUint32(line + PLACE_AT, at, true);
    line += listed.length;
    for (const piece of stored) {
      bytes.set(piece, at);
      at += piece.length;
    }
  }
  view.setUint32(line, END, true);
  view.setUint16(line + 8, parts.length, true);
  view.setUint16(line + 10, parts.length, true);
  view.setUint32(line + 12, directory, true);
  view.setUint32(line + 16, body, true);
  view.setUint16(line + 20, comment.length, true);
  bytes.set(comment, line + END_LENGTH);
  return bytes;
}

/** Flags, method, time and day, then checksum and both sizes: the same in a part's header and in its line of the directory. */
function headerOf(short: readonly number[], long: readonly number[], name: Uint8Array) {
  const local = new Uint8Array(LOCAL_LENGTH + name.length);
  const listed = new Uint8Array(CENTRAL_LENGTH + name.length);
  for (const [bytes, start, signature] of [
    [local, 4, LOCAL],
    [listed, 6, CENTRAL],
  ] as const) {
    const view = new DataView(bytes.buffer);
    view.setUint32(0, signature, true);
    view.setUint16(4, NEEDS, true);
    view.setUint16(start, NEEDS, true);
    for (const [index, value] of short.entries()) view.setUint16(start + 2 + index * 2, value, true);
    for (const [index, value] of long.entries()) view.setUint32(start + 10 + index * 4, value, true);
    view.setUint16(start + 22, name.length, true);
    bytes.set(name, bytes.length - name.length);
  }
  return { local, listed };
}

function lengthOf(pieces: readonly Uint8Array[]): number {
  return pieces.reduce((sum, { length }) => sum + length, 0);
}
