import type { Line } from '../model/line.ts';
import type { Column, HardwareList, LengthUnit, OtherRow, PanelRow, Role } from '../model/list.ts';
import type { Notice, RawFile, RawRow, RawTable, TextReading } from '../model/raw.ts';
import { columnsRead, createLineReader } from './build-line.ts';
import { gatherTexts, type TextsOf } from './column-texts.ts';
import { type ColumnChoices, findColumns } from './columns.ts';
import { distrust } from './distrust.ts';
import { findTable } from './find-table.ts';
import { refuseHuge } from './list-limits.ts';
import { noticeColumns, noticeRows, noticeSheets } from './list-notices.ts';
import { noticeLongCells } from './long-cells.ts';
import { withoutOwnColumns } from './own-columns.ts';
import { withoutOwnSheets } from './own-sheets.ts';
import { panelRowsOf } from './panel-table.ts';
import { fillMergedDown, joinHeadings } from './raw-rows.ts';
import { PANEL_TABLE_ROW, relateRows } from './relate.ts';
import { createOtherFinder } from './rows.ts';
import { findSideTable, withoutSide } from './side-table.ts';
import { spreadColumns } from './spread-columns.ts';

/** Choices of the user; whatever is left out is found. */
export interface ListOptions {
  readonly sheet?: string;
  /** 1-based row of the headings. */
  readonly headerRow?: number;
  /** Roles by 0-based column, over what the headings say. */
  readonly roles?: Readonly<Record<number, Role>>;
  /** Units of bare numbers by 0-based column. */
  readonly units?: Readonly<Record<number, LengthUnit>>;
}

/** Understands a raw file as a hardware list. Throws `Unreadable` when it holds no table with headings. */
export function buildList(file: RawFile, options: ListOptions = {}): HardwareList {
  const lists = withoutOwnSheets(file);
  const {
    table: found,
    header: foundHeader,
    others: otherSheets,
  } = findTable(options.sheet === undefined ? lists : file, options);
  refuseHuge(file, found, foundHeader);
  const table = withoutOwnColumns(found, foundHeader.number);
  const header = table.rows.find(({ number }) => number === foundHeader.number) ?? foundHeader;
  const { headings, body, unitsRow } = splitTable(table, header);
  const sideColumns = findSideTable(headings, body);
  const { columns, rows, others } = sortRows(headings, body, sideColumns, options);
  const shifted = new Set(file.format === 'csv' ? rows.filter((row) => isShifted(row, headings.length)) : []);
  const lines = readLines(rows, columns, shifted);
  const panelRows = panelRowsOf(lists, found);
  const notices = [
    ...file.notices.filter(concerns(table)),
    ...noticeSheets(table, otherSheets.filter(isNoSourceOf(panelRows))),
    ...noticeColumns(columns, table),
    ...noticeRows(table, header, rows, [...shifted], headings.length),
    ...noticeLongCells(rows, columnsRead(columns), table.name),
  ];
  return relateRows({
    file: file.file,
    sheet: table.name,
    sheets: file.tables.map(({ name }) => name).filter((name) => name !== ''),
    headerRow: header.number,
    columns,
    lines,
    others: unitsRow ? [{ row: unitsRow.number, cells: unitsRow.cells, what: 'units' }, ...others] : others,
    hiddenRows: body.filter((row) => row.hidden).length,
    ...(file.format === 'csv' && { reading: readingOf(file) }),
    notices,
    relations: { ownLines: lines, ownNotices: notices, panelRows, sideColumns, extended: new Map() },
  });
}

function readLines(rows: readonly RawRow[], columns: readonly Column[], shifted: ReadonlySet<RawRow>): readonly Line[] {
  const { read } = createLineReader(columns);
  return rows.map((row) => {
    const line = read(row);
    return shifted.has(row) ? distrust(line) : line;
  });
}

/** A sheet from which panels are taken is read already; there is nothing to tell of it. */
function isNoSourceOf(panelRows: readonly PanelRow[]): (table: RawTable) => boolean {
  const sources = new Set(panelRows.map(({ sheet }) => sheet));
  return ({ name }) => !sources.has(name);
}

function readingOf({ encoding, delimiter }: RawFile): TextReading {
  return { ...(encoding && { encoding }), ...(delimiter && { delimiter }) };
}

function splitTable(table: RawTable, header: RawRow) {
  const above = table.rows.filter(({ number }) => number < header.number).at(-1) ?? null;
  const below = table.rows.filter(({ number }) => number > header.number);
  const { headings, unitsRow } = joinHeadings(header, above, below[0] ?? null);
  return { headings, unitsRow, body: fillMergedDown(unitsRow ? below.slice(1) : below) };
}

/** Columns are read twice: the second time without the rows that turned out to be no part of the list. */
function sortRows(
  headings: readonly string[],
  body: readonly RawRow[],
  side: readonly Column[],
  chosen: Partial<ColumnChoices>,
) {
  const roles = { ...Object.fromEntries(side.map(({ index }) => [index, 'other' as const])), ...chosen.roles };
  const choices = side.length > 0 ? { ...chosen, roles } : chosen;
  const first = findColumns(headings, textsIn(body), choices);
  const whats = findOthers(body, side, first);
  const rows = body.filter((_, at) => whats[at] === null);
  if (rows.length === body.length && side.length === 0)
    return { columns: spreadColumns(first, rows), others: [], rows };
  const second = findColumns(headings, textsIn(rows), choices);
  const columns = spreadColumns(second, rows);
  const settled = isSameColumns(first, second) ? whats : findOthers(body, side, columns);
  const others = body.flatMap((row, at): readonly OtherRow[] => {
    const own = withoutSide(row, side);
    const isBeside = own !== row && own.cells.every((cell) => cell.trim() === '');
    const what = isBeside ? PANEL_TABLE_ROW : settled[at];
    return what ? [{ row: row.number, cells: row.cells, what }] : [];
  });
  const put = new Set(others.map(({ row }) => row));
  return { columns, others, rows: body.filter(({ number }) => !put.has(number)) };
}

function findOthers(body: readonly RawRow[], side: readonly Column[], columns: readonly Column[]) {
  const whatIs = createOtherFinder(columns);
  return body.map((row) => whatIs(withoutSide(row, side)));
}

function isSameColumns(one: readonly Column[], other: readonly Column[]): boolean {
  return one.every(({ role, heading }, at) => role === other[at]?.role && heading === other[at].heading);
}

/** A cell that the file has spoiled tells nothing of its column. */
function textsIn(rows: readonly RawRow[]): TextsOf {
  return gatherTexts(rows, ({ cells, flags }, index) => (flags && !hasText(flags[index]) ? '' : (cells[index] ?? '')));
}

const hasText = (flag: string | undefined) => flag === undefined || flag === 'merged';

function concerns(table: RawTable): (notice: Notice) => boolean {
  return ({ sheet }) => sheet === undefined || sheet === table.name;
}

/** More filled cells than headings in a text file: a comma inside an unquoted cell has pushed the rest to the right. */
export function isShifted({ cells }: RawRow, width: number): boolean {
  return cells.length > width && cells.slice(width).some((cell) => cell.trim() !== '');
}
