import type { Column } from '../model/list.ts';
import { placeByAssemblies } from './tree-assemblies.ts';
import { findCycles } from './tree-cycles.ts';
import { placeByIndent } from './tree-indent.ts';
import { placeByIndex } from './tree-index.ts';
import { placeByLevels } from './tree-levels.ts';
import { placeByParents } from './tree-parents.ts';
import { placeByPaths } from './tree-paths.ts';
import type { AssemblyColumn, Placing, TreeRow } from './tree-row.ts';

/** The rows of a list as a tree; a flat list has no parents. */
export interface Tree {
  /** Rows above a row; several where it belongs to an assembly that is used in several places. */
  readonly parents: ReadonlyMap<number, readonly number[]>;
  /** Rows whose place cannot be found, and why. They count as top level. */
  readonly lost: readonly number[];
  readonly because: string;
  /** Rows that stand above themselves. They count as top level. */
  readonly circular: readonly number[];
  readonly perAssembly: readonly AssemblyColumn[];
}

/** Ways to write a tree, the most explicit first: of two that explain as much, the first counts. */
const WAYS = [placeByAssemblies, placeByParents, placeByIndex, placeByLevels, placeByPaths, placeByIndent] as const;

const FLAT: Tree = { parents: new Map(), lost: [], because: '', circular: [], perAssembly: [] };

/** Reads the tree in the one way that explains the rows best. Rows are in file order; their columns may be in any. */
export function readTree(rows: readonly TreeRow[], columns: readonly Column[]): Tree {
  const reached = reachedBy(rows, columns);
  const best = WAYS.flatMap((way) => way(rows, reached)).reduce<Placing | null>(better, null);
  if (!best) return FLAT;
  const circular = findCycles(best.parents);
  const isCircular = new Set(circular);
  return {
    parents: new Map([...best.parents].filter(([row]) => !isCircular.has(row))),
    lost: best.lost,
    because: best.because,
    circular,
    perAssembly: best.perAssembly ?? [],
  };
}

/** A stray heading at the far right leaves thousands of columns without heading or text, which tell nothing. */
function reachedBy(rows: readonly TreeRow[], columns: readonly Column[]): readonly Column[] {
  const reach = rows.reduce((widest, { cells }) => Math.max(widest, cells.length), 0);
  return columns.filter(({ heading, index }) => heading.trim() !== '' || index < reach);
}

/** A way that leaves as much unexplained as it explains is none. */
function better(best: Placing | null, next: Placing): Placing | null {
  if (next.explained === 0 || next.broken > next.explained) return best;
  return !best || worth(next) > worth(best) ? next : best;
}

/** Rows that get a parent, less those that lose their place. */
function worth({ parents, lost, perAssembly }: Placing): number {
  return parents.size - lost.length + (perAssembly?.length ?? 0);
}
