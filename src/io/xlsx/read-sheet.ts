import type { CellFlag, RawRow } from '../../core/model/raw.ts';
import { LAST_COLUMN, LAST_ROW } from '../limits.ts';
import { type CellContext, cellText, plainText, type StoredCell } from './cell-text.ts';
import { applyMerges, type Merge, parseMerge, type RowDraft } from './merges.ts';
import { isOn, XmlScanner } from './scan.ts';
import { readRichText } from './shared-strings.ts';

/** One sheet's filled rows, in order. */
export interface SheetRows {
  readonly rows: readonly RawRow[];
  /** 0-based columns that are hidden, as far as there is content. */
  readonly hiddenColumns: readonly number[];
  /** False when the sheet's text breaks off. */
  readonly isComplete: boolean;
  /** True when filled cells lie so far apart that holding the sheet would take too much room; the rows then break off. */
  readonly isTooSpread: boolean;
}

/** How much may still be held of a workbook; a reader takes from it. */
export interface Room {
  /** Cells up to the last filled one of each row. */
  cells: number;
  /** Characters of cells that do not share their text with others. */
  characters: number;
}

/** Where the reading stands. `row` is 0 before the first row, `column` -1 before a row's first cell. */
interface Place {
  row: number;
  column: number;
  isRowNumbered: boolean;
  isHidden: boolean;
  /** The row at hand as far as it is filled. */
  draft: RowDraft | undefined;
  readonly room: Room;
}

/**
 * Reads a worksheet part, whole or in pieces. Rows and cells without a reference are counted, a row that comes twice is
 * merged, and cells that hold nothing cost nothing, however many there are.
 */
export function readSheet(xml: string | Iterable<string>, context: CellContext, room: Room): SheetRows {
  const scanner = new XmlScanner(xml);
  const drafts = new Map<number, RowDraft>();
  const merges: Merge[] = [];
  const hiddenSpans: (readonly [number, number])[] = [];
  const place: Place = { row: 0, column: -1, isRowNumbered: true, isHidden: false, draft: undefined, room };
  let isInData = false;
  let isComplete = false;
  while (hasRoom(room) && scanner.next()) {
    const { name, isClose, isEmpty } = scanner;
    if (name === 'sheetData') isInData = !isClose && !isEmpty;
    else if (name === 'worksheet') isComplete = isClose || isEmpty;
    else if (isClose) continue;
    else if (isInData && name === 'row') startRow(scanner, place);
    else if (isInData && name === 'c') readCell(scanner, place, drafts, context);
    else if (name === 'col' && isOn(scanner.attribute('hidden'))) hiddenSpans.push(readSpan(scanner));
    else if (name === 'mergeCell') merges.push(...parseMerge(scanner.attribute('ref')));
  }
  const rows = [...drafts.values()].sort((a, b) => a.number - b.number);
  applyMerges(rows, merges, room);
  return {
    rows: rows.filter(isFilled),
    hiddenColumns: listColumns(hiddenSpans, rows),
    isComplete,
    isTooSpread: !hasRoom(room),
  };
}

function hasRoom({ cells, characters }: Room): boolean {
  return cells >= 0 && characters >= 0;
}

function startRow(scanner: XmlScanner, place: Place): void {
  const number = Number(scanner.attribute('r'));
  place.isRowNumbered = Number.isInteger(number) && number > 0 && number <= LAST_ROW;
  place.row = place.isRowNumbered ? number : place.row + 1;
  place.column = -1;
  place.draft = undefined;
  place.isHidden = isOn(scanner.attribute('hidden'));
}

function readCell(scanner: XmlScanner, place: Place, drafts: Map<number, RowDraft>, context: CellContext): void {
  moveTo(scanner, place);
  if (scanner.isEmpty) return;
  const type = scanner.attribute('t');
  const style = Number(scanner.attribute('s') ?? 0);
  const value = scanner.onlyChild('<v>', '</v></c>');
  const plain = value === undefined ? undefined : plainText(type, style, value, context);
  if (plain !== undefined) {
    keep(plain, undefined, place, drafts);
    return;
  }
  const stored = value === undefined ? readStored(scanner, type, style) : storedValue(type, style, value);
  const { text, flag } = cellText(stored, context);
  if (type !== 's') place.room.characters -= text.length;
  keep(text, flag, place, drafts);
}

function keep(text: string, flag: CellFlag | undefined, place: Place, drafts: Map<number, RowDraft>): void {
  if (text === '' && flag === undefined) return;
  const draft = place.draft ?? startDraft(place, drafts);
  const { cells } = draft;
  place.room.cells -= Math.max(0, place.column + 1 - cells.length);
  while (cells.length < place.column) cells.push('');
  cells[place.column] = text;
  if (flag === undefined) return;
  draft.flags ??= {};
  draft.flags[place.column] = flag;
}

function startDraft(place: Place, drafts: Map<number, RowDraft>): RowDraft {
  const draft = drafts.get(place.row) ?? { number: place.row, cells: [] };
  drafts.set(place.row, draft);
  if (place.isHidden) draft.hidden = true;
  place.draft = draft;
  return draft;
}

/** A cell without a usable reference follows the one before it; an unnumbered row takes its number from its cells. */
function moveTo(scanner: XmlScanner, place: Place): void {
  const column = scanner.columnIn('r');
  if (column < 0 || column >= LAST_COLUMN) {
    place.column = Math.min(place.column + 1, LAST_COLUMN - 1);
    return;
  }
  place.column = column;
  if (place.isRowNumbered) return;
  const row = Number(/\d+$/.exec(scanner.attribute('r') ?? '')?.[0]);
  if (!(row > 0 && row <= LAST_ROW) || row === place.row) return;
  place.row = row;
  place.draft = undefined;
}

function storedValue(type: string | undefined, style: number, value: string): StoredCell {
  return { type, style, hasFormula: false, value, inline: undefined };
}

function readStored(scanner: XmlScanner, type: string | undefined, style: number): StoredCell {
  let value: string | undefined;
  let inline: string | undefined;
  let hasFormula = false;
  while (scanner.next() && scanner.name !== 'c') {
    if (scanner.name === 'v' && scanner.isClose) value = scanner.text();
    else if (scanner.name === 'f') hasFormula = true;
    else if (scanner.name === 'is' && !scanner.isClose && !scanner.isEmpty) inline = readRichText(scanner, 'is');
  }
  return { type, style, hasFormula, value, inline };
}

function readSpan(scanner: XmlScanner): readonly [number, number] {
  return [Number(scanner.attribute('min')) - 1, Number(scanner.attribute('max')) - 1];
}

function listColumns(spans: readonly (readonly [number, number])[], rows: readonly RowDraft[]): number[] {
  const width = rows.reduce((widest, row) => Math.max(widest, row.cells.length), 0);
  const begins = new Int32Array(width + 1);
  for (const [first, last] of spans) {
    const [from, to] = [Math.max(0, first), Math.min(width, last + 1)];
    if (!(from < to)) continue;
    begins[from]! += 1;
    begins[to]! -= 1;
  }
  const columns: number[] = [];
  let depth = 0;
  for (let column = 0; column < width; column++) {
    depth += begins[column]!;
    if (depth > 0) columns.push(column);
  }
  return columns;
}

function isFilled(row: RowDraft): boolean {
  return (
    row.cells.some((cell) => cell.trim() !== '') || Object.values(row.flags ?? {}).some((flag) => flag !== 'merged')
  );
}
