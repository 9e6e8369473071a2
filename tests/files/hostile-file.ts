import { oneSheet, row } from './make.ts';

/** A file meant to take a reader's memory, time or trust: made when asked for, with what may come of it. */
export interface HostileFile {
  readonly make: () => Uint8Array;
  /** In the one sentence that refuses it; nothing where it is read like any other. */
  readonly says?: RegExp;
}
export type HostileFiles = Readonly<Record<string, HostileFile>>;

export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;
export const SHEET = 'xl/worksheets/sheet1.xml';
export const HEAD = row(1, 'Part number', 'Qty', 'Material', 'Thickness (mm)', 'Hole (mm)');
export const LIST = HEAD + row(2, 'NUT-M4-10-CS', 4, 'DC01', 1.5, 5.6);

export const repeat = (count: number, make: (at: number) => string) =>
  Array.from({ length: count }, (_, at) => make(at)).join('');
export const withPart = (name: string, xml: string | Uint8Array) =>
  oneSheet(LIST, { strings: ['Part'], change: (parts) => ({ ...parts, [name]: xml }) });
export const text = (value: string) => `<c t="inlineStr"><is><t>${value}</t></is></c>`;
export const listWith = (cell: string) =>
  oneSheet(`${HEAD}<row r="2">${text('NUT-M4-10-CS')}${text(cell)}${text(cell)}${text(cell)}${text(cell)}</row>`);

/** Text that hardly packs, without signs of XML. */
export function noise(length: number, seed = 1): string {
  let state = seed + 1;
  const pieces: string[] = [];
  for (let at = 0; at < length; at += 6) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    pieces.push(state.toString(36).padStart(6, '0').slice(-6));
  }
  return pieces.join('').slice(0, length);
}
