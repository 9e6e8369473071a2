import type { Column, Role } from '../../core/model/list.ts';

/** Columns whose numbers are numbers; everything else stays text, so that leading zeros and part numbers survive. */
const NUMBER_ROLES: ReadonlySet<Role> = new Set([
  'quantity',
  'thickness',
  'hole',
  'edge',
  'spacing',
  'bend',
  'length',
  'price',
]);

/** Whether a number written in a column of the list is to be a number in a workbook too. */
export function holdsNumbers(column: Column | undefined): boolean {
  return column !== undefined && NUMBER_ROLES.has(column.role);
}
