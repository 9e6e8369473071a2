import { type CellFlags, type Column, ROLES, type Role } from '../model/list.ts';
import { cutCell } from './long-cells.ts';

/** Where the cell of one role stands in the rows of one list. */
export interface Place {
  /** Null: the list has no such column. */
  readonly column: Column | null;
  /** Text of the cell as far as it is read, without blanks around it; '' where there is no such column. */
  readonly text: (cells: readonly string[]) => string;
  /** The file holds a date, an error or an uncalculated formula here: what stands in the cell is not what the sender typed. */
  readonly isSpoiled: (flags: CellFlags) => boolean;
}

export type Places = Readonly<Record<Role, Place>>;

/** The flags of a row without any, the same object for all of them. */
export const NO_FLAGS: CellFlags = {};

/** The place of each role. The first column of a role counts. */
export function placesOf(columns: readonly Column[]): Places {
  const places = ROLES.map((role) => [role, placeOf(columns.find((column) => column.role === role) ?? null)] as const);
  return Object.fromEntries(places) as Places;
}

function placeOf(column: Column | null): Place {
  if (!column) return { column, text: () => '', isSpoiled: () => false };
  const { index, through = index } = column;
  return {
    column,
    text:
      through === index
        ? (cells) => cutCell(cells[index] ?? '').trim()
        : (cells) => spreadText(cells.slice(index, through + 1)),
    isSpoiled: (flags) => flags !== NO_FLAGS && flags[index] !== undefined && flags[index] !== 'merged',
  };
}

/** The one text in the columns that it is spread over. */
function spreadText(cells: readonly string[]): string {
  return cutCell(cells.find((cell) => cell.trim() !== '') ?? '').trim();
}
