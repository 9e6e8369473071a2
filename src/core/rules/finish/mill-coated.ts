import type { FinishKind } from '../../model/facts.ts';
import type { Subject } from '../rule.ts';

const ZINC: ReadonlySet<FinishKind> = new Set(['hot-dip-zinc', 'zinc-electroplate']);

/** Is the finish the zinc that the sheet comes with from the mill? Its holes are punched through it, so that nothing is closed. */
export function isMillCoated({ line, sheets }: Subject): boolean {
  const finish = line.facts.sheetFinish;
  const isCoated = sheets.every(
    ({ entry }) => entry?.family === 'galvanized-steel' || entry?.family === 'galvannealed-steel',
  );
  return finish !== null && ZINC.has(finish) && isCoated;
}
