import { describeOversize } from '../core/model/oversize.ts';
import { type RawFile, Unreadable } from '../core/model/raw.ts';
import { decodeText } from './csv/decode.ts';
import { readCsv } from './csv/read-csv.ts';
import { LARGEST_TEXT } from './limits.ts';
import type { ReadOptions } from './options.ts';
import { describeUnreadableBytes, describeUnreadableText } from './sniff.ts';
import { readXlsx } from './xlsx/read-xlsx.ts';
import { isZip } from './xlsx/zip.ts';

/**
 * Reads a list from its bytes. What the file is, its content tells: the name only serves for the sentences.
 * @throws Unreadable with one sentence that says what is wrong with which file, and what to do.
 */
export function readFile(bytes: Uint8Array, file: string, options: ReadOptions = {}): RawFile {
  refuse(describeOversize(bytes.length, file));
  refuse(describeUnreadableBytes(bytes, file));
  if (isZip(bytes)) return readXlsx(bytes, file, options);
  refuse(describeOversize(bytes.length, file, LARGEST_TEXT));
  const decoded = decodeText(bytes, file, options.encoding);
  refuse(describeUnreadableText(decoded.text, file));
  return readCsv(decoded, file, options);
}

function refuse(sentence: string | undefined): void {
  if (sentence !== undefined) throw new Unreadable(sentence);
}
