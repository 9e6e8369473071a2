import type { AuditedList } from '../../core/model/audited.ts';
import type { Report, ReportBlock, ReportCell } from '../../core/rollup/report.ts';
import { BODY, footerOf, headingHeight, heightFor, OWN_HEADING, textCell, WORDS, WRAPPED } from './look.ts';
import type { PlannedCell, PlannedRow, SheetPlan } from './sheet-plan.ts';
import type { Style } from './style.ts';

const NARROWEST = 7;
const WIDEST = 44;
/** Characters that a sentence may have in one row, however narrow the tables. */
const SHORTEST_LINE = 140;
/** Keeps text clear of a number in the column before. */
const TEXT: Style = { ...WRAPPED, left: true, indent: 1 };
const TITLE: Style = { bold: true, size: 11 };
const NOTE: Style = {};

/**
 * Tables of a report one below the other, headings once where the next table has the same, sentences across below them, the foot last.
 * `given` are widths of columns that are not to go by what is in them.
 */
export function planReportSheet(
  name: string,
  list: AuditedList,
  report: Report,
  given: Readonly<Record<number, number>> = {},
): SheetPlan {
  const widths = widthsOf(report.blocks);
  const shown = Array.from(widths, (width, at) => given[at] ?? width);
  return {
    name,
    widths: shown,
    isFrozen: true,
    footer: footerOf(list),
    size: report.blocks.reduce((sum, { rows }) => sum + rows.length, 0),
    rows: () => planRows(report, widths),
  };
}

function* planRows({ blocks, foot }: Report, widths: readonly number[]): Generator<PlannedRow> {
  const across = Math.max(
    SHORTEST_LINE,
    widths.reduce((sum, width) => sum + width, 0),
  );
  for (const [index, block] of blocks.entries()) yield* planBlock(block, blocks[index - 1], widths, across);
  yield { cells: [] };
  for (const text of foot) yield* planSentence(text, across, WORDS);
}

function* planBlock(
  { title, headings, rows, notes }: ReportBlock,
  before: ReportBlock | undefined,
  widths: readonly number[],
  across: number,
): Generator<PlannedRow> {
  const isSame = before?.headings === headings;
  const titleRow = { cells: [{ value: title, style: TITLE }] };
  if (before) yield { cells: [] };
  if (title && !isSame && before) yield titleRow;
  if (!isSame) yield planHeadings(headings, widths);
  if (title && (isSame || !before)) yield titleRow;
  for (const row of rows) yield planRow(row, widths);
  for (const note of notes) yield* planSentence(note, across, NOTE);
}

function planHeadings(headings: readonly string[], widths: readonly number[]): PlannedRow {
  return { cells: headings.map((value) => ({ value, style: OWN_HEADING })), height: headingHeight(headings, widths) };
}

function planRow(cells: readonly ReportCell[], widths: readonly number[]): PlannedRow {
  const wrapped = cells.map((cell, index): [string, number] => [String(cell ?? ''), widths[index] ?? WIDEST]);
  return { cells: cells.map(planCell), height: heightFor(wrapped) };
}

function planCell(value: ReportCell): PlannedCell {
  return (typeof value === 'string' ? textCell(value, TEXT) : null) ?? { value, style: WRAPPED };
}

/** A sentence that runs over the empty cells beside it, in as many rows as it needs: merged cells would not sort, and are slow by the thousand. */
function* planSentence(text: string, across: number, style: Style): Generator<PlannedRow> {
  for (const value of linesOf(text, across)) yield { cells: [textCell(value, style) ?? { value: null, style: BODY }] };
}

/** Lines of at most so many characters, broken between words. */
function linesOf(text: string, width: number): readonly string[] {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last === '') lines[lines.length - 1] = word;
    else if (last.length + 1 + word.length <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Wide enough for what is in each column over all tables, within reason. */
function widthsOf(blocks: readonly ReportBlock[]): readonly number[] {
  const widths: number[] = [];
  const widen = (index: number, length: number) => {
    widths[index] = Math.min(WIDEST, Math.max(NARROWEST, widths[index] ?? 0, length + 2));
  };
  for (const { headings, rows } of blocks) {
    for (const [index, heading] of headings.entries()) widen(index, longestWord(heading));
    for (const row of rows) for (const [index, cell] of row.entries()) widen(index, String(cell ?? '').length);
  }
  return widths;
}

/** Headings wrap between words. */
function longestWord(text: string): number {
  return Math.max(...text.split(' ').map(({ length }) => length));
}
