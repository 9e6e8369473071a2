import type { Column } from '../model/list.ts';
import { placeByDepth } from './tree-depth.ts';
import type { Placing, TreeRow } from './tree-row.ts';

const BECAUSE = 'skip a level or show none';

/** Places rows by whole level numbers (`0`, `1`, `..2`, `Level 3`) in a column of levels, or in one without a heading. */
export function placeByLevels(rows: readonly TreeRow[], columns: readonly Column[]): readonly Placing[] {
  return columns.flatMap((column) => {
    const isUnnamed = (column.role === 'other' || column.role === 'index') && column.heading.trim() === '';
    if (column.role !== 'level' && !isUnnamed) return [];
    const levels = rows.map(({ cells }) => parseLevel(cells[column.index] ?? ''));
    if (isUnnamed && !looksLikeLevels(levels.filter((_, at) => rows[at]?.quantity))) return [];
    return [placeByDepth(rows, levels, BECAUSE)];
  });
}

function parseLevel(text: string): number | null {
  const found = /^[.\-+·>\s]*(?:l(?:evel|vl)?\.?\s*)?(\d{1,2})(?:[.,]0)?$/i.exec(text.trim());
  return found ? Number(found[1]) : null;
}

const DEEPEST = 8;

/**
 * Small numbers without a heading could be anything. Levels stand in every row, begin at the top with 0 or 1, never jump down by
 * more than one, and come back up: numbers that only count upwards are positions.
 */
function looksLikeLevels(levels: readonly (number | null)[]): boolean {
  if (levels.some((level) => level === null || level > DEEPEST)) return false;
  const known = levels.flatMap((level) => level ?? []);
  const steps = known.slice(1).map((level, at) => level - (known[at] ?? 0));
  const [first = -1] = known;
  const isTop = (first === 0 || first === 1) && known.every((level) => level >= first);
  return isTop && steps.every((step) => step <= 1) && steps.includes(1) && steps.some((step) => step <= 0);
}
