import type { Line } from '../model/line.ts';
import type { Column, OtherRow, PanelRow } from '../model/list.ts';
import type { MaterialReading } from '../model/sheet.ts';
import { parseMaterial } from './material.ts';
import { isSheetPart, namesFastening } from './sheet-part.ts';
import { parseThickness } from './thickness.ts';
import { nameKey } from './tree-row.ts';

/** A title that names metal and thickness: "PANEL A - 5052-H32 .063". */
export interface Title extends PanelRow {
  readonly text: string;
}

/** The title above each row, by row; rows under a title that names no sheet, or under a sum, have none. */
export function titlesAbove(
  lines: readonly Line[],
  others: readonly OtherRow[],
  columns: readonly Column[],
): ReadonlyMap<number, Title> {
  const rows = [...lines, ...others].sort((a, b) => a.row - b.row);
  const above = new Map<number, Title>();
  let title: Title | null = null;
  for (const row of rows) {
    const isTitle = 'what' in row ? row.what === 'section' : isLoneTitle(row, columns);
    if (isTitle) title = readTitle(row.row, titleText(row.cells, columns));
    else if ('what' in row && row.what === 'total') title = null;
    else if (title) above.set(row.row, title);
  }
  return above;
}

/** Whether a title can be that of a row which names its panel: the panel's name stands in it. */
export function isTitleOf(title: Title, panel: string): boolean {
  const key = nameKey(panel);
  if (key === '') return true;
  const words = title.text
    .normalize('NFKC')
    .toUpperCase()
    .split(/[\s,;:()/]+/);
  return words.some((_, at) =>
    words.slice(at, at + 3).some((__, length) => words.slice(at, at + length + 1).join('') === key),
  );
}

/** A sheet part of which the list says nothing but one text is a title too. */
function isLoneTitle(line: Line, columns: readonly Column[]): boolean {
  return isSheetPart(line) && textsOf(line.cells, columns).length === 1;
}

function titleText(cells: readonly string[], columns: readonly Column[]): string {
  return textsOf(cells, columns).reduce((longest, text) => (text.length > longest.length ? text : longest), '');
}

function textsOf(cells: readonly string[], columns: readonly Column[]): readonly string[] {
  return cells.flatMap((cell, index) => {
    const role = columns[index]?.role;
    return cell.trim() === '' || role === 'index' || role === 'level' ? [] : [cell.trim()];
  });
}

/** "PANEL 304 - 5052-H32 .063": what stands before the dash is the panel's name, even where it reads like a metal. */
const NAME_IN_FRONT = /^\p{L}+\s+\S+\s*(?:[-–—:,]\s+|\(|[-–—:,]$)/u;

function readTitle(row: number, text: string): Title | null {
  const material = parseMaterial(text.replace(NAME_IN_FRONT, '').replace(/\)$/, ''));
  if (material.candidates.length === 0 || !material.thicknessText || namesFastening(text)) return null;
  const thickness = parseThickness(material.thicknessText, { unit: null, from: 'cell' });
  if (thickness.how !== 'length' && thickness.how !== 'gauge') return null;
  return { row, names: [], text, material: plainRemarks({ ...material, text }), thickness: { ...thickness, text } };
}

/** A title has words that are no part of a metal; that is nothing to remark on. */
function plainRemarks(material: MaterialReading): MaterialReading {
  return { ...material, remarks: material.remarks.filter((remark) => !remark.startsWith('Not understood')) };
}
