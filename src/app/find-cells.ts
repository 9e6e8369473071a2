import type { CellEdit } from '../worker/protocol.ts';

/** What is sought. */
export interface FindQuery {
  readonly text: string;
  readonly matchCase: boolean;
  /** The cell holds nothing else. */
  readonly wholeCell: boolean;
}

/** One cell of the sender's: `row` as numbered in the file, `column` 0-based. */
export type FoundCell = CellEdit;

/** Cells that hold the text, in the order given; none for an empty text. */
export function findCells(cells: Iterable<FoundCell>, query: FindQuery): readonly FoundCell[] {
  const pattern = patternOf(query);
  if (!pattern) return [];
  const found: FoundCell[] = [];
  for (const cell of cells) if (cell.text.search(pattern) >= 0) found.push(cell);
  return found;
}

/** The cells with every place of the text replaced; the new text is taken as it stands. */
export function replaceInCells(cells: readonly FoundCell[], query: FindQuery, by: string): readonly CellEdit[] {
  const pattern = patternOf(query);
  if (!pattern) return [];
  return cells.map((cell) => ({ ...cell, text: cell.text.replace(pattern, () => by) }));
}

/** What to call the step. */
export function nameReplacement({ text }: FindQuery, by: string, cells: number): string {
  return `replace “${text}” by “${by}” in ${cells} ${cells === 1 ? 'cell' : 'cells'}`;
}

function patternOf({ text, matchCase, wholeCell }: FindQuery): RegExp | null {
  if (text === '') return null;
  const literal = text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
  return new RegExp(wholeCell ? `^${literal}$` : literal, matchCase ? 'gu' : 'giu');
}
