import type { Line } from '../model/line.ts';
import type { PanelRow } from '../model/list.ts';
import { findRole } from './headings.ts';
import type { SheetSources } from './inherit.ts';
import { hasMaterial, hasThickness } from './panel-agreement.ts';
import { isTitleOf, titlesAbove } from './section-titles.ts';
import { couldBeSheetPart, isSheetPart, partNames } from './sheet-part.ts';
import type { Tree } from './tree.ts';
import { addTo, nameKey } from './tree-row.ts';

/** For a row, the rows that may give its sheet: one group for each source, the nearest first. Never a row that is only near. */
export function createPanelSources(
  lines: readonly Line[],
  { others, tree, columns, panelRows }: SheetSources,
): (line: Line) => readonly (readonly PanelRow[])[] {
  const above = createPanelsAbove(lines, tree);
  const named = createPanelFinder(lines, isWhereUsed(columns));
  const titles = titlesAbove(lines, others, columns);
  const tabled = groupByName(panelRows);
  return (line) => {
    const panels = above(line);
    const title = titles.get(line.row);
    const ownNames = [nameKey(line.panel)].filter(Boolean);
    const names = panels.flatMap(namesOf);
    // A row that stands under one panel and names another has two that may give its sheet.
    const alsoNamed = ownNames.filter((name) => !names.includes(name)).flatMap((name) => named(name, line));
    return [
      [...new Set([...panels, ...alsoNamed])].map(toPanelRow),
      title && panels.length === 0 && isTitleOf(title, line.panel) ? [title] : [],
      [...new Set([...ownNames, ...names].flatMap((name) => tabled.get(name) ?? []))],
    ];
  };
}

/** A line never changes, and every edit asks again. */
const panelRowOf = new WeakMap<Line, PanelRow>();

function toPanelRow(line: Line): PanelRow {
  const { row, material, thickness } = line;
  const panelRow = panelRowOf.get(line) ?? { row, names: namesOf(line), material, thickness };
  panelRowOf.set(line, panelRow);
  return panelRow;
}

function namesOf({ panel, partNumber }: Line): readonly string[] {
  return [...new Set([nameKey(panel), ...partNames(partNumber)].filter(Boolean))];
}

/** Sheet parts above a row: up through assemblies and titles to the first that is cut from sheet, whether it says of what or not. */
function createPanelsAbove(lines: readonly Line[], { parents }: Tree): (line: Line) => readonly Line[] {
  const byRow = new Map(lines.map((line) => [line.row, line]));
  const climb = (row: number): readonly Line[] =>
    (parents.get(row) ?? []).flatMap((parent) => {
      const line = byRow.get(parent);
      if (!line) return climb(parent);
      if (isSheetPart(line) || (couldBeSheetPart(line) && saysSheet(line))) return [line];
      if (line.seemsToBe !== 'assembly') return [];
      return saysSheet(line) ? [line] : climb(parent);
    });
  return ({ row }) => [...new Set(climb(row))];
}

function saysSheet(line: Line): boolean {
  return hasMaterial(line) || hasThickness(line);
}

/** A column that says where a part goes: a bracket or cover with the name of a panel in it is fitted to that panel. */
function isWhereUsed(columns: SheetSources['columns']): boolean {
  const column = columns.find(({ role }) => role === 'panel') ?? columns.find(({ role }) => role === 'parent');
  return !/^(?:panel|sheet|plate|base)\b/.test(findRole(column?.heading ?? '')?.words ?? '');
}

const PLAIN_PANELS: ReadonlySet<string | null> = new Set(['panel', 'sheet', 'plate']);

/** Finds the panel rows of a name: rows that are called so, else sheet parts that have the name in their panel column. */
function createPanelFinder(
  lines: readonly Line[],
  whereUsed: boolean,
): (name: string, asking: Line) => readonly Line[] {
  const called = new Map<string, Line[]>();
  const listed = new Map<string, Line[]>();
  for (const line of lines) {
    if (couldBeSheetPart(line)) for (const name of partNames(line.partNumber)) addTo(called, name, line);
    const isPanel = whereUsed ? PLAIN_PANELS.has(line.seemsToBe) : isSheetPart(line);
    if (isPanel && line.panel) addTo(listed, nameKey(line.panel), line);
  }
  return (name, asking) => {
    const rows = (called.get(name) ?? []).filter((line) => line !== asking);
    return rows.length > 0 ? rows : (listed.get(name) ?? []);
  };
}

function groupByName(rows: readonly PanelRow[]): ReadonlyMap<string, readonly PanelRow[]> {
  const groups = new Map<string, PanelRow[]>();
  for (const row of rows) for (const name of row.names) addTo(groups, name, row);
  return groups;
}
