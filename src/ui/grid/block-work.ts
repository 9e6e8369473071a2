import type { GridApi } from 'ag-grid-community';
import { parseClipboard, writeClipboard } from '../../app/clipboard.ts';
import type { GridRow } from '../../app/state.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import {
  type BlockEdit,
  type CellsEdit,
  clearBlock,
  fillDown,
  fillFrom,
  pasteBlock,
  type Sheet,
} from './block-edits.ts';
import { type KeyCommand, readKey } from './block-keys.ts';
import { BlockMouse } from './block-mouse.ts';
import type { BlockSelection } from './block-selection.ts';
import { cellText } from './cell-text.ts';
import { displayedSheet, rowsInSight } from './displayed-sheet.ts';
import { type Block, blockOf, type Cell, isSameCell, moveFrom, oneCell, rangeOf, wholeLines } from './selection.ts';

/** What the work on blocks needs of the grid around it. */
export interface BlockSurroundings {
  readonly units: () => LengthUnit;
  readonly edit: (edit: CellsEdit) => void;
}

/** Works on the selected block by keys, mouse and clipboard. It never changes a cell: edits go out. */
export class BlockWork {
  readonly #grid: GridApi<GridRow>;
  readonly #selection: BlockSelection;
  readonly #around: BlockSurroundings;

  constructor(grid: GridApi<GridRow>, box: HTMLElement, selection: BlockSelection, around: BlockSurroundings) {
    this.#grid = grid;
    this.#selection = selection;
    this.#around = around;
    new BlockMouse(grid, box, selection, (lastRow) =>
      this.#editBlock((sheet, block) => fillFrom(sheet, rangeOf(block), lastRow)),
    );
    box.addEventListener('copy', (event) => this.#copy(event));
    box.addEventListener('cut', (event) => this.#cut(event));
    box.addEventListener('paste', (event) => this.#paste(event));
  }

  /** Handles a key pressed on a cell that is not being edited; true where the grid shall leave it alone. */
  press(event: KeyboardEvent): boolean {
    const command = readKey(event);
    const { block } = this.#selection;
    if (!command || !block) return false;
    this.#do(command, block);
    event.preventDefault();
    return true;
  }

  #do(command: KeyCommand, block: Block): void {
    if (command.kind === 'move') this.#move(command, block);
    else if (command.kind === 'select') this.#selectLines(command.what, block);
    else if (command.kind === 'clear') this.#editBlock((sheet) => clearBlock(sheet, rangeOf(block)));
    else if (command.kind === 'fill-down') this.#editBlock((sheet) => fillDown(sheet, rangeOf(block)));
    else this.#selection.select(oneCell(block.focus));
  }

  #move({ key, jump, extend }: KeyCommand & { kind: 'move' }, { focus, head }: Block): void {
    const sheet = displayedSheet(this.#grid);
    const isFilled = (cell: Cell) => this.#textAt(sheet, cell) !== '';
    const ground = { ...extentOf(sheet), pageRows: rowsInSight(this.#grid), isFilled };
    if (extend) this.#selection.extend(moveFrom(head, key, jump, ground));
    else this.#selection.goTo(moveFrom(focus, key, jump, ground));
  }

  #selectLines(what: 'all' | 'rows' | 'columns', block: Block): void {
    this.#selection.select(wholeLines(block, what, extentOf(displayedSheet(this.#grid))));
  }

  #copy(event: ClipboardEvent): boolean {
    const { block } = this.#selection;
    if (!block || !event.clipboardData || this.#isTyping(event)) return false;
    const sheet = displayedSheet(this.#grid);
    const { top, bottom, left, right } = rangeOf(block);
    const texts = steps(top, bottom).map((row) =>
      steps(left, right).map((column) => this.#textAt(sheet, { row, column })),
    );
    event.clipboardData.setData('text/plain', writeClipboard(texts));
    event.preventDefault();
    return true;
  }

  #cut(event: ClipboardEvent): void {
    if (this.#copy(event)) this.#editBlock((sheet, block) => clearBlock(sheet, rangeOf(block), 'cut'));
  }

  #paste(event: ClipboardEvent): void {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (this.#isTyping(event)) return;
    event.preventDefault();
    if (text !== '') this.#editBlock((sheet, block) => pasteBlock(sheet, rangeOf(block), parseClipboard(text)));
  }

  #editBlock(edit: (sheet: Sheet, block: Block) => BlockEdit | null): void {
    const { block } = this.#selection;
    const done = block && edit(displayedSheet(this.#grid), block);
    if (!done) return;
    const { range, ...cells } = done;
    if (cells.cells.length > 0) this.#selectEdited(blockOf(range), block);
    this.#around.edit(cells);
  }

  #selectEdited(edited: Block, before: Block): void {
    if (!isSameCell(edited.focus, before.focus)) this.#selection.goTo(edited.focus);
    this.#selection.select(edited);
  }

  #textAt(sheet: Sheet, { row, column }: Cell): string {
    const data = sheet.rowAt(row);
    const id = sheet.columns[column]?.id;
    return data && id !== undefined ? cellText(data, id, this.#around.units()) : '';
  }

  /** In the field of a cell the clipboard is the browser's. */
  #isTyping(event: Event): boolean {
    return event.composedPath()[0] instanceof HTMLInputElement;
  }
}

const extentOf = ({ rows, columns }: Sheet) => ({ rows, columns: columns.length });
const steps = (first: number, last: number): readonly number[] =>
  Array.from({ length: last - first + 1 }, (_, step) => first + step);
