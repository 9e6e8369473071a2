import type { Fastener, FastenerKind } from '../model/fastener.ts';
import { parseThread } from '../units/thread.ts';
import type { CatalogueField } from './catalogue-fields.ts';

/** Facts of one fastener that cannot all be true. */
export interface Contradiction {
  /** The field to report; its value and those of `alsoClear` are not used. */
  readonly field: CatalogueField;
  readonly alsoClear: readonly CatalogueField[];
  readonly text: string;
}

/** What is impossible about a fastener as catalogued; empty for a sound one. */
export function findContradictions(fastener: Fastener): readonly Contradiction[] {
  return [holeAgainstThread(fastener), sheetLimits(fastener)].flatMap((one) => one ?? []);
}

/** Fasteners whose shank surrounds the thread, so that the hole must be larger than it. */
const AROUND_THREAD: ReadonlySet<FastenerKind> = new Set(['clinch nut', 'through standoff', 'blind standoff']);

function holeAgainstThread({ kind, thread, holeMm }: Fastener): Contradiction | null {
  if (!kind || !AROUND_THREAD.has(kind) || thread === null || holeMm === null) return null;
  const major = parseThread(thread)?.majorMm;
  if (major === undefined || holeMm > major) return null;
  const text = `The hole of ${holeMm.toFixed(2)} mm is not larger than the ${thread} thread (${major.toFixed(2)} mm), which is not possible for a ${kind}; the hole was left out.`;
  return { field: 'holeMm', alsoClear: ['holePlusMm', 'holeMinusMm'], text };
}

function sheetLimits({ sheetMinMm, sheetMaxMm }: Fastener): Contradiction | null {
  if (sheetMinMm === null || sheetMaxMm === null || sheetMinMm <= sheetMaxMm) return null;
  const text = `The minimum sheet of ${sheetMinMm.toFixed(2)} mm is above the maximum of ${sheetMaxMm.toFixed(2)} mm; both were left out.`;
  return { field: 'sheetMinMm', alsoClear: ['sheetMaxMm'], text };
}
