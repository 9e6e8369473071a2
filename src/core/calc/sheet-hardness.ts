import { rememberFor } from '../caching/remember.ts';
import type { AlloyEntry } from '../model/sheet.ts';
import type { Hardness } from '../units/hardness.ts';
import { scatterOf } from './hardness-scatter.ts';
import { metalClassOf, type RockwellB, toRockwellB } from './rockwell-b.ts';

/** Typical and highest hardness of a sheet on Rockwell B, each with the hardness it came from. */
export interface SheetHardness {
  readonly typical: { readonly given: Hardness; readonly on: RockwellB };
  /** Null: no maximum is published and none may be assumed. */
  readonly max: { readonly given: Hardness; readonly on: RockwellB; readonly assumed: boolean } | null;
  /** Id of the second table, where these are its values (see `bySecondTable`). */
  readonly table: string;
}

/** Points by which aluminium with one published value may be harder than typical. Source: common practice, no source. */
const ALUMINIUM_ALLOWANCE = 4;

/**
 * The hardness that the check compares. A hard temper with only a lower limit is taken at that limit as its typical value, which
 * can refuse but never pass a row by a maximum it does not have; a maximum off the scale counts as none. Null where nothing is published on a scale that converts.
 */
export const sheetHardness: (entry: AlloyEntry) => SheetHardness | null = rememberFor(findSheetHardness);

function findSheetHardness(entry: AlloyEntry): SheetHardness | null {
  const typicalGiven = entry.typical ?? entry.min ?? entry.max;
  const on = typicalGiven && onRockwellB(typicalGiven, entry);
  if (!typicalGiven || !on) return null;
  const typical = { given: typicalGiven, on };
  if (entry.max) {
    const max = onRockwellB(entry.max, entry);
    return { typical, max: max && { given: entry.max, on: max, assumed: false }, table: '' };
  }
  if (entry.family !== 'aluminium') return { typical, max: null, table: '' };
  const allowed: RockwellB = on.below ? on : { ...on, hrb: on.hrb + ALUMINIUM_ALLOWANCE };
  return { typical, max: { given: typicalGiven, on: allowed, assumed: true }, table: '' };
}

function onRockwellB(given: Hardness, { family, hrbFromStrength }: AlloyEntry): RockwellB | null {
  const on = toRockwellB(given, metalClassOf(family));
  return on && hrbFromStrength ? { ...on, scatter: scatterOf('MPa') } : on;
}

/** The same sheet by the other respected table, where one gives other numbers; null where there is only one answer. */
export function bySecondTable({ typical, max }: SheetHardness): SheetHardness | null {
  const table = typical.on.other?.table ?? max?.on.other?.table;
  if (!table) return null;
  return {
    typical: { ...typical, on: readOther(typical.on) },
    max: max && { ...max, on: readOther(max.on) },
    table,
  };
}

function readOther(on: RockwellB): RockwellB {
  return on.other ? { ...on, hrb: on.other.hrb, tables: [on.other.table], other: null } : on;
}
