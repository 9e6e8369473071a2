/** A part as the zip's directory lists it. */
export interface ZipEntry {
  /** Name as stored. */
  readonly name: string;
  /** 0 stored as it is, 8 deflated. */
  readonly method: number;
  readonly packedSize: number;
  /** Size that it unpacks to, by its own account. */
  readonly size: number;
  readonly crc: number;
  /** Where its packed bytes begin. */
  readonly start: number;
}

const LOCAL = 0x0403_4b50;
const CENTRAL = 0x0201_4b50;
const END = 0x0605_4b50;
const LARGE_END = 0x0606_4b50;
const LARGE_END_LOCATOR = 0x0706_4b50;
const LOCAL_LENGTH = 30;
const CENTRAL_LENGTH = 46;
const END_LENGTH = 22;
const LONGEST_COMMENT = 65_535;
/** Stands for a number that is kept in the wide field instead. */
const WIDE = 0xffff_ffff;
const WIDE_FIELD = 1;
const UTF8_NAME = 0x800;

/** Parts in the order of the directory (PKWARE APPNOTE 4.3 and 4.5.3); nothing when the directory is missing or broken. */
export function listEntries(bytes: Uint8Array, most: number): ZipEntry[] | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  try {
    return readDirectory(bytes, view, most);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Stops after `most` parts and one more. Anything that points outside the bytes ends in the view's own RangeError. */
function readDirectory(bytes: Uint8Array, view: DataView, most: number): ZipEntry[] | undefined {
  const end = findEnd(view);
  if (end < 0) return undefined;
  let { count, at } = readEnd(view, end);
  const entries: ZipEntry[] = [];
  for (; count > 0 && entries.length <= most; count--) {
    if (view.getUint32(at, true) !== CENTRAL) return undefined;
    const nameEnd = at + CENTRAL_LENGTH + view.getUint16(at + 28, true);
    const extraEnd = nameEnd + view.getUint16(at + 30, true);
    const entry = readEntry(bytes, view, at, nameEnd, extraEnd);
    if (entry === undefined) return undefined;
    entries.push(entry);
    at = extraEnd + view.getUint16(at + 32, true);
  }
  return entries;
}

function findEnd(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--) if (view.getUint32(at, true) === END) return at;
  return -1;
}

function readEnd(view: DataView, end: number): { readonly count: number; readonly at: number } {
  const locator = end - 20;
  if (locator >= 0 && view.getUint32(locator, true) === LARGE_END_LOCATOR) {
    const large = readWide(view, locator + 8);
    if (view.getUint32(large, true) === LARGE_END)
      return { count: readWide(view, large + 32), at: readWide(view, large + 48) };
  }
  return { count: view.getUint16(end + 10, true), at: view.getUint32(end + 16, true) };
}

function readEntry(bytes: Uint8Array, view: DataView, at: number, nameEnd: number, extraEnd: number) {
  let wide = findWide(view, nameEnd, extraEnd);
  const number = (place: number) => {
    const plain = view.getUint32(place, true);
    if (plain !== WIDE || wide === undefined) return plain;
    wide += 8;
    return readWide(view, wide - 8);
  };
  const size = number(at + 24);
  const packedSize = number(at + 20);
  const local = number(at + 42);
  if (view.getUint32(local, true) !== LOCAL) return undefined;
  const start = local + LOCAL_LENGTH + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (start + packedSize > bytes.length) return undefined;
  const name = decodeName(bytes.subarray(at + CENTRAL_LENGTH, nameEnd), view.getUint16(at + 8, true));
  return { name, method: view.getUint16(at + 10, true), packedSize, size, crc: view.getUint32(at + 16, true), start };
}

/** Where the numbers too large for the directory's own fields stand, in the order size, packed size, place. */
function findWide(view: DataView, from: number, end: number): number | undefined {
  for (let at = from; at + 4 <= end; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) === WIDE_FIELD) return at + 4;
  }
  return undefined;
}

function readWide(view: DataView, at: number): number {
  return view.getUint32(at, true) + view.getUint32(at + 4, true) * 2 ** 32;
}

/** Names are UTF-8 where the entry says so, else one character a byte. */
function decodeName(bytes: Uint8Array, flags: number): string {
  return (flags & UTF8_NAME) !== 0 ? new TextDecoder().decode(bytes) : bytes.reduce(addByte, '');
}

function addByte(name: string, byte: number): string {
  return name + String.fromCharCode(byte);
}
