import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import Papa from 'papaparse';
import type { Random } from './random.ts';

/** A row of a list; the object stands for the row, whatever is done to its cells. */
export interface Row {
  readonly cells: string[];
}

/** What the columns of a base list hold, in its own order. */
export const COLUMNS = ['part', 'quantity', 'panel', 'material', 'thickness', 'hole', 'edge', 'note'] as const;
export type Column = (typeof COLUMNS)[number];

/** A list before anything is broken: flat, every row complete in itself. The first row holds the headings. */
export interface Base {
  readonly rows: readonly Row[];
  readonly catalogue: string;
}

const ROWS = 12;
const PARTS = 24;
const HEADINGS: Readonly<Record<Column, readonly string[]>> = {
  part: ['Part number', 'P/N', 'Part No.', 'Artikelnummer'],
  quantity: ['Qty', 'Quantity', 'Menge'],
  panel: ['Panel', 'Assembly'],
  material: ['Material', 'Sheet material', 'Werkstoff'],
  thickness: ['Thickness (mm)', 'Thk (mm)', 'Blechdicke (mm)'],
  hole: ['Hole (mm)', 'Hole dia. (mm)'],
  edge: ['Edge distance (mm)', 'C/L to edge (mm)'],
  note: ['Remarks', 'Bemerkung', 'Note'],
};
/** One for each panel: most parts hold in most of them, but not in the thin and the hard one. */
const SHEETS = [
  ['DC01', '1.5'],
  ['5052-H32', '2'],
  ['CRS', '0.6'],
  ['304', '1.5'],
  ['3003-H14', '1.6'],
] as const;
const NOTES = ['', '', 'see drawing', 'do not deburr', 'both sides', 'first article'];

const demo = Papa.parse<string[]>(
  readFileSync(resolve(import.meta.dirname, '../../sample-data/demo-catalogue.csv'), 'utf8').trimEnd(),
).data;
const [FIELDS = [], ...PARTS_ON_FILE] = demo;

/** A list over a small catalogue, the same for the same random numbers. */
export function makeBase(random: Random): Base {
  const parts = random.shuffle(PARTS_ON_FILE).slice(0, PARTS);
  const headings = COLUMNS.map((column) => random.oneOf(HEADINGS[column]));
  const rows = Array.from({ length: ROWS }, (_, at) => ({ cells: cellsOf(random.oneOf(parts), at, random) }));
  return { rows: [{ cells: headings }, ...rows], catalogue: Papa.unparse([FIELDS, ...parts]) };
}

function cellsOf(part: readonly string[], at: number, random: Random): string[] {
  const field = (name: string) => part[FIELDS.indexOf(name)] ?? '';
  const [metal, thickness] = SHEETS[at % SHEETS.length]!;
  const hole = Number(field('holeMm')) + random.oneOf([0, 0, 0, 0, 0.04, 0.3]);
  const edge = Number(field('edgeMm')) + random.oneOf([1, 2, 2, 3, -1]);
  return [
    field('partNumber'),
    String(1 + random.below(12)),
    `P-${1 + (at % SHEETS.length)}`,
    metal,
    thickness,
    hole.toFixed(2),
    edge.toFixed(1),
    random.oneOf(NOTES),
  ];
}
