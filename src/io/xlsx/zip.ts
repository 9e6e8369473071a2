import { type UnzipFileInfo, unzipSync } from 'fflate';
import { Unreadable } from '../../core/model/raw.ts';

/** The parts of a zipped file, each unpacked only when asked for. */
export interface Zip {
  /** Part names as stored. */
  readonly names: readonly string[];
  /** Stored name of a part, whatever the case, slashes and leading slash. */
  find(path: string): string | undefined;
  /** Unpacked bytes of a part by its stored name. */
  read(name: string): Uint8Array;
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
  const parts = listParts(bytes, file);
  refuseOversize(parts, file);
  const byPath = new Map<string, string>();
  for (const { name } of parts) {
    const path = normalise(name);
    if (!byPath.has(path)) byPath.set(path, name);
  }
  return {
    names: parts.map((part) => part.name),
    find: (path) => byPath.get(normalise(path)),
    read: (name) => unpack(bytes, name, file),
  };
}

function listParts(bytes: Uint8Array, file: string): UnzipFileInfo[] {
  const parts: UnzipFileInfo[] = [];
  try {
    unzipSync(bytes, {
      filter: (part) => {
        parts.push(part);
        if (parts.length > MOST_PARTS) refuse(file, `more than ${MOST_PARTS} parts`);
        return false;
      },
    });
  } catch (error) {
    throw error instanceof Unreadable ? error : damaged(file);
  }
  return parts;
}

function refuseOversize(parts: readonly UnzipFileInfo[], file: string): void {
  const total = parts.reduce((sum, part) => sum + part.originalSize, 0);
  if (total > LARGEST_TOTAL) refuse(file, `more than ${LARGEST_TOTAL / MEBIBYTE} MB in all`);
  for (const { originalSize, size } of parts) {
    if (originalSize > LARGEST_PART) refuse(file, `more than ${LARGEST_PART / MEBIBYTE} MB in one part`);
    if (originalSize > RATIO_MATTERS_FROM && originalSize > size * HIGHEST_RATIO) {
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

function unpack(bytes: Uint8Array, name: string, file: string): Uint8Array {
  try {
    const part = unzipSync(bytes, { filter: (info) => info.name === name })[name];
    if (part !== undefined) return part;
  } catch {
    // The library's own words mean nothing to the user: the sentence below is thrown instead.
  }
  throw damaged(file);
}

function normalise(path: string): string {
  return path.replaceAll('\\', '/').replace(/^\/+/, '').toLowerCase();
}
