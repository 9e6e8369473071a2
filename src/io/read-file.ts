import { type RawFile, Unreadable } from '../core/model/raw.ts';
import { decodeText } from './csv/decode.ts';
import { readCsv } from './csv/read-csv.ts';
import type { ReadOptions } from './options.ts';
import { describeOversizeText, describeUnreadableBytes, describeUnreadableText } from './sniff.ts';
import { readXlsx } from './xlsx/read-xlsx.ts';
import { isZip } from './xlsx/zip.ts';

/**
 * Reads a list from its bytes. What the file is, its content tells: the name only serves for the sentences.
 * @throws Unreadable with one sentence that says what is wrong with which file, and what to do.
 */
export function readFile(bytes: Uint8Array, file: string, options: ReadOptions = {}): RawFile {
  refuse(describeUnreadableBytes(bytes, file));
  if (isZip(bytes)) return readXlsx(bytes, file, options);
  refuse(describeOversizeText(bytes, file));
  const decoded = decodeText(bytes, file, options.encoding);
  refuse(describeUnreadableText(decoded.text, file));
  return readCsv(decoded, file, options);
}

function refuse(sentence: string | undefined): void {
  if (sentence !== undefined) throw new Unreadable(sentence);
}
