import { copperOunces } from '../reference/thickness/copper-ounces.ts';
import { mmOf } from '../units/length.ts';

/**
 * Thickness of copper sheet ordered by weight: 16 oz per square foot is 0.0216 in. Null for weights outside the table.
 * Source: ASTM B370, from memory.
 */
export function ounceThickness(ouncesPerSqFt: number): { mm: number; inch: number; table: string } | null {
  const row = copperOunces.rows.find((candidate) => candidate.ouncesPerSqFt === ouncesPerSqFt);
  return row ? { mm: mmOf(row.inch, 'in'), inch: row.inch, table: copperOunces.id } : null;
}
