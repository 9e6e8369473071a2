import type { RawRow } from '../model/raw.ts';
import { cutCell } from './long-cells.ts';

type Cells = Pick<RawRow, 'cells' | 'flags'>;

/** Texts of one column, given by its 0-based place. */
export type TextsOf = (index: number) => readonly string[];

const asItStands = ({ cells }: Cells, index: number): string => cells[index] ?? '';

/**
 * Texts of the columns of some rows, as far as they are read, each gathered when it is first asked for: most columns never are. A column
 * that no row reaches has none: a stray heading at the far right would otherwise take a blank for each row in thousands of columns.
 */
export function gatherTexts<Row extends Cells>(
  rows: readonly Row[],
  textOf: (row: Row, index: number) => string = asItStands,
): TextsOf {
  const reach = rows.reduce((widest, { cells }) => Math.max(widest, cells.length), 0);
  const gathered = new Map<number, readonly string[]>();
  return (index) => {
    if (index >= reach) return [];
    const texts = gathered.get(index) ?? rows.map((row) => cutCell(textOf(row, index)));
    gathered.set(index, texts);
    return texts;
  };
}

/** The texts of the first so many columns at once. */
export function columnTexts(count: number, rows: readonly Cells[]): readonly (readonly string[])[] {
  const textsOf = gatherTexts(rows);
  return Array.from({ length: count }, (_, index) => textsOf(index));
}
