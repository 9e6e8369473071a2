import { partKey } from '../catalogue/part-key.ts';
import type { AuditedLine } from '../model/audited.ts';
import { groupBy } from '../rollup/group-by.ts';
import { piecesOf } from '../rollup/pieces.ts';
import type { QuantityChange } from './comparison.ts';

/** Pieces by part over all rows of either list, for the parts of which they differ; parts in the order of the lists, those before first. */
export function changedQuantities(
  before: readonly AuditedLine[],
  after: readonly AuditedLine[],
): readonly QuantityChange[] {
  const all = [...before.map((line) => ({ line, isNew: false })), ...after.map((line) => ({ line, isNew: true }))];
  const groups = groupBy(all, ({ line }) => partKey(line.line.partNumber));
  return groups.flatMap((lines) => {
    const [was, now] = [false, true].map((which) => sum(lines.filter(({ isNew }) => isNew === which)));
    if (!was || !now) return [];
    if (was.pieces === now.pieces && was.uncounted === now.uncounted) return [];
    return [
      {
        partNumber: lines[0].line.line.partNumber.trim(),
        before: was.pieces,
        after: now.pieces,
        difference: now.pieces - was.pieces,
        uncountedBefore: was.uncounted,
        uncountedAfter: now.uncounted,
      },
    ];
  });
}

function sum(lines: readonly { readonly line: AuditedLine }[]): {
  readonly pieces: number;
  readonly uncounted: number;
} {
  const counts = lines.map(({ line }) => piecesOf(line));
  return {
    pieces: counts.reduce<number>((total, count) => total + (count ?? 0), 0),
    uncounted: counts.filter((count) => count === null).length,
  };
}
