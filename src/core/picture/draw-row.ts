import type { Drawing } from './drawing.ts';
import { drawHardness } from './ladder/ladder.ts';
import type { PicturedRow } from './pictured-row.ts';
import { drawPlan } from './plan/plan.ts';
import { drawSection } from './section/section.ts';

/** Every picture that the numbers of a row allow: section, hardness with so many sheet metals, and the hole from above. */
export function drawRow(row: PicturedRow, mostBands?: number): readonly Drawing[] {
  return [drawSection(row), drawHardness(row, mostBands), drawPlan(row)].filter((drawing) => drawing !== null);
}
