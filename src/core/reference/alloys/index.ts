import type { AlloyEntry } from '../../model/sheet.ts';
import type { Table } from '../../model/table.ts';
import { aluminium } from './aluminium.ts';
import { coatedSteel } from './coated-steel.ts';
import { coldRolledSteel } from './cold-rolled-steel.ts';
import { copperAlloys } from './copper-alloys.ts';
import { hotRolledSteel } from './hot-rolled-steel.ts';
import { stainless } from './stainless.ts';
import { titanium } from './titanium.ts';

/** Every table of sheet alloys. */
export const alloyTables: readonly Table<AlloyEntry>[] = [
  coldRolledSteel,
  hotRolledSteel,
  coatedSteel,
  stainless,
  aluminium,
  copperAlloys,
  titanium,
];

const byId: ReadonlyMap<string, AlloyEntry> = new Map(
  alloyTables.flatMap(({ rows }) => rows.map((row) => [row.id, row])),
);

/** One alloy in one temper by its id ("5052-h32"). */
export function findAlloy(id: string): AlloyEntry | undefined {
  return byId.get(id);
}
