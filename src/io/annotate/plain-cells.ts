import { columnOf } from '../xlsx/address.ts';
import { LAST_COLUMN } from './ranges.ts';
import type { CellPlace, RowPlace } from './sheet-outline.ts';

/** What a survey asks of a cell. */
export type CellTrait = Pick<CellPlace, 'column' | 'isBlank' | 'hasReference'>;

const SLASH = 47;

/**
 * The cells of a plain row, without a look at more than where each stands and whether it holds something: where that is not certain, it
 * does. Null where a cell does not say where it stands, or one holds a formula: then the row must be walked tag by tag.
 */
export function plainCells(stretch: string, { tagEnd, inside, isEmpty }: RowPlace, prefix: string): CellTrait[] | null {
  const cells: CellTrait[] = [];
  if (isEmpty) return cells;
  const tag = `<${prefix}c`;
  const [start, close] = [`${tag} r="`, `</${prefix}c>`];
  const row = stretch.slice(tagEnd, inside);
  if (row.includes(`<${prefix}f`)) return null;
  for (let at = row.indexOf(tag); at >= 0; at = row.indexOf(tag, at + start.length)) {
    const column = row.startsWith(start, at) ? columnOf(row, at + start.length, at + start.length + 3) : -1;
    if (column < 0 || column > LAST_COLUMN) return null;
    const end = row.indexOf('>', at);
    const isBlank = row.charCodeAt(end - 1) === SLASH || row.startsWith(close, end + 1);
    cells.push({ column, isBlank, hasReference: true });
  }
  return cells;
}
