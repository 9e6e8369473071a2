import { brackets, type Panel, panels } from './cabinet-panels.ts';
import { droppedRows, type FastenerRow, fastenerRows, type OtherRow, otherRows } from './cabinet-rows.ts';
import { describe } from './describe.ts';
import { roundUpTo } from './dimensions.ts';

const TITLES = [
  'River-level recorder cabinet, hardware. Invented data for demonstration: not for production',
  'Alder Reach Hydrology (a made-up firm), revision A, 2024-11-05, all sizes in inches',
];

const HEADINGS = [
  ...['Part No.', 'Description', 'Qty Req', 'Assy', 'Material', 'Gauge/Thk', 'Hole Dia (in)'],
  ...['C/L to Edge (in)', 'Remarks'],
];

const MM_PER_INCH = 25.4;

/** Revision A as a table of cells: the same cabinet before its changes, written by somebody who thinks in inches and gauges. */
export function revisionACells(): string[][] {
  const rows = panels.flatMap(rowsOf);
  const pieces = rows.reduce((sum, row) => sum + Number(row[2]), 0);
  return [...TITLES.map((title) => [title]), HEADINGS, ...rows, ['TOTAL', '', String(pieces)]].map(filled);
}

function filled(cells: string[]): string[] {
  return HEADINGS.map((_, at) => cells[at] ?? '');
}

function rowsOf(panel: Panel): string[][] {
  const sheets = [panel, ...brackets.filter(({ name }) => name === `${panel.name}B`)];
  const others = otherRows.filter((row) => row.panel === panel.name);
  return [panelRow(panel), ...sheets.flatMap(fastenersOf), ...others.map(otherRow)];
}

function fastenersOf(panel: Panel): string[][] {
  const rows = [...fastenerRows, ...droppedRows].filter((row) => row.panel === panel.name && row.before !== null);
  return rows.map((row) => fastenerRow({ ...row, ...row.before }, panel));
}

function panelRow({ name, what, a }: Panel): string[] {
  return [`PANEL ${name}`, what, '1', name, a.material, a.thickness];
}

function fastenerRow({ part, qty, panel, hole, edge, remark = '' }: FastenerRow, { a }: Panel): string[] {
  const said = describe(part);
  if (!said) throw new Error(`revision A lists ${part}, which the demo catalogue does not have`);
  const description = `${said.kind}, ${said.size}, ${said.metal}`;
  return [
    ...[part, description, String(qty), panel, a.material, a.thickness],
    ...[showHole(hole), showEdge(edge), remark],
  ];
}

function otherRow({ part, qty, panel, description }: OtherRow): string[] {
  return [part, description, String(qty), panel];
}

/** To four decimals, which keeps the size within the band that it was taken from. */
function showHole(mm: number | string | undefined): string {
  if (typeof mm === 'string') throw new Error(`revision A writes plain inches, not "${mm}"`);
  return mm === undefined ? '' : withoutZero((mm / MM_PER_INCH).toFixed(4));
}

/** To three decimals, upwards: an edge distance is a minimum. */
function showEdge(mm: number | undefined): string {
  return mm === undefined ? '' : withoutZero(roundUpTo(mm / MM_PER_INCH, 0.001).toFixed(3));
}

function withoutZero(inches: string): string {
  return inches.replace(/^0\./, '.');
}
