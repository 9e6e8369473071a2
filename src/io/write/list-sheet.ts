import type { AuditedList } from '../../core/model/audited.ts';
import type { Column } from '../../core/model/list.ts';
import { decidingNote, MOST_NOTES, noteOnNotes } from './deciding-note.ts';
import {
  footerOf,
  headingHeight,
  headingRow,
  heightFor,
  OWN_HEADING,
  textCell,
  WORDS,
  withFormat,
  wordsUnder,
} from './look.ts';
import { holdsNumbers } from './number-roles.ts';
import { bodyOf, type ListRow, listRows, type OwnColumn } from './own-columns.ts';
import type { PlannedCell, PlannedRow, SheetPlan } from './sheet-plan.ts';
import type { Style } from './style.ts';

const NARROWEST = 6;
const WIDEST = 40;

/** The list as it was sent, row by row, with our columns to the right of the sender's, and notes on the cells that decide. */
export function planListSheet(name: string, list: AuditedList, own: readonly OwnColumn[]): SheetPlan {
  const rows = listRows(list);
  const headings = headingsOf(list, rows);
  const widths = [...widthsOf(headings, rows), ...own.map(({ width }) => width)];
  return {
    name,
    widths,
    isFrozen: true,
    filter: { rows: rows.length + 1, columns: headings.length + own.length },
    footer: footerOf(list),
    size: rows.length,
    rows: () => planRows(list, rows, { headings, widths, own }),
  };
}

interface Table {
  readonly headings: readonly string[];
  readonly widths: readonly number[];
  readonly own: readonly OwnColumn[];
}

function* planRows(
  list: AuditedList,
  rows: readonly ListRow[],
  { headings, widths, own }: Table,
): Generator<PlannedRow> {
  const byIndex = new Map(list.columns.map((column) => [column.index, column]));
  const columns = headings.map((_, at) => byIndex.get(at));
  const onNotes = noteOnNotes(list);
  yield {
    cells: [...headingRow(headings, widths).cells, ...own.map((column) => ownHeading(column, onNotes))],
    height: headingHeight([...headings, ...own.map(({ heading }) => heading)], widths),
  };
  let notes = 0;
  for (const row of rows) {
    const noted = row.line && notes < MOST_NOTES ? decidingNote(row.line, list) : null;
    if (noted) notes++;
    const cells: (PlannedCell | null)[] = columns.map((column, at) =>
      sendersCell(row.cells[at] ?? '', column, bodyOf(row.line)),
    );
    if (noted) {
      const cell = cells[noted.column] ?? { value: null, style: bodyOf(row.line) };
      cells[noted.column] = { ...cell, note: noted.text };
    }
    yield planRow(row, cells, own);
  }
  yield { cells: [] };
  for (const value of wordsUnder(list)) yield { cells: [{ value, style: WORDS }] };
}

function planRow(row: ListRow, cells: (PlannedCell | null)[], own: readonly OwnColumn[]): PlannedRow {
  const wrapped: [string, number][] = [];
  for (const { of, wraps, width } of own) {
    const cell = of(row);
    cells.push(cell);
    if (wraps && cell) wrapped.push([String(cell.value), width]);
  }
  return row.line ? { cells, height: heightFor(wrapped) } : { cells };
}

function ownHeading({ heading }: OwnColumn, onNotes: string | undefined): PlannedCell {
  const hasNote = heading === 'What decides it' && onNotes !== undefined;
  return { value: heading, style: OWN_HEADING, ...(hasNote && { note: onNotes }) };
}

function headingsOf(list: AuditedList, rows: readonly ListRow[]): readonly string[] {
  const known = list.columns.reduce((most, { index }) => Math.max(most, index + 1), 0);
  const senders = rows.reduce((most, { cells }) => Math.max(most, cells.length), known);
  const byIndex = new Map(list.columns.map(({ index, heading }) => [index, heading]));
  return Array.from({ length: senders }, (_, at) => byIndex.get(at) ?? '');
}

const PLAIN_NUMBER = /^-?(?:0|[1-9]\d{0,14})(?:\.(\d{1,8}))?$/;

function sendersCell(text: string, column: Column | undefined, style: Style): PlannedCell | null {
  if (text === '') return null;
  const decimals = holdsNumbers(column) ? PLAIN_NUMBER.exec(text) : null;
  if (!decimals) return textCell(text, style);
  const format = decimals[1] ? `0.${'0'.repeat(decimals[1].length)}` : '0';
  return { value: Number(text), style: withFormat(style, format) };
}

/** Wide enough for what is in each column, within reason. */
function widthsOf(headings: readonly string[], rows: readonly ListRow[]): readonly number[] {
  const widths = headings.map(({ length }) => Math.max(NARROWEST, length + 2));
  for (const { cells } of rows) {
    for (let at = 0; at < widths.length; at++) {
      const length = cells[at]?.length ?? 0;
      if (length > 0 && length + 2 > widths[at]!) widths[at] = length + 2;
    }
  }
  return widths.map((width) => Math.min(width, WIDEST));
}
