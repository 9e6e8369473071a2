import { Unreadable } from '../../core/model/raw.ts';
import { type Block, LAST_COLUMN, overlapsRows } from './ranges.ts';
import type { SheetSurvey } from './survey.ts';

/** Blank cells that merely have a style are stepped over when there are few of them, else written into. */
const BLANK_REACH = 4;
/** Further to the right than this behind the list nobody would find our columns. */
const FARTHEST = 30;

/** What lies on a sheet beside its cells. */
export interface Beside {
  readonly tables: readonly Block[];
  readonly drawings: readonly Block[];
}

/**
 * First of `width` columns to the right of the list that are free on all its rows: no data, merged block, filter or table there, and
 * where it can be helped no validation, conditional format or drawing.
 * @throws Unreadable when no columns are left.
 */
export function placeColumns(sheet: SheetSurvey, beside: Beside, width: number): number {
  const last = greatest([...sheet.filled, ...rightOf(sheet, sheet.taken), ...rightOf(sheet, beside.tables)]);
  const touchy = rightOf(sheet, [...sheet.touchy, ...beside.drawings]).filter((end) => end - last <= FARTHEST);
  const { lastCell } = sheet;
  const start = greatest([last, ...touchy, ...(lastCell - last <= BLANK_REACH ? [lastCell] : [])]) + 1;
  if (start + width - 1 > LAST_COLUMN) {
    throw new Unreadable('The sheet has no free columns beside the list.');
  }
  return start;
}

/** Whether nothing stands in a column on the rows of the list, nor runs through it there. */
export function isFree(sheet: SheetSurvey, { tables }: Beside, column: number): boolean {
  const blocks = [...sheet.taken, ...tables].filter((block) => overlapsRows(block, sheet.top, sheet.bottom));
  const isIn = blocks.some(({ left, right }) => left <= column && right >= column);
  return column <= LAST_COLUMN && !sheet.filled.has(column) && !isIn;
}

/** Where blocks on the rows of the list end. */
function rightOf({ top, bottom }: SheetSurvey, blocks: readonly Block[]): readonly number[] {
  return blocks.filter((block) => overlapsRows(block, top, bottom)).map(({ right }) => right);
}

function greatest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, value), -1);
}
