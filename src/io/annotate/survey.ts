import type { ColumnRun } from '../../core/intake/own-columns.ts';
import { Unreadable } from '../../core/model/raw.ts';
import { type CellTrait, plainCells } from './plain-cells.ts';
import { plainRows } from './plain-rows.ts';
import { type SheetTraits, SheetWalk } from './sheet-outline.ts';
import { prefixOf } from './splice.ts';

/** What must be known of a whole sheet before anything is written into it. */
export interface SheetSurvey extends SheetTraits {
  /** First and last row of the list. */
  readonly top: number;
  readonly bottom: number;
  /** Columns that hold something on rows of the list, or a cell that does not say where it stands. */
  readonly filled: ReadonlySet<number>;
  /** Last column with a cell on a row of the list, blank ones too. */
  readonly lastCell: number;
  /** Of each row below the list, the columns that hold something. */
  readonly below: ReadonlyMap<number, readonly number[]>;
  /** Last column with a cell of the user's anywhere on the sheet. */
  readonly right: number;
}

/** What is looked for. */
export interface Sought {
  /** Rows of the list, its headings among them. */
  readonly rows: ReadonlySet<number>;
  /** Columns of ours from an earlier export. */
  readonly earlier: ColumnRun | null;
  readonly sheet: string;
}

interface Found {
  readonly rows: Set<number>;
  readonly filled: Set<number>;
  readonly below: Map<number, number[]>;
  readonly bottom: number;
  lastCell: number;
  right: number;
}

/**
 * Walks a sheet once.
 * @throws Unreadable when a row of the list is missing or there twice, or the sheet is protected.
 */
export function surveySheet(stretches: readonly string[], sought: Sought): SheetSurvey {
  const walk = new SheetWalk();
  const top = [...sought.rows].reduce((least, row) => Math.min(least, row), Number.POSITIVE_INFINITY);
  const bottom = [...sought.rows].reduce((most, row) => Math.max(most, row), 0);
  const found: Found = { rows: new Set(), filled: new Set(), below: new Map(), bottom, lastCell: -1, right: -1 };
  for (const row of rowsOf(stretches, walk)) noteRow(row, sought, found);
  const missing = [...sought.rows].find((number) => !found.rows.has(number));
  if (missing !== undefined) throw new Unreadable(`Row ${missing} of the list is not in its sheet.`);
  if (walk.traits.isProtected) throw new Unreadable(`Sheet ‘${sought.sheet}’ is protected.`);
  const { filled, below, lastCell, right } = found;
  return { ...walk.traits, top, bottom, filled, below, lastCell, right };
}

/** A row with what is asked of its cells. */
interface SurveyedRow {
  readonly number: number;
  readonly cells: readonly CellTrait[];
}

/** All rows; those that are plain are looked at in passing. What follows the rows stands in the last stretch. */
function* rowsOf(stretches: readonly string[], walk: SheetWalk): Generator<SurveyedRow> {
  let prefix = '';
  for (const [index, stretch] of stretches.entries()) {
    const isInside = walk.hasBegun && index < stretches.length - 1;
    const plain = isInside ? plainRows(stretch, prefix, () => false) : null;
    if (!plain) {
      const { rows, sheetData } = walk.outline(stretch);
      if (sheetData >= 0) prefix = prefixOf(stretch.slice(sheetData, sheetData + 100));
      yield* rows;
      continue;
    }
    for (const row of plain) {
      const cells = plainCells(stretch, row, prefix);
      if (cells) yield { number: row.number, cells };
      else yield* walk.outline(stretch.slice(row.start, row.end)).rows;
      walk.pass(row.number);
    }
  }
}

function noteRow({ number, cells }: SurveyedRow, { rows, earlier, sheet }: Sought, found: Found): void {
  for (const { column } of cells) {
    const isOurs = earlier !== null && column >= earlier.start && column < earlier.end;
    if (!isOurs && column > found.right) found.right = column;
  }
  if (number > found.bottom) {
    const filled = cells.flatMap(({ column, isBlank }) => (isBlank ? [] : [column]));
    found.below.set(number, [...(found.below.get(number) ?? []), ...filled]);
  }
  if (!rows.has(number)) return;
  if (found.rows.has(number)) throw new Unreadable(`Sheet ‘${sheet}’ has the same row twice.`);
  found.rows.add(number);
  for (const { column, isBlank, hasReference } of cells) {
    if (!isBlank || !hasReference) found.filled.add(column);
    if (column > found.lastCell) found.lastCell = column;
  }
}
