import type { TextEncoding } from '../../src/core/model/raw.ts';
import { utf8, utf8WithMark, utf16, western } from './make.ts';

type Table = ReadonlyMap<string, readonly number[]>;

/** Encodings that the runtime can only decode, and how many bytes a character may take. */
const INVERTED = { shift_jis: 2, gb18030: 2, 'windows-1250': 1, 'windows-1251': 1 } as const;
type Inverted = keyof typeof INVERTED;
const tables = new Map<Inverted, Table>();

/** Text as bytes of an encoding. Throws when a character has no place in it. */
export function encode(text: string, encoding: TextEncoding): Uint8Array {
  if (encoding === 'utf-8') return utf8(text);
  if (encoding === 'utf-16le') return utf16(text, 'le');
  if (encoding === 'utf-16be') return utf16(text, 'be');
  if (encoding === 'windows-1252') return western(text);
  const table = tableOf(encoding);
  return Uint8Array.from(
    [...text].flatMap((character) => {
      const bytes = table.get(character);
      if (bytes === undefined) throw new Error(`${character} has no place in ${encoding}`);
      return bytes;
    }),
  );
}

/** Text as bytes with a byte order mark, for the encodings that have one. */
export function encodeWithMark(text: string, encoding: 'utf-8' | 'utf-16le' | 'utf-16be'): Uint8Array {
  return encoding === 'utf-8' ? utf8WithMark(text) : encode(`\ufeff${text}`, encoding);
}

/** The characters beyond ASCII that an encoding has bytes for, those for private use left out. */
export function charactersOf(encoding: Inverted): readonly string[] {
  return [...tableOf(encoding).keys()].filter(
    (character) => character > '\u009f' && !/[\ue000-\uf8ff]/.test(character),
  );
}

function tableOf(encoding: Inverted): Table {
  const table = tables.get(encoding) ?? invert(encoding);
  tables.set(encoding, table);
  return table;
}

/** Decodes every sequence of one or two bytes and turns the table round; the first sequence for a character wins. */
function invert(encoding: Inverted): Table {
  const decoder = new TextDecoder(encoding, { fatal: true });
  const table = new Map<string, readonly number[]>();
  const add = (bytes: readonly number[]) => {
    const text = tryDecode(decoder, bytes);
    if (text !== undefined && [...text].length === 1 && !table.has(text)) table.set(text, bytes);
  };
  for (let lead = 0; lead < 256; lead++) add([lead]);
  if (INVERTED[encoding] === 1) return table;
  for (let lead = 0x81; lead < 0xff; lead++) for (let trail = 0x40; trail < 0xff; trail++) add([lead, trail]);
  return table;
}

function tryDecode(decoder: TextDecoder, bytes: readonly number[]): string | undefined {
  try {
    return decoder.decode(Uint8Array.from(bytes));
  } catch {
    return undefined;
  }
}
