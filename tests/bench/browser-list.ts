import { type BenchList, makeList } from './lists.ts';

/** Every so many rows list one part that does not hold, and that another one could replace. */
const SWAPPED_EVERY = 10;
const SWAPPED_PANELS = 40;

/** The part that every tenth row lists: too long for its sheet. Invented. */
export const OLD_PART = 'OLD-M4-01';

/** Columns of the list that the bench edits, 0-based. */
export const PART_COLUMN = 1;
export const HOLE_COLUMN = 8;

/** A list of so many rows, of which every tenth lists the part to be swapped, with a catalogue that has one in its place. */
export function makePageList(rows: number): BenchList {
  const { list, catalogue } = makeList(rows, 'realistic');
  const [heading, ...lines] = textOf(list).trimEnd().split('\r\n');
  const mixed = lines.map((line, at) => (at % SWAPPED_EVERY === 0 ? swappedLine(at) : line));
  return {
    list: bytesOf(`${[heading, ...mixed].join('\r\n')}\r\n`),
    catalogue: bytesOf(`${textOf(catalogue)}${partLine(OLD_PART, 2)}${partLine('NEW-M4-01', 1)}`),
  };
}

function swappedLine(at: number): string {
  const panel = `SWP-${String((at / SWAPPED_EVERY) % SWAPPED_PANELS).padStart(3, '0')}`;
  const asked = [OLD_PART, '"clinch nut, M4"', '4', panel, `F${at + 1}`, '5052-H32', '1.5', '5.60', '12', '', '', ''];
  return [
    at + 1,
    ...asked,
    'M4',
    '',
    '',
    'Invented Supply',
    '0.10',
    'pcs',
    'yes',
    `DWG-${panel}`,
    'B',
    '',
    '',
    '',
  ].join();
}

function partLine(partNumber: string, sheetMinMm: number): string {
  const sizes = [sheetMinMm, sheetMinMm - 0.03, 'yes', 5.6, 0.08, 0, 9];
  const rest = [9.5, 6, 280, 180, 1.1, 0.7, 1000, 500, 0.1, 'EUR', 'invented for the bench'];
  return `${[partNumber, 'clinch nut', 'M4', '', 'stainless-300', 'HRB 95', ...sizes, ...rest].join()}\r\n`;
}

function textOf(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes);
}

function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
