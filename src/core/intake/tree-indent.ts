import type { Column } from '../model/list.ts';
import { isFastenerRow } from './sheet-part.ts';
import { placeByDepth } from './tree-depth.ts';
import type { Placing, TreeRow } from './tree-row.ts';

const BECAUSE = 'are indented by more than one step';

/** Places rows by their indentation: spaces before the part number or name, or empty columns before it. */
export function placeByIndent(rows: readonly TreeRow[], columns: readonly Column[]): readonly Placing[] {
  return columns
    .filter(({ role }) => role === 'partNumber' || role === 'description' || role === 'index')
    .flatMap((column) => {
      const depths = column.through === undefined ? depthsBySpaces(rows, column.index) : depthsByColumns(rows, column);
      if (!depths) return [];
      const placing = placeByDepth(rows, depths, BECAUSE);
      return hasFastenerAbove(rows, placing) ? [] : [placing];
    });
}

function depthsByColumns(rows: readonly TreeRow[], { index, through = index }: Column): readonly (number | null)[] {
  return rows.map(({ cells }) => {
    const at = cells.slice(index, through + 1).findIndex((cell) => cell.trim() !== '');
    return at < 0 ? null : at;
  });
}

const SMALLEST_STEP = 2;
const TAB = 4;

/** Steps of one size, two spaces or more; a stray space before a text is none. */
function depthsBySpaces(rows: readonly TreeRow[], index: number): readonly number[] | null {
  const widths = rows.map(({ cells }) => widthOf(cells[index] ?? ''));
  const used = widths.filter((width) => width > 0);
  if (used.length < 2) return null;
  const step = used.reduce((least, width) => Math.min(least, width));
  if (step < SMALLEST_STEP || used.some((width) => width % step !== 0)) return null;
  return widths.map((width) => width / step);
}

function widthOf(text: string): number {
  if (!/^\s/.test(text)) return 0;
  const blank = /^\s*/.exec(text)?.[0] ?? '';
  if (blank.length === text.length) return 0;
  return [...blank].reduce((sum, sign) => sum + (sign === '\t' ? TAB : sign === '\u3000' ? 2 : 1), 0);
}

/** Nothing is pressed into a fastener: blanks that would put rows under one are no indentation. */
function hasFastenerAbove(rows: readonly TreeRow[], { parents }: Placing): boolean {
  const above = new Set([...parents.values()].flat());
  return rows.some((row) => above.has(row.row) && isFastenerRow(row));
}
