import type { SheetFamily } from '../model/sheet.ts';
import type { NamedGauge } from '../model/thickness.ts';
import { mmOf } from '../units/length.ts';
import { gaugeTablesNamed, gaugeTablesOf } from './gauge-family.ts';

export { nearGauge } from './near-gauge.ts';
export { gaugeOfOtherMetal } from './other-metal-gauge.ts';

/** What a gauge number means in a metal. */
export interface GaugeThickness {
  readonly mm: number;
  readonly inch: number;
  /** Id of the table it was read from. */
  readonly table: string;
  /** What the other table in use for this metal gives, where it differs. */
  readonly other: { readonly mm: number; readonly table: string; readonly name: string } | null;
}

/**
 * Thickness of a gauge number. A system named in the list outranks the metal and needs none. Stainless is judged by the stocked decimals, with
 * the thicker US Standard gauge as `other`, and by the latter alone where nothing is stocked under that number; aluminium has its
 * stocked decimal as `other`. Null: no such number in the table, no table (titanium), or neither metal nor system known.
 */
export function gaugeThickness(
  gauge: number,
  family: SheetFamily | null,
  named?: NamedGauge | null,
): GaugeThickness | null {
  const tables = named ? gaugeTablesNamed(named) : family ? gaugeTablesOf(family) : [];
  const [first, second] = tables.flatMap(({ id, title, rows }) => {
    const row = rows.find((candidate) => candidate.gauge === gauge);
    return row ? [{ inch: row.inch, mm: mmOf(row.inch, 'in'), table: id, name: title }] : [];
  });
  if (!first) return null;
  const { inch, mm, table } = first;
  const other = second && second.inch !== inch ? { mm: second.mm, table: second.table, name: second.name } : null;
  return { mm, inch, table, other };
}
