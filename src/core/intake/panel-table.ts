import type { Column, PanelRow, Role } from '../model/list.ts';
import type { RawFile, RawRow, RawTable } from '../model/raw.ts';
import { createLineReader } from './build-line.ts';
import { gatherTexts } from './column-texts.ts';
import { findColumns } from './columns.ts';
import { findRole } from './headings.ts';
import { isFastenerRow, partNames } from './sheet-part.ts';
import { nameKey } from './tree-row.ts';

const ROWS_SEARCHED = 30;
const NAMING: readonly Role[] = ['panel', 'partNumber', 'description'];
/** Columns of a list of fasteners: a table that has one is another list, perhaps an older one, and no table of panels. */
const OF_FASTENERS: readonly Role[] = ['hole', 'edge', 'spacing', 'thread', 'fastenerMaterial'];

/** Rows of panel tables (name, metal, thickness) on the other sheets of a workbook. Hidden sheets are left alone. */
export function panelRowsOf(file: RawFile, list: RawTable): readonly PanelRow[] {
  return file.tables.filter((table) => table !== list && !table.hidden).flatMap(readTable);
}

/** Whether a table says what panels are cut from and lists no fasteners: it goes with a list, and is none. */
export function isPanelTable(table: RawTable): boolean {
  return readTable(table).length > 0;
}

function readTable(table: RawTable): readonly PanelRow[] {
  const header = table.rows.slice(0, ROWS_SEARCHED).find(({ cells }) => headsPanels(cells));
  if (!header) return [];
  const rows = table.rows.filter(({ number }) => number > header.number);
  return readPanelRows(rows, findColumns(header.cells, gatherTexts(rows)), table.name);
}

/** Whether headings are those of a panel table: a name, and what the sheet is. */
export function headsPanels(headings: readonly string[]): boolean {
  const roles = headings.flatMap((heading) => findRole(heading)?.role ?? []);
  return (
    roles.some((role) => NAMING.includes(role)) &&
    roles.includes('material') &&
    roles.includes('thickness') &&
    !roles.some((role) => OF_FASTENERS.includes(role))
  );
}

/** Rows of a panel table. Where one of them is a fastener it is no panel table, and nothing is read. */
export function readPanelRows(
  rows: readonly Pick<RawRow, 'number' | 'cells' | 'flags'>[],
  columns: readonly Column[],
  sheet?: string,
): readonly PanelRow[] {
  const lines = rows.map(createLineReader(columns).read);
  if (lines.some((line) => isFastenerRow(line))) return [];
  return lines.flatMap(({ row, panel, partNumber, description, material, thickness }) => {
    const found = [nameKey(panel), ...partNames(partNumber)].filter(Boolean);
    const names = found.length > 0 ? found : partNames(description);
    if (names.length === 0) return [];
    return [{ row, names: [...new Set(names)], material, thickness, ...(sheet !== undefined && { sheet }) }];
  });
}
