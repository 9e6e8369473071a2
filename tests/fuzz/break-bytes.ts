import { strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { oneSheet, textRows, utf8, utf8WithMark, utf16, western } from '../files/make.ts';
import type { Row } from './base.ts';
import type { Random } from './random.ts';

/** A list as bytes of a file. */
export interface Written {
  readonly what: string;
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Delimited text in one of the forms that say the same. */
export function writeText(rows: readonly Row[], random: Random): Written {
  const delimiter = random.oneOf([',', ',', ';', '\t', '|']);
  const end = random.oneOf(['\n', '\r\n', '\r']);
  const quotesAll = random.oneIn(4);
  const mustQuote = (cell: string) =>
    quotesAll || cell.includes('"') || cell.includes(delimiter) || /[\r\n]/.test(cell);
  const quote = (cell: string) => (mustQuote(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  const text = rows.map(({ cells }) => cells.map(quote).join(delimiter) + end).join('');
  const [encoding, encode] = random.oneOf(encodersOf(text));
  return { what: `text with ${JSON.stringify(delimiter)}, ${encoding}`, name: 'list.csv', bytes: encode(text) };
}

function encodersOf(text: string): readonly (readonly [string, (text: string) => Uint8Array])[] {
  return [
    ['UTF-8', utf8],
    ['UTF-8', utf8],
    ['UTF-8 with mark', utf8WithMark],
    ['UTF-16 LE', (plain) => utf16(`\ufeff${plain}`, 'le')],
    ['UTF-16 BE', (plain) => utf16(`\ufeff${plain}`, 'be')],
    ...(/^[\x00-\xff]*$/.test(text) ? ([['Windows-1252', western]] as const) : []),
  ];
}

/** A workbook in one of the forms that say the same. */
export function writeWorkbook(rows: readonly Row[], random: Random): Written {
  const grid = rows.map(({ cells }) => cells);
  const form = random.oneOf([{}, { prefix: 'x' }, { isStrict: true }]);
  const strings = random.oneIn(2) ? [] : undefined;
  const data = random.oneIn(3) ? numberedRows(grid) : textRows(grid, strings);
  const bytes = oneSheet(data, { ...form, ...(strings && { strings }) });
  return { what: `workbook ${JSON.stringify(form)}`, name: 'list.xlsx', bytes };
}

/** Numbers as numbers, with references. */
function numberedRows(grid: readonly (readonly string[])[]): string {
  return grid
    .map((cells, at) => {
      const written = cells.map((cell, column) => {
        if (!/^\d{1,6}(?:\.\d{1,4})?$/.test(cell)) return textRows([[cell]]).slice('<row>'.length, -'</row>'.length);
        return `<c r="${String.fromCharCode(65 + (column % 26))}${at + 1}"><v>${cell}</v></c>`;
      });
      return `<row r="${at + 1}">${written.join('')}</row>`;
    })
    .join('');
}

/** Bytes with something broken; the list's rows above `intactTo` still stand where they stood. */
export function breakBytes(bytes: Uint8Array, random: Random): { readonly what: string; readonly bytes: Uint8Array } {
  const at = random.below(bytes.length);
  const to = Math.min(bytes.length, at + 1 + random.below(64));
  return random.oneOf([
    () => ({ what: `cut at ${at}`, bytes: bytes.slice(0, at) }),
    () => ({ what: 'bits flipped', bytes: flipBits(bytes, random) }),
    () => ({
      what: `bytes left out from ${at}`,
      bytes: Uint8Array.from([...bytes.subarray(0, at), ...bytes.subarray(to)]),
    }),
    () => ({
      what: `bytes twice from ${at}`,
      bytes: Uint8Array.from([...bytes.subarray(0, to), ...bytes.subarray(at)]),
    }),
    () => ({ what: `zeros from ${at}`, bytes: bytes.slice().fill(0, at, to) }),
    () => ({
      what: `noise from ${at}`,
      bytes: bytes.map((byte, place) => (place >= at && place < to ? random.below(256) : byte)),
    }),
  ])();
}

function flipBits(bytes: Uint8Array, random: Random): Uint8Array {
  const flipped = bytes.slice();
  for (let times = 1 + random.below(8); times > 0; times--) {
    const at = random.below(flipped.length);
    flipped[at] = flipped[at]! ^ (1 << random.below(8));
  }
  return flipped;
}

/** A workbook with the XML of one part broken, packed as it should be. */
export function breakParts(bytes: Uint8Array, random: Random): { readonly what: string; readonly bytes: Uint8Array } {
  const parts = unzipSync(bytes);
  const names = Object.keys(parts);
  const name = random.oneOf(names);
  const xml = new TextDecoder().decode(parts[name]);
  const { what, part } = random.oneOf([
    () => ({ what: 'left out', part: null }),
    () => ({ what: 'in place of another', part: parts[random.oneOf(names)]! }),
    () => ({ what: 'broken in bytes', part: breakBytes(strToU8(xml), random).bytes }),
    () => ({ what: 'broken in tags', part: strToU8(breakTags(xml, random)) }),
    () => ({ what: 'broken in tags', part: strToU8(breakTags(xml, random)) }),
    () => ({ what: 'broken in tags', part: strToU8(breakTags(breakTags(xml, random), random)) }),
  ])();
  const { [name]: _, ...others } = parts;
  const changed: Zippable = part === null ? others : { ...others, [name]: part };
  return { what: `${name} ${what}`, bytes: zipSync(changed, { mtime: '2021-03-04T05:06:08' }) };
}

const ODD_VALUES = [
  '',
  '0',
  '-1',
  '1048577',
  'XFD1048577',
  'A0',
  '1e9',
  'NaN',
  's',
  'n',
  'b',
  'e',
  'd',
  'str',
  'inlineStr',
  '999999',
  '../../x',
  '#',
  '&amp;',
  '&#0;',
  '&#x110000;',
  '_x0000_',
];

const ODD_MARKUP = [
  '<![CDATA[<c>]]>',
  '<!-- <row> -->',
  '<?x <c ?>',
  '<c>',
  '</c>',
  '</row>',
  '<row r="2">',
  '<v>',
  '<is>',
  '<f/>',
  '<x:c>',
  '<!DOCTYPE x [<!ENTITY a "b">]>',
];

type TagChange = (pieces: readonly string[], at: number, random: Random) => readonly string[];

/** Pieces begin with a tag each; the one at hand, or another, is changed. */
const TAG_CHANGES: readonly TagChange[] = [
  (pieces, at) => pieces.toSpliced(at, 1),
  (pieces, at) => pieces.toSpliced(at, 0, pieces[at] ?? ''),
  (pieces, at, random) => pieces.toSpliced(at, 0, ...pieces.slice(at, at + random.below(12))),
  (pieces, at, random) => pieces.with(at, oddValues(pieces[at] ?? '', random)),
  (pieces, at, random) => pieces.with(at, (pieces[at] ?? '').replace(/>[^<]*/, `>${random.oneOf(ODD_VALUES)}`)),
  (pieces, at) => pieces.with(at, (pieces[at] ?? '').replace(/\w+="[^"]*"/, '')),
  (pieces, at, random) => pieces.toSpliced(at, 0, random.oneOf(ODD_MARKUP)),
  (pieces, at, random) => {
    const other = random.below(pieces.length);
    return pieces.with(at, pieces[other] ?? '').with(other, pieces[at] ?? '');
  },
];

function oddValues(piece: string, random: Random): string {
  return piece.replace(/"[^"]*"/g, (value) => (random.oneIn(2) ? `"${random.oneOf(ODD_VALUES)}"` : value));
}

/** One tag, attribute or text of an XML changed. */
function breakTags(xml: string, random: Random): string {
  const pieces = xml.split(/(?=<)/);
  const at = random.below(pieces.length);
  return random.oneOf(TAG_CHANGES)(pieces, at, random).join('');
}
