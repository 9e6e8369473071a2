import { Unreadable } from '../../core/model/raw.ts';
import { type Unpacked, unpack } from './unpack.ts';
import { listEntries, type ZipEntry } from './zip-directory.ts';

/** The parts of a zipped file, each unpacked only when asked for. */
export interface Zip {
  /** Part names as stored. */
  readonly names: readonly string[];
  /** Stored name of a part, whatever the case, slashes and leading slash. */
  find(path: string): string | undefined;
  /** Unpacked bytes of a part by its stored name. Throws `Unreadable` when they are spoilt. */
  read(name: string): Uint8Array;
  /** The same, piece by piece. */
  pieces(name: string): Generator<Unpacked>;
}

const MOST_PARTS = 2000;
const MEBIBYTE = 1024 * 1024;
const LARGEST_PART = 150 * MEBIBYTE;
const LARGEST_TOTAL = 250 * MEBIBYTE;
/** Packed text rarely shrinks more than a hundredfold; small parts are harmless at any ratio. */
const HIGHEST_RATIO = 200;
const RATIO_MATTERS_FROM = 10 * MEBIBYTE;

export function isZip(bytes: Uint8Array): boolean {
  const isPk = bytes[0] === 0x50 && bytes[1] === 0x4b;
  return isPk && (bytes[2] === 3 || bytes[2] === 5 || bytes[2] === 7) && bytes[3] === bytes[2]! + 1;
}

/**
 * Opens a zip by its directory alone and unpacks nothing yet.
 * @throws Unreadable when the directory is missing or broken, or announces more than a list can need.
 */
export function openZip(bytes: Uint8Array, file: string): Zip {
  const entries = listEntries(bytes, MOST_PARTS);
  if (entries === undefined) throw damaged(file);
  refuseOversize(entries, file);
  const byPath = new Map<string, ZipEntry>();
  const byName = new Map<string, ZipEntry>();
  const doubles = new Set<string>();
  for (const entry of entries) {
    const path = normalise(entry.name);
    if (byPath.has(path)) doubles.add(path);
    else byPath.set(path, entry);
    byName.set(entry.name, entry);
  }
  const entryOf = (name: string) => {
    const entry = byName.get(name);
    if (entry === undefined) throw damaged(file);
    if (doubles.has(normalise(name))) throw ambiguous(file, name);
    return entry;
  };
  return {
    names: entries.map((entry) => entry.name),
    find: (path) => byPath.get(normalise(path))?.name,
    read: (name) => join(piecesOf(bytes, entryOf(name), file), entryOf(name).size),
    pieces: (name) => piecesOf(bytes, entryOf(name), file),
  };
}

function refuseOversize(entries: readonly ZipEntry[], file: string): void {
  if (entries.length > MOST_PARTS) refuse(file, `more than ${MOST_PARTS} parts`);
  const total = entries.reduce((sum, entry) => sum + entry.size, 0);
  if (total > LARGEST_TOTAL) refuse(file, `more than ${LARGEST_TOTAL / MEBIBYTE} MB in all`);
  for (const { size, packedSize } of entries) {
    if (size > LARGEST_PART) refuse(file, `more than ${LARGEST_PART / MEBIBYTE} MB in one part`);
    if (size > RATIO_MATTERS_FROM && size > packedSize * HIGHEST_RATIO) {
      refuse(file, `over ${HIGHEST_RATIO} times its packed size`);
    }
  }
}

function refuse(file: string, what: string): never {
  throw new Unreadable(
    `‘${file}’ would unpack to ${what}, which no list needs; copy the list into a new workbook and save that.`,
  );
}

function damaged(file: string): Unreadable {
  return new Unreadable(`‘${file}’ is damaged or incomplete; save or download it again.`);
}

function ambiguous(file: string, name: string): Unreadable {
  return new Unreadable(
    `‘${file}’ holds its part ‘${name}’ twice, so what it says is not certain; open it in a spreadsheet program and save it as .xlsx.`,
  );
}

/** The words of whatever goes wrong mean nothing to the user: one sentence stands for all. */
function* piecesOf(bytes: Uint8Array, entry: ZipEntry, file: string): Generator<Unpacked> {
  try {
    yield* unpack(bytes, entry);
  } catch {
    throw damaged(file);
  }
}

function join(pieces: Iterable<Unpacked>, size: number): Uint8Array {
  const bytes = new Uint8Array(size);
  let length = 0;
  for (const piece of pieces) {
    bytes.set(piece.bytes, length);
    length += piece.bytes.length;
  }
  return bytes;
}

function normalise(path: string): string {
  return path.replaceAll('\\', '/').replace(/^\/+/, '').toLowerCase();
}
