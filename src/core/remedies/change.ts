import type { Fastener } from '../model/fastener.ts';
import { findFastenerMaterial } from '../reference/fastener-materials.ts';

/** How one part differs from another: how much, and in words. */
export interface Change {
  /** Smaller is less change: other shank, then other material, then a change of hole. */
  readonly size: number;
  readonly words: string;
}

/** What changes for the drawing and the buyer when one part of the same kind, thread and length replaces another. */
export function changeBetween(listed: Fastener, part: Fastener): Change {
  const changes = [shankChange(listed, part), materialChange(listed, part), holeChange(listed, part)].flatMap(
    (change) => change ?? [],
  );
  const size = changes.reduce((sum, change) => sum + change.size, 0);
  return { size, words: changes.map(({ words }) => words).join(', ') || 'same shank, material and hole' };
}

function shankChange(listed: Fastener, part: Fastener): Change | null {
  if (part.sheetMinMm === null || part.sheetMinMm === listed.sheetMinMm) return null;
  return { size: 1, words: `other shank, minimum sheet ${part.sheetMinMm.toFixed(2)} mm` };
}

function materialChange(listed: Fastener, part: Fastener): Change | null {
  if (part.material.candidates.join() === listed.material.candidates.join()) return null;
  return { size: 2, words: `${nameOf(part)} instead of ${nameOf(listed)}` };
}

function nameOf({ material }: Fastener): string {
  const names = material.candidates.map((id) => findFastenerMaterial(id)?.name ?? id);
  return names.join(' or ') || material.text || 'an unknown metal';
}

function holeChange(listed: Fastener, part: Fastener): Change | null {
  if (part.holeMm === null || part.holeMm === listed.holeMm) return null;
  return { size: 4, words: `hole ${part.holeMm.toFixed(2)} mm` };
}
