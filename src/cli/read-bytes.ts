import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { basename } from 'node:path';
import { describeOversize, LARGEST_FILE } from '../core/model/oversize.ts';
import { Unreadable } from '../core/model/raw.ts';

const PIECE = 1024 * 1024;

/**
 * The bytes of a file, a pipe or a device, and never more than `most`: what grows without end is not read to its end.
 * @throws Unreadable with a sentence when it cannot be opened or is too large.
 */
export function readBytes(file: string, most = LARGEST_FILE): Uint8Array {
  const opened = open(file);
  try {
    refuseOversize(fstatSync(opened).size, file, most);
    return readPieces(opened, file, most);
  } catch (error) {
    throw error instanceof Unreadable ? error : cannotOpen(file);
  } finally {
    closeSync(opened);
  }
}

function open(file: string): number {
  try {
    return openSync(file, 'r');
  } catch {
    throw cannotOpen(file);
  }
}

function readPieces(opened: number, file: string, most: number): Uint8Array {
  const pieces: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const piece = new Uint8Array(PIECE);
    const length = readSync(opened, piece);
    if (length === 0) return Buffer.concat(pieces, size);
    size += length;
    refuseOversize(size, file, most);
    pieces.push(piece.subarray(0, length));
  }
}

function refuseOversize(size: number, file: string, most: number): void {
  const sentence = describeOversize(size, basename(file), most);
  if (sentence !== undefined) throw new Unreadable(sentence);
}

function cannotOpen(file: string): Unreadable {
  return new Unreadable(`“${file}” cannot be opened: check the name and that it may be read.`);
}
