import { columnOf } from '../xlsx/address.ts';
import type { Merge } from '../xlsx/merges.ts';

/** A block of cells; rows 1-based, columns 0-based, ends included. */
export type Block = Merge;

export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_383;

/** Blocks of a reference list such as `A1:C4 E:E 7:9`; whatever is no reference is left out. */
export function parseBlocks(references: string | undefined): Block[] {
  return (references ?? '').split(/\s+/).flatMap(parseBlock);
}

export function overlapsRows(block: Block, top: number, bottom: number): boolean {
  return block.top <= bottom && block.bottom >= top;
}

export function holds(block: Block, row: number, column: number): boolean {
  return row >= block.top && row <= block.bottom && column >= block.left && column <= block.right;
}

function parseBlock(reference: string): Block[] {
  const ends = /^\$?([a-z]{1,3})?\$?(\d{1,7})?(?::\$?([a-z]{1,3})?\$?(\d{1,7})?)?$/i.exec(reference);
  if (ends === null || reference === '') return [];
  const [, left, top, right, bottom] = ends;
  const isCell = !reference.includes(':');
  const columns = [left ? columnOf(left) : 0, isCell && left ? columnOf(left) : right ? columnOf(right) : LAST_COLUMN];
  const rows = [top ? Number(top) : 1, isCell && top ? Number(top) : bottom ? Number(bottom) : LAST_ROW];
  return [
    { left: Math.min(...columns), right: Math.max(...columns), top: Math.min(...rows), bottom: Math.max(...rows) },
  ];
}
