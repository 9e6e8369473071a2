import { itemOfRow } from '../core/caching/in-order.ts';
import { SETTING_KEYS } from '../core/intake/shop-settings.ts';
import type { Concession } from '../core/model/concession.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { ReadBack } from '../core/readback/read-back.ts';
import { SETTING_WORDS, showSetting } from '../core/say/show-setting.ts';
import type { CellEdit } from '../worker/protocol.ts';
import type { Deed } from './history.ts';
import type { GridRow } from './state.ts';

/** As many sentences on what could not be taken over as a message may have. */
const MOST_NOTICES = 3;

/** A change of settings; null where nothing changes by which rows are judged (in which unit lengths are shown is no such thing). */
export function deedOfShop(before: ShopSettings, after: ShopSettings): Deed | null {
  const [first, ...others] = changedSettings(before, after);
  if (!first) return null;
  const name =
    others.length > 0
      ? `set ${others.length + 1} shop settings`
      : `set “${SETTING_WORDS[first].name}” to ${showSetting(first, after)}`;
  return { name, after: { shop: after }, before: { shop: before } };
}

/** Settings that differ, but for the unit of display. */
export function changedSettings(before: ShopSettings, after: ShopSettings): readonly (keyof ShopSettings)[] {
  return SETTING_KEYS.filter((key) => key !== 'units' && before[key] !== after[key]);
}

/** Accepts a finding, in place of what was accepted of the same check of the same row before. */
export function deedOfConcession(before: readonly Concession[], concession: Concession, partNumber: string): Deed {
  const after = [...without(before, concession), concession].sort((a, b) => a.row - b.row);
  const name = `accept “${concession.says}” of ${partNumber || 'the part'} in row ${concession.row}`;
  return { name, after: { concessions: after }, before: { concessions: before } };
}

/** Takes a concession back; null where there is none of this check of this row. */
export function deedOfWithdrawal(before: readonly Concession[], row: number, rule: string): Deed | null {
  const concession = before.find((one) => one.row === row && one.rule === rule);
  if (!concession) return null;
  const name = `withdraw the concession “${concession.says}” in row ${row}`;
  return { name, after: { concessions: without(before, concession) }, before: { concessions: before } };
}

/** Takes over what an earlier export has left in the workbook: its own sheet of changes tells of it already. */
export function deedOfTakenOver(concessions: readonly Concession[]): Deed {
  const name = `take over ${countConcessions(concessions.length)} of the workbook`;
  return { name, after: { concessions }, before: { concessions: [] }, isTakenOver: true };
}

/** What the user is told of earlier work that came with a workbook: concessions and whose they are, changes, and what could not be taken over. '' where none came. */
export function sayTakenOver({ concessions, changes, notices }: ReadBack): string {
  const signers = [...new Set(concessions.map(({ by }) => by.trim() || 'nobody'))].join(', ');
  const taken =
    concessions.length > 0
      ? `The workbook brought ${countConcessions(concessions.length)}, signed by ${signers}: verdicts stand as they are, and Undo takes the concessions out again.`
      : '';
  const more = notices.length - MOST_NOTICES;
  return [
    taken,
    ...notices.slice(0, MOST_NOTICES),
    more > 0 ? `${more} more could not be taken over; Changes names them.` : '',
    changes.length > 0
      ? `${changes.length === 1 ? 'One earlier change stands' : `${changes.length} earlier changes stand`} under Changes.`
      : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function countConcessions(count: number): string {
  return count === 1 ? 'a concession' : `${count} concessions`;
}

function without(concessions: readonly Concession[], { row, rule }: Pick<Concession, 'row' | 'rule'>) {
  return concessions.filter((one) => one.row !== row || one.rule !== rule);
}

/** What was wanted, with the text that was typed into a single cell. */
export function sayNotDone({ name, after }: Deed): string {
  const cell = 'cells' in after && after.cells.length === 1 ? after.cells[0] : undefined;
  return `Not done: ${name}${cell ? ` (“${cell.text}”)` : ''}.`;
}

/** The cells that do not hold their text yet, set as one step; null where there are none and nothing is told. Rows that are not there are left out. */
export function deedOfCells(
  rows: readonly GridRow[],
  cells: readonly CellEdit[],
  name: string,
  told?: Deed['told'],
): Deed | null {
  const textIn = ({ row, column }: CellEdit) => itemOfRow(rows, row)?.cells[column] ?? '';
  const after = cells.filter((cell) => itemOfRow(rows, cell.row) && textIn(cell) !== cell.text);
  if (after.length === 0 && !told) return null;
  const before = after.map((cell) => ({ ...cell, text: textIn(cell) }));
  return { name, after: { cells: after }, before: { cells: before }, ...(told && { told }) };
}
