import { Unreadable } from '../../core/model/raw.ts';
import { joinParts, type StoredPart } from '../write/zip-parts.ts';

const LOCAL = 0x0403_4b50;
const CENTRAL = 0x0201_4b50;
const END = 0x0605_4b50;
const CENTRAL_LENGTH = 46;
const END_LENGTH = 22;
/** Where a line of the directory names the place of its part. */
const PLACE_AT = 42;

/**
 * The zip with parts replaced, added (behind the others) or, where `null`, taken out. Every other part is copied as it is stored: packed
 * bytes, times, extra fields.
 * @throws Unreadable when the zip's directory is not as one would rewrite it.
 */
export function patchZip(bytes: Uint8Array, changes: ReadonlyMap<string, StoredPart | null>): Uint8Array {
  const ours = new Map(changes);
  const kept = listParts(bytes).flatMap((part) => {
    if (!changes.has(part.name)) return [part];
    const replacement = ours.get(part.name);
    ours.delete(part.name);
    return replacement ? [replacement] : [];
  });
  const added = [...ours.values()].filter((part) => part !== null);
  return joinParts([...kept, ...added], commentOf(bytes));
}

function listParts(bytes: Uint8Array): readonly StoredPart[] {
  const view = viewOf(bytes);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const directory = view.getUint32(end + 16, true);
  const lines: ReturnType<typeof readLine>[] = [];
  for (let at = directory, index = 0; index < count; index++) {
    if (at + CENTRAL_LENGTH > end || view.getUint32(at, true) !== CENTRAL) throw odd();
    const length =
      CENTRAL_LENGTH + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    lines.push(readLine(bytes.subarray(at, at + length)));
    at += length;
  }
  const starts = [...new Set(lines.map(({ place }) => place)), directory].sort((a, b) => a - b);
  return lines.map(({ place, least, ...line }) => {
    const next = starts[starts.indexOf(place) + 1] ?? directory;
    if (place + 30 > next || view.getUint32(place, true) !== LOCAL) throw odd();
    const header = 30 + view.getUint16(place + 26, true) + view.getUint16(place + 28, true);
    if (place + header + least > next) throw odd();
    return { ...line, stored: [bytes.subarray(place, next)] };
  });
}

function readLine(listed: Uint8Array) {
  const view = viewOf(listed);
  const name = listed.subarray(CENTRAL_LENGTH, CENTRAL_LENGTH + view.getUint16(28, true));
  return {
    name: decodeName(name, view.getUint16(8, true)),
    listed,
    place: view.getUint32(PLACE_AT, true),
    least: view.getUint32(20, true),
  };
}

/** Names are UTF-8 where the entry says so, else one character a byte: the same as the reader takes them. */
function decodeName(bytes: Uint8Array, flags: number): string {
  return (flags & 0x800) !== 0 ? new TextDecoder().decode(bytes) : String.fromCharCode(...bytes);
}

function commentOf(bytes: Uint8Array): Uint8Array {
  return bytes.subarray(findEnd(viewOf(bytes)) + END_LENGTH);
}

function findEnd(view: DataView): number {
  for (let at = view.byteLength - END_LENGTH; at >= 0; at--) {
    if (view.getUint32(at, true) === END) return at;
  }
  throw odd();
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
}

function odd(): Unreadable {
  return new Unreadable('The parts of the workbook are packed in an unusual way.');
}
