import type { FinishKind, WorkFacts } from '../../model/facts.ts';
import { finishBuildUp } from '../../reference/finish/build-up.ts';

/** How far a finish grows into a hole, per side. */
export interface Build {
  readonly leastUm: number;
  readonly mostUm: number;
}

/** Finishes that the trade allows for at no hole. Source: common practice; for chemical film the table of build-up. */
export const THIN_FILMS: ReadonlySet<FinishKind> = new Set(['chem-film', 'passivated', 'black-oxide']);

/** Of a plating only the outside is promised: holes and recesses may stay bare (ASTM B633). */
const PLATINGS: ReadonlySet<FinishKind> = new Set([
  'zinc-electroplate',
  'cadmium-electroplate',
  'nickel-plate',
  'tin-plate',
  'chromium-plate',
]);

/** How the rows of the build-up table for a finish begin. */
const ROWS: Readonly<Partial<Record<FinishKind, RegExp>>> = {
  'zinc-electroplate': /^zinc-/,
  'cadmium-electroplate': /^cadmium-/,
  'powder-coat': /^powder/,
  anodised: /^anodise-ii$/,
  'hard-anodised': /^anodise-iii$/,
};

/** The build that the row states, else the range of the table over every grade of that finish; null where neither says. */
export function buildOf({ sheetFinish, sheetFinishUm }: WorkFacts): Build | null {
  if (sheetFinish === null) return null;
  const stated = sheetFinishUm === null ? findRange(sheetFinish) : { leastUm: sheetFinishUm, mostUm: sheetFinishUm };
  return stated && PLATINGS.has(sheetFinish) ? { ...stated, leastUm: 0 } : stated;
}

function findRange(finish: FinishKind): Build | null {
  const rows = finishBuildUp.rows.filter(({ id }) => ROWS[finish]?.test(id));
  if (rows.length === 0) return null;
  const least = rows.map(({ minUm }) => minUm);
  return { leastUm: Math.min(...least), mostUm: Math.max(...least, ...rows.map(({ maxUm }) => maxUm ?? 0)) };
}

/** True where a coating is put on the sheet, hole and all, before the fastener is pressed, so that the listed hole is not the one it meets. */
export function isCoatedFirst({ sheetFinish, pressedWhen, holeMasked, ...facts }: WorkFacts): boolean {
  if (sheetFinish === null || pressedWhen !== 'after-finish' || holeMasked || THIN_FILMS.has(sheetFinish)) return false;
  return buildOf({ sheetFinish, pressedWhen, holeMasked, ...facts }) !== null;
}
