import type { Line } from '../model/line.ts';
import type { Column, Role } from '../model/list.ts';
import { isFastenerRow } from './sheet-part.ts';
import { isParentColumn } from './tree-parents.ts';
import { pathColumns } from './tree-paths.ts';
import { nameKey } from './tree-row.ts';

/** Columns of whose cells a tree may read every sign. */
const READ_WHOLE: ReadonlySet<Role> = new Set(['quantity', 'other', 'level', 'index', 'parent', 'panel']);
/** Columns of which it may read how far their texts are indented. */
const READ_INDENT: ReadonlySet<Role> = new Set(['partNumber', 'description', 'index']);

/**
 * Everything of a row that the tree of its list can depend on, as a text: while that stays the same for every row, so does the tree.
 * It may name more than the tree has read.
 */
export function treeSignature(columns: readonly Column[]): (line: Line) => string {
  const whole = columns.filter(({ role }) => READ_WHOLE.has(role));
  const indented = columns.filter(({ role }) => READ_INDENT.has(role));
  const readsNames = columns.some(isParentColumn) || pathColumns(columns).length > 0;
  const headings = new Set(whole.flatMap(({ heading }) => wordsOf(heading)));
  const nameIn = (text: string) => (readsNames || headings.has(nameKey(text)) ? nameKey(text) : '');
  return (line) =>
    JSON.stringify([
      whole.map(({ index }) => line.cells[index] ?? ''),
      indented.map((column) => indentOf(line.cells, column)),
      nameIn(line.partNumber),
      nameIn(line.description),
      isFastenerRow(line),
    ]);
}

/** A heading may be the name of a row, or hold it: "Qty Door". */
function wordsOf(heading: string): readonly string[] {
  const words = heading.split(/[\s:()[\]-]+/);
  return words.flatMap((_, at) => words.slice(at).map((__, more) => nameKey(words.slice(at, at + more + 1).join(''))));
}

/** Blanks before a text, and which of the columns that it may stand in it stands in. */
function indentOf(cells: readonly string[], { index, through = index }: Column): readonly string[] {
  return cells.slice(index, through + 1).map((cell) => (cell.trim() === '' ? '-' : (/^\s*/.exec(cell)?.[0] ?? '')));
}
