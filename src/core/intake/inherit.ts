import type { Line } from '../model/line.ts';
import type { Column, OtherRow, PanelRow } from '../model/list.ts';
import type { Disputed, MaterialReading, TakenFrom } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { createLineReader } from './build-line.ts';
import { contradicts, differ, hasMaterial, hasThickness } from './panel-agreement.ts';
import { createPanelSources } from './panel-sources.ts';
import { isSheetPart } from './sheet-part.ts';
import type { Tree } from './tree.ts';

/** What a list has to take sheets from. */
export interface SheetSources {
  readonly others: readonly OtherRow[];
  readonly tree: Tree;
  readonly columns: readonly Column[];
  /** Rows of panel tables beside the list and on other sheets. */
  readonly panelRows: readonly PanelRow[];
}

/**
 * Gives rows without a sheet metal or thickness that of the panel they belong to: the row above them in the tree, else the panel
 * row of the same name, else the title above them, else a panel table. Where those that could give it disagree, nothing is taken.
 */
export function inheritSheets(lines: readonly Line[], sources: SheetSources): readonly Line[] {
  if (!lines.some(isSilent)) return lines;
  const stepsFor = createPanelSources(lines, sources);
  const { withSheet } = createLineReader(sources.columns);
  return lines.map((line) => {
    if (!isSilent(line) || isSheetPart(line)) return line;
    const steps = stepsFor(line);
    const material = takeMaterial(line, steps);
    const thickness = takeThickness({ ...line, material }, steps);
    if (material === line.material && thickness === line.thickness) return line;
    return sameAsBefore(line, material, thickness, () => withSheet(line, material, thickness));
  });
}

function isSilent({ material, thickness }: Line): boolean {
  return material.how === 'blank' || thickness.how === 'blank';
}

type Steps = readonly (readonly PanelRow[])[];

function takeMaterial(line: Line, steps: Steps): MaterialReading {
  if (line.material.how !== 'blank') return line.material;
  const found = find(line, steps, hasMaterial);
  if (!found) return line.material;
  if ('why' in found) return { ...line.material, disputed: found };
  return handed(found).material;
}

function takeThickness(line: Line, steps: Steps): ThicknessReading {
  if (line.thickness.how !== 'blank') return line.thickness;
  const found = find(line, steps, hasThickness);
  if (!found) return line.thickness;
  if ('why' in found) return { ...line.thickness, disputed: found };
  return handed(found).thickness;
}

/** The first row that gives what is asked for, from the first source that has one; or why it may not be taken. */
function find(line: Line, steps: Steps, has: (row: PanelRow) => boolean): PanelRow | Disputed | null {
  const rows = steps.find((step) => step.some(has));
  const found = rows?.find(has);
  if (!rows || !found) return null;
  if (differ(rows)) return { why: 'each-other', by: rows.map((row) => whereFrom(row, textOf(row))) };
  if (contradicts(line, found)) return { why: 'this-row', by: [whereFrom(found, textOf(found))] };
  return found;
}

function whereFrom({ row, sheet }: PanelRow, text: string): TakenFrom {
  return { row, text, ...(sheet !== undefined && { sheet }) };
}

function textOf({ material, thickness }: PanelRow): string {
  return [material.text, thickness.text].filter(Boolean).join(', ');
}

/** What panel rows hand on, the same objects each time. */
const handedOn = new WeakMap<PanelRow, Pick<Line, 'material' | 'thickness'>>();

function handed(panel: PanelRow): Pick<Line, 'material' | 'thickness'> {
  const { material, thickness } = panel;
  const handed = handedOn.get(panel) ?? {
    material: { ...material, takenFrom: whereFrom(panel, material.text) },
    thickness: { ...thickness, takenFrom: whereFrom(panel, thickness.text) },
  };
  handedOn.set(panel, handed);
  return handed;
}

/** What each row took last. */
const taken = new WeakMap<Line, Line>();

/** The same object while a row takes the same, so that an edit elsewhere leaves it alone. */
function sameAsBefore(own: Line, material: MaterialReading, thickness: ThicknessReading, make: () => Line): Line {
  const before = taken.get(own);
  if (before && isSame(before.material, material) && isSame(before.thickness, thickness)) return before;
  const line = make();
  taken.set(own, line);
  return line;
}

function isSame<Reading>(one: Reading, other: Reading): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}
