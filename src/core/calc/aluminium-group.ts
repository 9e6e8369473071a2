import type { Table } from '../model/table.ts';
import { en485Group1 } from '../reference/thickness/en-485-4-group-1.ts';
import { en485Group2 } from '../reference/thickness/en-485-4-group-2.ts';
import { en485Groups } from '../reference/thickness/en-485-4-groups.ts';
import type { BandRow } from '../reference/thickness/row-types.ts';

// Above this the two groups have the same tolerances, so an unlisted alloy needs no guess.
const GROUPS_JOIN_ABOVE_MM = 3.5;

/**
 * The tolerance table of EN 485-4 for an aluminium alloy such as "5052" or "EN AW-5754". An alloy that is on neither list gets the
 * wider group II, and `assumed` says so.
 */
export function aluminiumTables(alloy: string, mm: number): { table: Table<BandRow>; assumed: string | null }[] {
  const group = findAlloyGroup(alloy);
  if (group === 1) return [{ table: en485Group1, assumed: null }];
  const guessed = group === null && mm <= GROUPS_JOIN_ABOVE_MM;
  return [{ table: en485Group2, assumed: guessed ? 'alloy group II, the wider' : null }];
}

/** Alloy group of EN 485-4: the alloy's own entry, else its series; null when neither is listed. */
export function findAlloyGroup(alloy: string): 1 | 2 | null {
  const number = /(?<!\d)\d{4}(?!\d)[A-Z]?/.exec(alloy.toUpperCase())?.[0] ?? '';
  const names = [number, `${number.charAt(0)}xxx`];
  return en485Groups.rows.find((row) => names.includes(row.alloy))?.group ?? null;
}
