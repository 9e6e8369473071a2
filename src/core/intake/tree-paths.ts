import type { Column } from '../model/list.ts';
import { placeByDepth } from './tree-depth.ts';
import { addTo, nameKey, type Placing, type TreeRow } from './tree-row.ts';

/** Places rows by a path: in one cell (`a:1+b:1`, `Cabinet/Door`), or over numbered columns (`Path 1` to `Path 4`). */
export function placeByPaths(rows: readonly TreeRow[], columns: readonly Column[]): readonly Placing[] {
  const fromCells = singlePaths(columns).flatMap(({ index }) =>
    placePaths(
      rows,
      rows.map(({ cells }) => splitPath(cells[index])),
    ),
  );
  return [...fromCells, ...numberedFamilies(columns).flatMap((family) => placeByFamily(rows, family))];
}

/** Columns that hold paths or parts of them. */
export function pathColumns(columns: readonly Column[]): readonly Column[] {
  return [...singlePaths(columns), ...numberedFamilies(columns).flat()];
}

function singlePaths(columns: readonly Column[]): readonly Column[] {
  return columns.filter(({ role, heading }) => isFree(role) && /\bpath$|^pfad$/i.test(heading.trim()));
}

const isFree = (role: Column['role']) => role === 'other' || role === 'level' || role === 'parent';

type Path = readonly string[];

function splitPath(text = ''): Path {
  const separator = text.includes('+') ? '+' : /[/\\>|]/;
  return text.split(separator).map(nameKey).filter(Boolean);
}

/** The last part of a path is the row itself, or the path names only what the row stands in. */
function placePaths(rows: readonly TreeRow[], paths: readonly Path[]): readonly Placing[] {
  const withOwn = (name: (row: TreeRow) => string) =>
    rows.map((row, at) => [...(paths[at] ?? []), nameKey(name(row))].filter(Boolean));
  const above = paths.map((path) => path.slice(0, -1));
  return [
    place(
      rows,
      withOwn(({ partNumber }) => partNumber),
      paths,
    ),
    place(
      rows,
      withOwn(({ description }) => description),
      paths,
    ),
    place(rows, paths, above),
  ];
}

const joined = (path: Path) => path.join('\n');

function place(rows: readonly TreeRow[], own: readonly Path[], parentPaths: readonly Path[]): Placing {
  const holders = new Map<string, number[]>();
  rows.forEach(({ row }, at) => {
    addTo(holders, joined(own[at] ?? []), row);
  });
  const parents = new Map<number, readonly number[]>();
  const lost: number[] = [];
  const top = Math.min(...new Set(parentPaths.map((path) => path.length)));
  rows.forEach(({ row }, at) => {
    const path = parentPaths[at] ?? [];
    if (path.length <= top) return;
    const found = (holders.get(joined(path)) ?? []).filter((holder) => holder !== row);
    if (found.length === 1) parents.set(row, found);
    else lost.push(row);
  });
  const because = 'stand in an assembly that is not on the list';
  return { parents, lost, because, explained: parents.size, broken: lost.length };
}

/** Columns that are called alike but for a number, in the order of their numbers. */
function numberedFamilies(columns: readonly Column[]): readonly (readonly Column[])[] {
  const families = new Map<string, { number: number; column: Column }[]>();
  for (const column of columns.filter(({ role }) => isFree(role))) {
    const found = /^(path|pfad|level|lvl|ebene|tier|assembly|assy|sub-?assy|sub-?assembly)[ _-]?(\d)$/i.exec(
      column.heading.trim(),
    );
    if (found) addTo(families, (found[1] ?? '').toLowerCase(), { number: Number(found[2]), column });
  }
  return [...families.values()]
    .filter((family) => family.length > 1)
    .map((family) => family.sort((a, b) => a.number - b.number).map(({ column }) => column));
}

/** One text a row shows its depth; several are a path. */
function placeByFamily(rows: readonly TreeRow[], family: readonly Column[]): readonly Placing[] {
  const texts = rows.map(({ cells }) => family.map(({ index }) => nameKey(cells[index] ?? '')));
  if (texts.every((row) => row.filter(Boolean).length <= 1)) {
    const depths = texts.map((row) => row.findIndex(Boolean)).map((at) => (at < 0 ? null : at));
    return [placeByDepth(rows, depths, 'skip a level or show none')];
  }
  return placePaths(
    rows,
    texts.map((row) => row.filter(Boolean)),
  );
}
