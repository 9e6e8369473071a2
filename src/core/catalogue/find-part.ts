import type { Catalogue, Fastener } from '../model/fastener.ts';
import { createFittingFinder, type FittingFinder } from './fitting-parts.ts';
import { createNearFinder } from './near-parts.ts';
import { partKey } from './part-key.ts';

/** One part that two catalogues describe differently. The first-ranked catalogue is believed. */
export interface PartConflict {
  readonly partNumber: string;
  /** Names of the two catalogues, the believed one first. */
  readonly catalogues: readonly [string, string];
  /** Fields in which they differ. */
  readonly fields: readonly string[];
}

/** Parts of all loaded catalogues. */
export interface PartIndex {
  /** The part with this number; case, spaces, kinds of dash and full-width letters make no difference. Null: not on file. */
  find(partNumber: string): Fastener | null;
  /** At most so many parts with a similar number, the most similar first. */
  near(partNumber: string, most: number): readonly Fastener[];
  /** At most so many parts that a description could mean. */
  readonly fitting: FittingFinder;
  /** Every part once, in the order of the catalogues. */
  readonly all: readonly Fastener[];
  readonly conflicts: readonly PartConflict[];
}

/** Indexes catalogues in the user's order of rank: a part in several is taken from the first. */
export function createPartIndex(catalogues: readonly Catalogue[]): PartIndex {
  const { byKey, conflicts } = rankParts(catalogues);
  const all = [...byKey.values()];
  return {
    all,
    conflicts,
    find: (partNumber) => byKey.get(partKey(partNumber)) ?? null,
    near: createNearFinder(all),
    fitting: createFittingFinder(all),
  };
}

/** Every part by its key, from the first catalogue that has it, and where a later one says otherwise. */
export function rankParts(catalogues: readonly Catalogue[]) {
  const byKey = new Map<string, Fastener>();
  const conflicts: PartConflict[] = [];
  for (const fastener of catalogues.flatMap(({ fasteners }) => fasteners)) {
    const key = partKey(fastener.partNumber);
    const first = byKey.get(key);
    if (!first) byKey.set(key, fastener);
    else conflicts.push(...conflictBetween(first, fastener));
  }
  return { byKey, conflicts };
}

/** Facts about the part itself; stock, price and remarks may differ from one supplier to the next. */
const FACTS = [
  'kind',
  'thread',
  'lengthMm',
  'hardnessMin',
  'sheetMinMm',
  'sheetMaxMm',
  'shankMm',
  'flush',
  'holeMm',
  'holePlusMm',
  'holeMinusMm',
  'edgeMm',
  'spacingMm',
  'sheetHardnessMax',
  'flangeMm',
  'heightMm',
  'forceSteelKn',
  'forceAluminiumKn',
  'pushOutSteelN',
  'pushOutAluminiumN',
  'torqueOutSteelNm',
  'torqueOutAluminiumNm',
  'supersededBy',
] as const satisfies readonly (keyof Fastener)[];

function conflictBetween(first: Fastener, second: Fastener): readonly PartConflict[] {
  const fields: string[] = FACTS.filter((field) => differ(first[field], second[field]));
  if (differ(first.material.candidates.join() || null, second.material.candidates.join() || null))
    fields.push('material');
  if (fields.length === 0) return [];
  const catalogues = [first.origin.catalogue, second.origin.catalogue] as const;
  return [{ partNumber: first.partNumber, catalogues, fields }];
}

/** Silence is no contradiction, and neither is a rounding of inches into millimetres. */
function differ(a: Fastener[(typeof FACTS)[number]], b: Fastener[(typeof FACTS)[number]]): boolean {
  if (a === null || b === null) return false;
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) > 0.005 + Math.abs(a) * 0.002;
  return JSON.stringify(a) !== JSON.stringify(b);
}
