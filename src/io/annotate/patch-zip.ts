import { type Zippable, zipSync } from 'fflate';
import { Unreadable } from '../../core/model/raw.ts';

const LOCAL = 0x0403_4b50;
const CENTRAL = 0x0201_4b50;
const END = 0x0605_4b50;
const CENTRAL_LENGTH = 46;
const END_LENGTH = 22;
/** Where a line of the directory names the place of its part. */
const PLACE_AT = 42;
/** Zips have no time zone; a fixed day makes two runs give the same bytes. */
const DAY = '1980-01-01';

/**
 * The zip with parts replaced, added (behind the others) or, where `null`, taken out. Every other part is copied as it is stored: packed
 * bytes, times, extra fields.
 * @throws Unreadable when the zip's directory is not as one would rewrite it.
 */
export function patchZip(bytes: Uint8Array, changes: Readonly<Record<string, Uint8Array | null>>): Uint8Array {
  const written: Zippable = {};
  for (const [name, content] of Object.entries(changes)) if (content) written[name] = [content, { mtime: DAY }];
  const ours = new Map(listEntries(zipSync(written)).map((entry) => [entry.name, entry]));
  const kept = listEntries(bytes).flatMap((entry) => {
    if (!(entry.name in changes)) return [entry];
    const replacement = ours.get(entry.name);
    ours.delete(entry.name);
    return replacement ? [replacement] : [];
  });
  return assemble([...kept, ...ours.values()], commentOf(bytes));
}

/** A part as stored. */
interface Entry {
  readonly name: string;
  /** Header, packed bytes and what follows them, up to the next part. */
  readonly stored: Uint8Array;
  /** Its line in the directory. */
  readonly listed: Uint8Array;
}

function listEntries(bytes: Uint8Array): readonly Entry[] {
  const view = viewOf(bytes);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const directory = view.getUint32(end + 16, true);
  const lines: (Omit<Entry, 'stored'> & { readonly place: number; readonly least: number })[] = [];
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
    return { ...line, stored: bytes.subarray(place, next) };
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

function assemble(entries: readonly Entry[], comment: Uint8Array): Uint8Array {
  const body = entries.reduce((sum, { stored }) => sum + stored.length, 0);
  const directory = entries.reduce((sum, { listed }) => sum + listed.length, 0);
  const bytes = new Uint8Array(body + directory + END_LENGTH + comment.length);
  const view = viewOf(bytes);
  let at = 0;
  let line = body;
  for (const { stored, listed } of entries) {
    bytes.set(stored, at);
    bytes.set(listed, line);
    view.setUint32(line + PLACE_AT, at, true);
    at += stored.length;
    line += listed.length;
  }
  view.setUint32(line, END, true);
  view.setUint16(line + 8, entries.length, true);
  view.setUint16(line + 10, entries.length, true);
  view.setUint32(line + 12, directory, true);
  view.setUint32(line + 16, body, true);
  view.setUint16(line + 20, comment.length, true);
  bytes.set(comment, line + END_LENGTH);
  return bytes;
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
