import { brackets, type Panel, panels } from './cabinet-panels.ts';
import { type FastenerRow, fastenerRows, type OtherRow, otherRows } from './cabinet-rows.ts';
import { describe } from './describe.ts';

export const HEADINGS_B = [
  ...['Item', 'P/N', 'Qty', 'Panel', 'Matl', 'Thk (mm)', 'Hole (mm)', 'Edge (mm)'],
  ...['Finish', 'Description', 'Remarks'],
] as const;

/** One row of the workbook; the item number is added where it is written. */
export interface SheetRow {
  readonly isPanel: boolean;
  readonly qty: number;
  readonly cells: readonly (string | number)[];
}

/** Revision B: each panel's row, its fasteners, those of its bracket, and what else belongs to it. */
export function revisionB(): SheetRow[] {
  return panels.flatMap((panel) => [
    panelRow(panel),
    ...[panel, ...brackets.filter(({ name }) => name === `${panel.name}B`)].flatMap(fastenersOf),
    ...otherRows.filter((row) => row.panel === panel.name).map(otherRow),
  ]);
}

function fastenersOf(panel: Panel): SheetRow[] {
  return fastenerRows.filter((row) => row.panel === panel.name).map((row) => fastenerRow(row, panel));
}

function panelRow({ name, what, finish, b }: Panel): SheetRow {
  const cells = [`PANEL ${name}`, 1, name, b.material, b.thickness, '', '', finish, what, ''];
  return { isPanel: true, qty: 1, cells };
}

function fastenerRow(row: FastenerRow, { b }: Panel): SheetRow {
  const { part, qty, panel, hole = '', edge = '', remark = '' } = row;
  const said = describe(part);
  const description = row.description ?? (said && `${said.kind} ${said.size}, ${said.metal}`);
  if (!description) throw new Error(`revision B lists ${part}, which the demo catalogue does not have`);
  const finish = said?.finish ?? '';
  return {
    isPanel: false,
    qty,
    cells: [part, qty, panel, b.material, b.thickness, hole, edge, finish, description, remark],
  };
}

function otherRow({ part, qty, panel, description }: OtherRow): SheetRow {
  return { isPanel: false, qty, cells: [part, qty, panel, '', '', '', '', '', description, ''] };
}
