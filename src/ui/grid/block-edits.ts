import type { Texts } from '../../app/clipboard.ts';
import type { GridRow } from '../../app/state.ts';
import type { CellEdit } from '../../worker/protocol.ts';
import type { Cell, Range } from './selection.ts';

/** The list as displayed: rows in their order on screen, and the columns from left to right. */
export interface Sheet {
  readonly rows: number;
  readonly columns: readonly SheetColumn[];
  readonly rowAt: (row: number) => GridRow | undefined;
}

export interface SheetColumn {
  readonly id: string;
  /** 0-based position in the sender's file; null for a column of ours, which nobody writes into. */
  readonly sender: number | null;
}

/** One step: texts for cells, what to call it, and a sentence where not everything could be done. */
export interface CellsEdit {
  readonly cells: readonly CellEdit[];
  readonly name: string;
  readonly say: string | null;
}

export interface BlockEdit extends CellsEdit {
  /** What is selected afterwards. */
  readonly range: Range;
}

/** Empties the sender's cells of a block. */
export function clearBlock(sheet: Sheet, range: Range, verb = 'clear'): BlockEdit {
  const cells = write(sheet, range, () => '');
  return { cells, name: nameStep(verb, cells), say: null, range };
}

/**
 * Puts a block of texts with its first cell at the selection's. A selection that is a multiple of the block in both directions is
 * filled with it, so one text fills all. What would reach beyond the list or into our columns is left out, and the sentence says so.
 */
export function pasteBlock(sheet: Sheet, selection: Range, texts: Texts): BlockEdit {
  const height = texts.length;
  const width = texts.reduce((most, row) => Math.max(most, row.length), 0);
  const wanted = pastedRange(selection, height, width);
  const range = {
    ...wanted,
    bottom: Math.min(wanted.bottom, sheet.rows - 1),
    right: Math.min(wanted.right, sheet.columns.length - 1),
  };
  const cells = write(sheet, range, ({ row, column }) => texts[row % height]?.[column % width]);
  const own = sheet.columns.slice(range.left, range.right + 1).filter(({ sender }) => sender === null).length;
  const say = sayLeftOut(wanted.bottom - range.bottom, wanted.right - range.right + own, cells.length > 0);
  return { cells, name: nameStep('paste', cells), say, range };
}

/** Repeats the first row of a block in the rows below it; a block of one row takes the row above. */
export function fillDown(sheet: Sheet, range: Range): BlockEdit | null {
  const source = range.top < range.bottom ? range.top : range.top - 1;
  if (source < 0) return null;
  return { ...fillFrom(sheet, { ...range, top: source, bottom: source }, range.bottom), range };
}

/** Repeats the rows of a block down to a row below it. */
export function fillFrom(sheet: Sheet, range: Range, lastRow: number): BlockEdit {
  const height = range.bottom - range.top + 1;
  const target = { ...range, top: range.bottom + 1, bottom: lastRow };
  const cells = write(sheet, target, ({ row, column }) =>
    textAt(sheet, { row: range.top + (row % height), column: range.left + column }),
  );
  return { cells, name: nameStep('fill down', cells), say: null, range: { ...range, bottom: lastRow } };
}

/** The texts for the sender's cells of a range; `textFor` counts rows and columns from the range's first cell. */
function write(sheet: Sheet, range: Range, textFor: (within: Cell) => string | undefined): readonly CellEdit[] {
  const cells: CellEdit[] = [];
  for (let row = range.top; row <= range.bottom; row++) {
    const into = sheet.rowAt(row);
    for (let column = range.left; into && column <= range.right; column++) {
      const sender = sheet.columns[column]?.sender ?? null;
      const text = textFor({ row: row - range.top, column: column - range.left });
      if (sender !== null && text !== undefined) cells.push({ row: into.row, column: sender, text });
    }
  }
  return cells;
}

function textAt(sheet: Sheet, { row, column }: Cell): string {
  const sender = sheet.columns[column]?.sender ?? null;
  return sender === null ? '' : (sheet.rowAt(row)?.cells[sender] ?? '');
}

function pastedRange({ top, bottom, left, right }: Range, height: number, width: number): Range {
  const [rows, columns] = [bottom - top + 1, right - left + 1];
  const isMultiple = rows % height === 0 && columns % width === 0;
  return isMultiple ? { top, bottom, left, right } : { top, left, bottom: top + height - 1, right: left + width - 1 };
}

function sayLeftOut(rows: number, columns: number, anyLanded: boolean): string | null {
  if (!anyLanded) return 'Nothing was pasted: only the columns of your list can be written into.';
  const parts = [
    rows > 0 ? `${count(rows, 'row')} beyond the last row of the list` : '',
    columns > 0 ? `${count(columns, 'column')} beside the columns of your list` : '',
  ].filter(Boolean);
  if (parts.length === 0) return null;
  return `The paste left out ${parts.join(' and ')}.`;
}

function nameStep(verb: string, cells: readonly CellEdit[]): string {
  return `${verb} ${count(cells.length, 'cell')}`;
}

const count = (number: number, noun: string): string => `${number} ${noun}${number === 1 ? '' : 's'}`;
