import { bestPairs } from './best-pairs.ts';
import type { PanelRename } from './comparison.ts';
import type { Row } from './rows.ts';

/** Of the rows of a renamed panel, so many have to be on both lists. */
const SAME_ROWS = 0.6;
const FEWEST_ROWS = 2;

export interface RenamedPanels {
  readonly renames: readonly PanelRename[];
  /** The rows of the list after with the former keys of their panels. */
  readonly after: readonly Row[];
}

/** Finds panels that go on under another name: a name that is gone and one that is new over mostly the same parts. */
export function findRenamedPanels(before: readonly Row[], after: readonly Row[]): RenamedPanels {
  const [left, right] = [byPanel(before), byPanel(after)];
  const gone = [...left.values()].filter(({ key }) => !right.has(key));
  const added = [...right.values()].filter(({ key }) => !left.has(key));
  const pairs = bestPairs(gone, added, (one, other) => likeness(one, other), SAME_ROWS);
  const formerKeys = new Map(pairs.map(([one, other]) => [other.key, one.key]));
  return {
    renames: pairs.map(([one, other]) => ({ before: one.name, after: other.name, rows: commonRows(one, other) })),
    after: after.map((row) => ({ ...row, panel: formerKeys.get(row.panel) ?? row.panel })),
  };
}

interface Panel {
  readonly key: string;
  readonly name: string;
  readonly size: number;
  /** How often each part stands on it. */
  readonly parts: Map<string, number>;
}

function byPanel(rows: readonly Row[]): ReadonlyMap<string, Panel> {
  const panels = new Map<string, Panel>();
  for (const { panel: key, name, part } of rows) {
    if (key === '') continue;
    const { parts, size } = panels.get(key) ?? { parts: new Map<string, number>(), size: 0 };
    parts.set(part, (parts.get(part) ?? 0) + 1);
    panels.set(key, { key, name: panels.get(key)?.name ?? name.panel.trim(), size: size + 1, parts });
  }
  return panels;
}

function likeness(one: Panel, other: Panel): number {
  const common = commonRows(one, other);
  return common < FEWEST_ROWS ? 0 : common / Math.max(one.size, other.size);
}

function commonRows(one: Panel, other: Panel): number {
  let common = 0;
  for (const [part, times] of one.parts) common += Math.min(times, other.parts.get(part) ?? 0);
  return common;
}
