import type { UnitFrom } from './thickness.ts';

/** How a hole cell was understood. */
export interface HoleReading {
  /** As listed. */
  readonly text: string;
  readonly how: 'size' | 'blank' | 'unreadable' | 'ambiguous-unit' | 'impossible';
  /** Nominal diameter. */
  readonly mm: number | null;
  /** Smallest and largest diameter that the written tolerance allows; null where none was written. */
  readonly lowMm: number | null;
  readonly highMm: number | null;
  readonly writtenIn: 'mm' | 'in' | 'fraction' | 'number-drill' | 'letter-drill' | null;
  readonly unitFrom: UnitFrom | null;
  readonly otherMm: number | null;
}
