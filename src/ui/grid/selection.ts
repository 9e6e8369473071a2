/** A cell by its place on screen: 0-based displayed row and displayed column. */
export interface Cell {
  readonly row: number;
  readonly column: number;
}

/** A selected block of cells between two corners: `anchor` stays and `head` moves. `focus` is the one cell in it that keys go to. */
export interface Block {
  readonly anchor: Cell;
  readonly head: Cell;
  readonly focus: Cell;
}

/** A block by its edges, all of them inside it. */
export interface Range {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** How many rows and columns are displayed. */
export interface Extent {
  readonly rows: number;
  readonly columns: number;
}

export type MoveKey = 'ArrowUp' | 'ArrowDown' | 'ArrowLeft' | 'ArrowRight' | 'Home' | 'End' | 'PageUp' | 'PageDown';

/** What a move needs to know of the sheet. */
export interface Ground extends Extent {
  /** Rows in sight, the length of a step by page. */
  readonly pageRows: number;
  readonly isFilled: (cell: Cell) => boolean;
}

export function rangeOf({ anchor, head }: Pick<Block, 'anchor' | 'head'>): Range {
  return {
    top: Math.min(anchor.row, head.row),
    bottom: Math.max(anchor.row, head.row),
    left: Math.min(anchor.column, head.column),
    right: Math.max(anchor.column, head.column),
  };
}

/** A block over a range, with the focus in its first cell. */
export function blockOf({ top, bottom, left, right }: Range): Block {
  const first = { row: top, column: left };
  return { anchor: first, head: { row: bottom, column: right }, focus: first };
}

export function oneCell(cell: Cell): Block {
  return { anchor: cell, head: cell, focus: cell };
}

export function isSameCell(a: Cell, b: Cell): boolean {
  return a.row === b.row && a.column === b.column;
}

export function isInside({ top, bottom, left, right }: Range, { row, column }: Cell): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** The nearest cell that is there. */
export function clampCell({ row, column }: Cell, { rows, columns }: Extent): Cell {
  return { row: clamp(row, rows - 1), column: clamp(column, columns - 1) };
}

/** All cells, the rows of the block over all columns, or its columns over all rows; the focus stays. */
export function wholeLines(
  { anchor, head, focus }: Block,
  what: 'all' | 'rows' | 'columns',
  { rows, columns }: Extent,
): Block {
  const [top, bottom] = what === 'rows' ? [anchor.row, head.row] : [0, rows - 1];
  const [left, right] = what === 'columns' ? [anchor.column, head.column] : [0, columns - 1];
  return { anchor: { row: top, column: left }, head: { row: bottom, column: right }, focus };
}

/** Where a key leads from a cell. With `jump` (Ctrl) an arrow goes to the edge of the filled cells, Home and End to the corners. */
export function moveFrom(from: Cell, key: MoveKey, jump: boolean, ground: Ground): Cell {
  const to = jump ? jumpFrom(from, key, ground) : stepFrom(from, key, ground);
  return clampCell(to, ground);
}

function stepFrom({ row, column }: Cell, key: MoveKey, { columns, pageRows }: Ground): Cell {
  switch (key) {
    case 'Home':
      return { row, column: 0 };
    case 'End':
      return { row, column: columns - 1 };
    case 'PageUp':
      return { row: row - pageRows, column };
    case 'PageDown':
      return { row: row + pageRows, column };
    default:
      return plus({ row, column }, DIRECTIONS[key]);
  }
}

function jumpFrom(from: Cell, key: MoveKey, ground: Ground): Cell {
  if (key === 'Home') return { row: 0, column: 0 };
  if (key === 'End') return { row: ground.rows - 1, column: ground.columns - 1 };
  if (key === 'PageUp' || key === 'PageDown') return stepFrom(from, key, ground);
  return edgeFrom(from, DIRECTIONS[key], ground);
}

/** To the last filled cell before a gap; from the edge of a gap, or from an empty cell, to the next filled one; else to the end. */
function edgeFrom(from: Cell, direction: Cell, ground: Ground): Cell {
  const isThere = (cell: Cell) => isSameCell(clampCell(cell, ground), cell);
  let at = from;
  let next = plus(at, direction);
  const withinFilled = ground.isFilled(from) && isThere(next) && ground.isFilled(next);
  while (isThere(next)) {
    if (withinFilled && !ground.isFilled(next)) return at;
    if (!withinFilled && ground.isFilled(next)) return next;
    at = next;
    next = plus(at, direction);
  }
  return at;
}

const DIRECTIONS = {
  ArrowUp: { row: -1, column: 0 },
  ArrowDown: { row: 1, column: 0 },
  ArrowLeft: { row: 0, column: -1 },
  ArrowRight: { row: 0, column: 1 },
} as const satisfies Partial<Record<MoveKey, Cell>>;

const plus = (a: Cell, b: Cell): Cell => ({ row: a.row + b.row, column: a.column + b.column });
const clamp = (value: number, most: number): number => Math.max(0, Math.min(value, most));
