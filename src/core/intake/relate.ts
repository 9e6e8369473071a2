import type { Line } from '../model/line.ts';
import type { HardwareList, OtherRow } from '../model/list.ts';
import { extendQuantities } from './extend-quantity.ts';
import { inheritSheets } from './inherit.ts';
import { readSideTable } from './side-table.ts';
import { readTree } from './tree.ts';
import { noticeTree } from './tree-notices.ts';
import type { TreeRow } from './tree-row.ts';

/**
 * Joins the rows of a list: reads the tree, multiplies quantities through it, and gives rows the sheet of their panel. What the rows
 * say by themselves is taken from `relations.ownLines`; a row for which nothing has changed comes out as the same object.
 */
export function relateRows(list: HardwareList): HardwareList {
  const { columns, others, sheet, relations } = list;
  const { ownLines, ownNotices, panelRows, sideColumns } = relations;
  const rows = treeRows(ownLines, others);
  const tree = readTree(rows, columns);
  const extended = extendQuantities(rows, tree, columns);
  const tables = [...readSideTable([...ownLines, ...others.filter(isRow)], sideColumns), ...panelRows];
  return {
    ...list,
    lines: inheritSheets(ownLines, { others, tree, columns, panelRows: tables }),
    notices: [...ownNotices, ...noticeTree(sheet, tree, extended)],
    relations: { ...relations, extended: extended.pieces },
  };
}

const isRow = ({ what }: OtherRow) => what === PANEL_TABLE_ROW;

/** What a row is that holds nothing but a row of the panel table beside the list. */
export const PANEL_TABLE_ROW = 'panel table';

/** Rows of the list and titles between them, in file order. */
function treeRows(lines: readonly Line[], others: readonly OtherRow[]): readonly TreeRow[] {
  const titles = others
    .filter(({ what }) => what === 'section')
    .map(({ row, cells }) => ({ row, cells, partNumber: '', description: '', quantity: null, seemsToBe: null }));
  return titles.length === 0 ? lines : [...lines, ...titles].sort((a, b) => a.row - b.row);
}
