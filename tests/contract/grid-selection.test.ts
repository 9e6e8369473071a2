import { describe, expect, it } from 'vitest';
import type { GridRow } from '../../src/app/state.ts';
import { clearBlock, fillDown, fillFrom, pasteBlock, type Sheet } from '../../src/ui/grid/block-edits.ts';
import { readKey } from '../../src/ui/grid/block-keys.ts';
import { passesFilter } from '../../src/ui/grid/column-filter.ts';
import { compareTexts } from '../../src/ui/grid/compare-texts.ts';
import {
  blockOf,
  type Cell,
  clampCell,
  type Ground,
  isInside,
  type MoveKey,
  moveFrom,
  oneCell,
  rangeOf,
  wholeLines,
} from '../../src/ui/grid/selection.ts';

const at = (row: number, column: number): Cell => ({ row, column });

describe('a selected block', () => {
  it('has the same range whichever corner moves', () => {
    const range = { top: 2, bottom: 5, left: 1, right: 3 };
    for (const [anchor, head] of [
      [at(2, 1), at(5, 3)],
      [at(5, 3), at(2, 1)],
      [at(2, 3), at(5, 1)],
    ] as const)
      expect(rangeOf({ anchor, head })).toEqual(range);
    expect(rangeOf(blockOf(range))).toEqual(range);
    expect(isInside(range, at(5, 3))).toBe(true);
    expect(isInside(range, at(6, 3))).toBe(false);
  });

  it('grows to whole rows, whole columns and everything, and keeps the focus', () => {
    const extent = { rows: 10, columns: 4 };
    const block = { anchor: at(3, 1), head: at(2, 2), focus: at(3, 1) };
    expect(rangeOf(wholeLines(block, 'rows', extent))).toEqual({ top: 2, bottom: 3, left: 0, right: 3 });
    expect(rangeOf(wholeLines(block, 'columns', extent))).toEqual({ top: 0, bottom: 9, left: 1, right: 2 });
    expect(rangeOf(wholeLines(block, 'all', extent))).toEqual({ top: 0, bottom: 9, left: 0, right: 3 });
    expect(wholeLines(block, 'all', extent).focus).toEqual(block.focus);
    expect(oneCell(at(1, 1)).focus).toEqual(at(1, 1));
    expect(clampCell(at(-1, 9), extent)).toEqual(at(0, 3));
  });
});

describe('moving', () => {
  const filled = ['xx..', 'xx..', '....', 'x..x', 'x...'];
  const ground: Ground = {
    rows: 5,
    columns: 4,
    pageRows: 3,
    isFilled: ({ row, column }) => filled[row]?.[column] === 'x',
  };

  it.each<[MoveKey, Cell, Cell]>([
    ['ArrowDown', at(0, 0), at(1, 0)],
    ['ArrowUp', at(0, 0), at(0, 0)],
    ['ArrowRight', at(2, 3), at(2, 3)],
    ['ArrowLeft', at(2, 3), at(2, 2)],
    ['Home', at(3, 2), at(3, 0)],
    ['End', at(3, 1), at(3, 3)],
    ['PageDown', at(0, 1), at(3, 1)],
    ['PageUp', at(1, 1), at(0, 1)],
  ])('%s', (key, from, to) => {
    expect(moveFrom(from, key, false, ground)).toEqual(to);
  });

  it.each<[MoveKey, Cell, Cell, string]>([
    ['ArrowDown', at(0, 0), at(1, 0), 'to the last filled cell before a gap'],
    ['ArrowDown', at(1, 0), at(3, 0), 'over the gap to the next filled cell'],
    ['ArrowDown', at(3, 0), at(4, 0), 'to the last cell while all are filled'],
    ['ArrowDown', at(1, 1), at(4, 1), 'to the end where nothing follows'],
    ['ArrowRight', at(0, 0), at(0, 1), 'along the row'],
    ['ArrowRight', at(3, 0), at(3, 3), 'over a gap in the row'],
    ['ArrowLeft', at(2, 2), at(2, 0), 'through an empty row'],
    ['ArrowUp', at(4, 0), at(3, 0), 'upwards'],
    ['Home', at(3, 3), at(0, 0), 'to the first cell of all'],
    ['End', at(0, 0), at(4, 3), 'to the last cell of all'],
  ])('Ctrl+%s from %o to %o: %s', (key, from, to) => {
    expect(moveFrom(from, key, true, ground)).toEqual(to);
  });
});

describe('keys', () => {
  const none = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };
  it('are commands, or left to the grid', () => {
    expect(readKey({ ...none, key: 'Delete' })).toEqual({ kind: 'clear' });
    expect(readKey({ ...none, key: 'ArrowUp', shiftKey: true })).toMatchObject({
      kind: 'move',
      extend: true,
      jump: false,
    });
    expect(readKey({ ...none, key: 'End', ctrlKey: true })).toMatchObject({ kind: 'move', extend: false, jump: true });
    expect(readKey({ ...none, key: 'A', metaKey: true })).toEqual({ kind: 'select', what: 'all' });
    for (const key of ['a', 'd', 'F2', 'Enter', 'Tab', ' ']) expect(readKey({ ...none, key })).toBeNull();
    for (const key of ['c', 'v', 'z', 'h', 'f']) expect(readKey({ ...none, key, ctrlKey: true })).toBeNull();
    expect(readKey({ ...none, key: 'ArrowDown', altKey: true })).toBeNull();
  });
});

/** Three rows of two columns of the sender's with one of ours between them, displayed from the last row to the first. */
const sheet: Sheet = {
  rows: 3,
  columns: [
    { id: 'sender-0', sender: 0 },
    { id: 'verdict', sender: null },
    { id: 'sender-4', sender: 4 },
  ],
  rowAt: (row) => [gridRow(9, 'c'), gridRow(7, 'b'), gridRow(5, 'a')][row],
};
function gridRow(row: number, text: string): GridRow {
  const cells = [`${text}0`, '', '', '', `${text}4`];
  return { row, cells, other: { row, cells, what: 'screw' } };
}
const all = { top: 0, bottom: 2, left: 0, right: 2 };

describe('edits of a block', () => {
  it('empty only cells of the sender', () => {
    const { cells, name } = clearBlock(sheet, { ...all, bottom: 0 });
    expect(cells).toEqual([
      { row: 9, column: 0, text: '' },
      { row: 9, column: 4, text: '' },
    ]);
    expect(name).toBe('clear 2 cells');
  });

  it('paste goes to the displayed rows, in their order', () => {
    const { cells, say, range, name } = pasteBlock(sheet, { top: 1, bottom: 1, left: 0, right: 0 }, [['x'], ['y']]);
    expect(cells).toEqual([
      { row: 7, column: 0, text: 'x' },
      { row: 5, column: 0, text: 'y' },
    ]);
    expect([say, name]).toEqual([null, 'paste 2 cells']);
    expect(range).toEqual({ top: 1, bottom: 2, left: 0, right: 0 });
  });

  it('paste beyond the end is cut off and says so', () => {
    const texts = [
      ['1', '2', '3', '4'],
      ['5', '6', '7', '8'],
      ['9', '9', '9', '9'],
    ];
    const { cells, say } = pasteBlock(sheet, { top: 2, bottom: 2, left: 0, right: 0 }, texts);
    expect(cells).toEqual([
      { row: 5, column: 0, text: '1' },
      { row: 5, column: 4, text: '3' },
    ]);
    expect(say).toBe(
      'The paste left out 2 rows beyond the last row of the list and 2 columns beside the columns of your list.',
    );
  });

  it('one text fills the selection, and a block that fits repeats', () => {
    expect(pasteBlock(sheet, all, [['x']]).cells.map(({ text }) => text)).toEqual(Array(6).fill('x'));
    const twice = pasteBlock(sheet, { ...all, bottom: 1, right: 0 }, [['x']]);
    expect(twice.cells.map(({ row }) => row)).toEqual([9, 7]);
    expect(twice.say).toBeNull();
  });

  it('a paste into our columns alone changes nothing and says so', () => {
    const { cells, say } = pasteBlock(sheet, { top: 0, bottom: 0, left: 1, right: 1 }, [['x']]);
    expect(cells).toEqual([]);
    expect(say).toMatch(/^Nothing was pasted/);
  });

  it('cells that a ragged block does not have stay as they are', () => {
    const { cells } = pasteBlock(sheet, { top: 0, bottom: 0, left: 0, right: 0 }, [['x'], ['y', '', 'z']]);
    expect(cells).toEqual([
      { row: 9, column: 0, text: 'x' },
      { row: 7, column: 0, text: 'y' },
      { row: 7, column: 4, text: 'z' },
    ]);
  });

  it('fill down repeats the first row, a single row takes the one above', () => {
    expect(fillDown(sheet, { ...all, right: 0 })?.cells).toEqual([
      { row: 7, column: 0, text: 'c0' },
      { row: 5, column: 0, text: 'c0' },
    ]);
    expect(fillDown(sheet, { top: 2, bottom: 2, left: 2, right: 2 })?.cells).toEqual([
      { row: 5, column: 4, text: 'b4' },
    ]);
    expect(fillDown(sheet, { top: 0, bottom: 0, left: 0, right: 0 })).toBeNull();
  });

  it('the handle repeats the rows of the block', () => {
    const { cells, name, range } = fillFrom(sheet, { top: 0, bottom: 0, left: 0, right: 2 }, 2);
    expect(cells.map(({ text }) => text)).toEqual(['c0', 'c4', 'c0', 'c4']);
    expect(name).toBe('fill down 4 cells');
    expect(range).toEqual(all);
  });
});

describe('columns', () => {
  it.each([
    ['contains', 'M4', 'NUT-m4-10', true],
    ['contains', 'M5', 'NUT-M4-10', false],
    ['equals', '0.8', ' 0.8 ', true],
    ['equals', '0.8', '0.80', false],
    ['empty', '', '  ', true],
    ['empty', '', 'x', false],
  ] as const)('filter: %s “%s” on “%s” is %s', (how, text, cell, passes) => {
    expect(passesFilter(cell, { how, text })).toBe(passes);
  });

  it('sort numbers by size, words after them, empty cells last in either direction', () => {
    const texts = ['10', '', 'M10', '9', '1,5', 'M4', '1.25'];
    const up = texts.toSorted((a, b) => compareTexts(a, b));
    expect(up).toEqual(['1.25', '1,5', '9', '10', 'M4', 'M10', '']);
    const down = texts.toSorted((a, b) => -compareTexts(a, b, null, null, true));
    expect(down).toEqual(['M10', 'M4', '10', '9', '1,5', '1.25', '']);
  });
});
