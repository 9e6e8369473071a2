import type { ColumnChoices } from '../core/intake/columns.ts';
import type { ChangeDetail, ChangeRecord } from '../core/model/change-record.ts';
import type { Concession } from '../core/model/concession.ts';
import { type Column, columnLetter } from '../core/model/list.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import { SETTING_WORDS, showSetting } from '../core/say/show-setting.ts';
import type { CellEdit } from '../worker/protocol.ts';
import { columnName } from './column-choices.ts';
import { changedSettings } from './deeds.ts';
import type { History, Step } from './history.ts';
import { partDetails } from './part-details.ts';
import { ROLE_NAMES, UNIT_NAMES } from './role-names.ts';
import type { AppState } from './state.ts';

/** Every step as it is told afterwards, oldest first; those taken back last, in the order in which they were made. */
export function toChangeRecords({ done, undone }: History, columns: readonly Column[]): readonly ChangeRecord[] {
  const toRecord = (step: Step, isUndone: boolean): ChangeRecord => ({
    when: step.when,
    by: step.by,
    what: step.name,
    undone: isUndone,
    details: [...detailsOf(step, columns), ...(step.told ?? [])],
  });
  return [...done.map((step) => toRecord(step, false)), ...[...undone].reverse().map((step) => toRecord(step, true))];
}

/** All that was changed, as it goes out with an export: what an earlier one has told, then the steps of the user. */
export function changesToTell({ changesBefore, history, list }: AppState): readonly ChangeRecord[] {
  const done = history.done.filter(({ isTakenOver }) => !isTakenOver);
  return [...changesBefore, ...toChangeRecords({ ...history, done }, list?.columns ?? [])];
}

function detailsOf({ before, after }: Step, columns: readonly Column[]): readonly ChangeDetail[] {
  if ('cells' in before && 'cells' in after) return cellDetails(before.cells, after.cells, columns);
  if ('shop' in before && 'shop' in after) return shopDetails(before.shop, after.shop);
  if ('columns' in before && 'columns' in after) return columnDetails(before.columns, after.columns, columns);
  if ('concessions' in before && 'concessions' in after)
    return concessionDetails(before.concessions, after.concessions);
  if ('parts' in before && 'parts' in after) return partDetails(before.parts, after.parts);
  if ('pressOrder' in before && 'pressOrder' in after) return orderDetails(before.pressOrder, after.pressOrder);
  return [];
}

function cellDetails(
  before: readonly CellEdit[],
  after: readonly CellEdit[],
  columns: readonly Column[],
): readonly ChangeDetail[] {
  const former = new Map(before.map(({ row, column, text }) => [`${row} ${column}`, text]));
  return after.map(({ row, column, text }) => ({
    row,
    where: nameOfColumn(column, columns),
    before: former.get(`${row} ${column}`) ?? '',
    after: text,
  }));
}

function shopDetails(before: ShopSettings, after: ShopSettings): readonly ChangeDetail[] {
  return changedSettings(before, after).map((key) => ({
    row: null,
    where: SETTING_WORDS[key].name,
    before: showSetting(key, before),
    after: showSetting(key, after),
  }));
}

function columnDetails(
  before: ColumnChoices,
  after: ColumnChoices,
  columns: readonly Column[],
): readonly ChangeDetail[] {
  const touched = [before.roles, before.units, after.roles, after.units].flatMap(Object.keys).map(Number);
  return [...new Set(touched)]
    .sort((a, b) => a - b)
    .flatMap((index) => {
      const [was, is] = [showChoice(before, index), showChoice(after, index)];
      return was === is ? [] : { row: null, where: nameOfColumn(index, columns), before: was, after: is };
    });
}

function showChoice({ roles, units }: ColumnChoices, index: number): string {
  const [role, unit] = [roles[index], units[index]];
  return [role && ROLE_NAMES[role], unit && UNIT_NAMES[unit]].filter(Boolean).join(', ') || 'as found';
}

function concessionDetails(before: readonly Concession[], after: readonly Concession[]): readonly ChangeDetail[] {
  const detail = ({ row, says }: Concession, was: string, is: string) => ({ row, where: says, before: was, after: is });
  return [
    ...before
      .filter((one) => !after.includes(one))
      .map((one) => detail(one, `accepted: ${one.reason}`, 'not accepted')),
    ...after
      .filter((one) => !before.includes(one))
      .map((one) => detail(one, 'not accepted', `accepted: ${one.reason}`)),
  ];
}

function orderDetails(before: readonly number[], after: readonly number[]): readonly ChangeDetail[] {
  const show = (rows: readonly number[]) => (rows.length > 0 ? `rows ${rows.join(', ')}` : 'as suggested');
  return [{ row: null, where: 'Order of pressing', before: show(before), after: show(after) }];
}

function nameOfColumn(index: number, columns: readonly Column[]): string {
  const column = columns.find((one) => one.index === index);
  return column ? columnName(column) : `column ${columnLetter(index)}`;
}
