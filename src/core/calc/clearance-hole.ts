import { clearanceAsme } from '../reference/threads/clearance-asme-b18-2-8.ts';
import { clearanceIso273 } from '../reference/threads/clearance-iso273.ts';

export type ClearanceFit = 'close' | 'normal' | 'loose';

/** A clearance hole and the table it was read from. */
export interface ClearanceHole {
  readonly mm: number;
  readonly table: string;
}

const MM_PER_INCH = 25.4;

/**
 * Nominal clearance hole for a screw by its short name, "M4" or "8-32"; the pitch does not matter. Null outside the tables (M2 to
 * M10, #2 to 3/8). Source: ISO 273, ASME B18.2.8.
 */
export function findClearanceHole(thread: string, fit: ClearanceFit): ClearanceHole | null {
  const metric = clearanceIso273.rows.find((row) => row.thread === thread.replace(/x.*$/, ''));
  if (metric) {
    const mm = { close: metric.fineMm, normal: metric.mediumMm, loose: metric.coarseMm }[fit];
    return { mm, table: clearanceIso273.id };
  }
  const size = thread.replace(/-\d+$/, '').replace(/^(\d+)$/, '#$1');
  const inch = clearanceAsme.rows.find((row) => row.size === size);
  if (!inch) return null;
  const inches = { close: inch.closeIn, normal: inch.normalIn, loose: inch.looseMinIn }[fit];
  return { mm: inches * MM_PER_INCH, table: clearanceAsme.id };
}
