import type { DescribedFastener } from '../model/facts.ts';
import type { Fastener } from '../model/fastener.ts';

const LENGTH_CLOSENESS_MM = 0.05;

/** Finds the parts that a description could mean. */
export type FittingFinder = (described: DescribedFastener, most: number) => readonly Fastener[];

/**
 * Parts of the described kind and thread whose length, metal and minimum sheet do not contradict the description, stocked ones
 * first. None where the description does not give kind and thread: too many would fit. For proposing only, never for judging.
 */
export function createFittingFinder(parts: readonly Fastener[]): FittingFinder {
  const byKindAndThread = new Map<string, Fastener[]>();
  for (const part of parts) {
    const key = `${part.kind}|${part.thread}`;
    const group = byKindAndThread.get(key);
    if (group) group.push(part);
    else byKindAndThread.set(key, [part]);
  }
  return (described, most) => {
    if (described.kind === null || described.thread === null) return [];
    return (byKindAndThread.get(`${described.kind}|${described.thread}`) ?? [])
      .filter((part) => part.supersededBy === null && fits(part, described))
      .sort((a, b) => Number(b.stocked?.yes ?? false) - Number(a.stocked?.yes ?? false))
      .slice(0, most);
  };
}

function fits({ lengthMm, material, sheetMinMm }: Fastener, described: DescribedFastener): boolean {
  const { materials } = described;
  const metalFits = materials.length === 0 || material.candidates.some((id) => materials.includes(id));
  return metalFits && isNear(lengthMm, described.lengthMm) && isNear(sheetMinMm, described.sheetMinMm);
}

/** What is not said on one side contradicts nothing. */
function isNear(a: number | null, b: number | null): boolean {
  return a === null || b === null || Math.abs(a - b) <= LENGTH_CLOSENESS_MM;
}
