import type { ColumnChoices } from '../core/intake/columns.ts';
import type { AuditedList } from '../core/model/audited.ts';
import { type Column, columnLetter, type LengthUnit, type Role } from '../core/model/list.ts';

/** What the user wants a column to be; without a unit, the unit stays as it was. */
export interface ColumnChoice {
  readonly index: number;
  readonly role: Role;
  readonly unit?: LengthUnit;
}

/** The choices with one more. A meaning belongs to one column, so an earlier choice of the same meaning gives way. */
export function withChoice({ roles, units }: ColumnChoices, { index, role, unit }: ColumnChoice): ColumnChoices {
  const others = Object.entries(roles).filter(
    ([column, taken]) => Number(column) !== index && (taken !== role || role === 'other'),
  );
  return {
    roles: { ...Object.fromEntries(others), [index]: role },
    units: unit ? { ...units, [index]: unit } : units,
  };
}

export function hasChoices({ roles, units }: ColumnChoices): boolean {
  return Object.keys(roles).length > 0 || Object.keys(units).length > 0;
}

/** What to call a column: its heading, or its letter where it has none. */
export function columnName({ heading, index }: Pick<Column, 'heading' | 'index'>): string {
  return heading.trim() || `column ${columnLetter(index)}`;
}

/** The first column whose bare numbers may be millimetres or inches, and some row cannot be judged for it. */
export function findUnclearUnit({ columns, lines }: AuditedList): Column | null {
  const isUnclear = ({ role, unit, unitFrom }: Column) => {
    const read = unit === null && unitFrom === null && readingsOf[role];
    return read && lines.some(({ line }) => read(line).how === 'ambiguous-unit');
  };
  return columns.find(isUnclear) ?? null;
}

type Read = (line: AuditedList['lines'][number]['line']) => { readonly how: string };

const readingsOf: Partial<Record<Role, Read>> = {
  thickness: ({ thickness }) => thickness,
  hole: ({ hole }) => hole,
  edge: ({ edge }) => edge,
  spacing: ({ spacing }) => spacing,
  bend: ({ bend }) => bend,
};
