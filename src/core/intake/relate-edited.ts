import { exchangeRows, itemOfRow } from '../caching/in-order.ts';
import type { Line } from '../model/line.ts';
import type { HardwareList, OtherRow } from '../model/list.ts';
import { createLineReader } from './build-line.ts';
import { relateRows } from './relate.ts';
import { isSheetPart } from './sheet-part.ts';
import { treeSignature } from './tree-reads.ts';

/** A row that was read again: what it said by itself before, and what it says now. */
export interface EditedRow {
  readonly before: Line | OtherRow;
  readonly after: Line | OtherRow;
}

/**
 * The list with rows read again, the same as `relateRows` would give. Where nothing of what joins the rows has changed (the tree,
 * quantities through it, sheets taken from panels), every other row is left as it is without being looked at; see `isApartFrom`.
 */
export function relateEdited(list: HardwareList, edited: readonly EditedRow[]): HardwareList {
  const lines = edited.flatMap(({ before, after }) => (isOther(before) || isOther(after) ? [] : { before, after }));
  const own = new Map(edited.map(({ after }) => [after.row, isOther(after) ? null : after]));
  const relations = { ...list.relations, ownLines: exchangeRows(list.relations.ownLines, own) };
  const isApart = lines.length === edited.length && list.relations.sideColumns.length === 0;
  const joined = isApart && lines.every(createTreeCheck(list)) && giveSheets(list, lines, relations.ownLines);
  if (joined) return { ...list, lines: joined, relations };
  const others = new Map(edited.map(({ after }) => [after.row, isOther(after) ? after : null]));
  return relateRows({ ...list, others: exchangeRows(list.others, others), relations });
}

/** Whether of a list and the same edited no other rows differ than those that were edited. */
export function isApartFrom(before: HardwareList, after: HardwareList): boolean {
  return before.relations.extended === after.relations.extended;
}

interface EditedLine {
  readonly before: Line;
  readonly after: Line;
}

/** Whether a row still has its place in the tree and its pieces there. */
function createTreeCheck({ columns }: HardwareList): (edited: EditedLine) => boolean {
  const signature = treeSignature(columns);
  return ({ before, after }) =>
    before.quantity.how === after.quantity.how &&
    before.quantity.value === after.quantity.value &&
    signature(before) === signature(after);
}

/** The rows with the sheets of their panels; null where those have to be sought again. `own`: the rows as each says by itself. */
function giveSheets(list: HardwareList, edited: readonly EditedLine[], own: readonly Line[]): readonly Line[] | null {
  const nobodyTakes = list.lines === list.relations.ownLines;
  if (nobodyTakes && !edited.some(({ after }) => isSilent(after))) return own;
  if (!edited.every(givesAndTakesTheSame)) return null;
  const { withSheet } = createLineReader(list.columns);
  const now = edited.map(({ before, after }): [number, Line] => {
    const taken = itemOfRow(list.lines, before.row) ?? before;
    return [after.row, taken === before ? after : withSheet(after, taken.material, taken.thickness)];
  });
  return exchangeRows(list.lines, new Map(now));
}

function isSilent({ material, thickness }: Line): boolean {
  return material.how === 'blank' || thickness.how === 'blank';
}

/** Nothing has changed by which the row takes a sheet, or other rows take this one's. */
function givesAndTakesTheSame({ before, after }: EditedLine): boolean {
  const names = ['panel', 'partNumber', 'description', 'seemsToBe'] as const;
  const sheets = ({ material, thickness }: Line) => JSON.stringify([material, thickness]);
  return !isSheetPart(after) && names.every((name) => before[name] === after[name]) && sheets(before) === sheets(after);
}

function isOther(row: Line | OtherRow): row is OtherRow {
  return 'what' in row;
}
