import type { ColumnChoices } from '../core/intake/columns.ts';
import { findSettingFault, SETTING_KEYS } from '../core/intake/shop-settings.ts';
import type { ChangeDetail } from '../core/model/change-record.ts';
import type { Concession } from '../core/model/concession.ts';
import { type LengthUnit, ROLES } from '../core/model/list.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../core/model/shop.ts';
import type { CellEdit } from '../worker/protocol.ts';
import type { Change, Step } from './history.ts';
import {
  type Fields,
  Misfit,
  type Read,
  readByColumn,
  readFields,
  readListOf,
  readOneOf,
  readText,
  readWhole,
} from './json-fields.ts';
import { readParts } from './parse-part-edits.ts';

/** As many rows and columns as a sheet of a workbook may have. */
export const readRow = readWhole(1, 1_048_576);
const readColumn = readWhole(0, 16_383);

/** One step of the undo stack; what is not known about it is kept. */
export const readStep: Read<Step> = (value, path) => {
  const step = readFields(value, path);
  return {
    ...step,
    name: readText(step.name, `${path}.name`),
    after: readChange(step.after, `${path}.after`),
    before: readChange(step.before, `${path}.before`),
    when: readText(step.when ?? '', `${path}.when`),
    by: readText(step.by ?? '', `${path}.by`),
    ...(step.isTakenOver !== undefined && { isTakenOver: step.isTakenOver === true }),
    ...(step.told !== undefined && { told: readListOf(readDetail)(step.told, `${path}.told`) }),
  };
};

/** Meanings and units of columns as the user chose them. */
export const readColumns: Read<ColumnChoices> = (value, path) => {
  const { roles, units } = readFields(value, path);
  return {
    roles: readByColumn(readOneOf(ROLES))(roles, `${path}.roles`),
    units: readByColumn(readOneOf<LengthUnit>(['mm', 'in']))(units, `${path}.units`),
  };
};

/** Settings within their ranges, the default where one is missing; a setting that is not known is kept. */
export const readShop: Read<ShopSettings> = (value, path) => {
  const shop = readFields(value, path);
  for (const key of SETTING_KEYS) {
    const wanted = shop[key] === undefined ? null : findSettingFault(key, shop[key]);
    if (wanted) throw new Misfit(`${path}.${key}`, wanted, shop[key]);
  }
  return { ...DEFAULT_SHOP, ...(shop as Partial<ShopSettings>) };
};

const readChange: Read<Change> = (value, path) => {
  const change = readFields(value, path);
  const kind = Object.keys(CHANGES).find((key) => change[key] !== undefined);
  if (!kind) throw new Misfit(path, `a change of ${Object.keys(CHANGES).join(', ')}`, value);
  return { ...change, [kind]: CHANGES[kind]?.(change[kind], `${path}.${kind}`) } as Fields as unknown as Change;
};

const readCell: Read<CellEdit> = (value, path) => {
  const cell = readFields(value, path);
  return {
    ...cell,
    row: readRow(cell.row, `${path}.row`),
    column: readColumn(cell.column, `${path}.column`),
    text: readText(cell.text, `${path}.text`),
  };
};

const readDetail: Read<ChangeDetail> = (value, path) => {
  const detail = readFields(value, path);
  return {
    ...detail,
    row: detail.row === null ? null : readRow(detail.row, `${path}.row`),
    where: readText(detail.where, `${path}.where`),
    before: readText(detail.before, `${path}.before`),
    after: readText(detail.after, `${path}.after`),
  };
};

const readConcession: Read<Concession> = (value, path) => {
  const given = readFields(value, path);
  const text = (key: 'rule' | 'says' | 'facts' | 'reason' | 'by' | 'date') => readText(given[key], `${path}.${key}`);
  return {
    ...given,
    row: readRow(given.row, `${path}.row`),
    rule: text('rule'),
    outcome: readOneOf(['fails', 'marginal', 'unknown'])(given.outcome, `${path}.outcome`),
    says: text('says'),
    facts: text('facts'),
    reason: text('reason'),
    by: text('by'),
    date: text('date'),
  };
};

/** What a change may set, and how it is read. */
const CHANGES: Readonly<Record<string, Read<unknown>>> = {
  cells: readListOf(readCell),
  columns: readColumns,
  shop: readShop,
  concessions: readListOf(readConcession),
  pressOrder: readListOf(readRow),
  parts: readParts,
};
