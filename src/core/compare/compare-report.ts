import type { AuditedList } from '../model/audited.ts';
import { VERDICTS } from '../model/outcome.ts';
import { footOf, type Report, type ReportBlock, type ReportCell } from '../rollup/report.ts';
import { SAFETY_SHORT } from '../say/safety.ts';
import { foundWords, inShort } from './compare-sentences.ts';
import type { ChangedCell, ChangedRow, Comparison, RowName } from './comparison.ts';
import { concessionBlock } from './concession-block.ts';

const SHORT_HEADINGS = ['Compared', 'Before', 'After', 'Difference'];
// Each table has headings of its own: where two have the same, they go out as one.
const CELL_HEADINGS = ['Row before', 'Row after', 'Part number', 'Panel', 'Column', 'Before', 'After'];
const WRITTEN_HEADINGS = [...CELL_HEADINGS.slice(0, 5), 'Written before', 'Written after'];
const MOVED_HEADINGS = ['Row before', 'Row after', 'Part number', 'Panel before', 'Panel after'];
const ADDED_HEADINGS = ['Row after', 'Part number', 'Panel', 'What it is', 'Row says'];
const REMOVED_HEADINGS = ['Row before', ...ADDED_HEADINGS.slice(1)];
const SHEET_HEADINGS = ['Row before', 'Row after', 'Part number', 'Panel', 'Sheet before', 'Sheet after'];
const VERDICT_HEADINGS = [
  'Row before',
  'Row after',
  'Part number',
  'Panel',
  'Verdict before',
  'Verdict after',
  'Decided before',
  'Decided after',
  'Changed in the row',
];
const WRONG_HEADINGS = [
  'Row before',
  'Row after',
  'Part number',
  'Panel',
  'Verdict before',
  'Verdict after',
  'What is wrong now',
  'Changed in the row',
];
const QUANTITY_HEADINGS = [
  'Part number',
  'Pieces before',
  'Pieces after',
  'Difference',
  'Rows not counted before',
  'Rows not counted after',
];

/** The comparison as tables: in short, then what changed, row by row; tables without a row are left out. */
export function compareReport(comparison: Comparison, before: AuditedList, after: AuditedList): Report {
  const { changed, rewritten, added, removed } = comparison;
  const blocks = [
    wrongBlock(comparison),
    cellBlock('Rows changed', CELL_HEADINGS, changed, ({ writtenOnly }) => !writtenOnly),
    block('Rows added', ADDED_HEADINGS, added.map(rowCells)),
    block('Rows removed', REMOVED_HEADINGS, removed.map(rowCells)),
    movedBlock(comparison),
    verdictBlock(comparison),
    sheetBlock(comparison),
    quantityBlock(comparison),
    concessionBlock(comparison),
    cellBlock(
      'Written differently, meaning the same',
      WRITTEN_HEADINGS,
      [...changed, ...rewritten],
      ({ writtenOnly }) => writtenOnly,
    ),
  ];
  return {
    blocks: [shortBlock(comparison, before, after), ...blocks.filter(({ rows }) => rows.length > 0)],
    foot: footOf(after, [SAFETY_SHORT]),
  };
}

function block(title: string, headings: readonly string[], rows: ReportBlock['rows']): ReportBlock {
  return { title, headings, rows, notes: [] };
}

function shortBlock(comparison: Comparison, before: AuditedList, after: AuditedList): ReportBlock {
  const counted = (name: string, was: number, is: number): readonly ReportCell[] => [name, was, is, is - was];
  const { totals } = comparison;
  return {
    title: '',
    headings: SHORT_HEADINGS,
    rows: [
      ['List', before.file, after.file, null],
      counted('Fastener rows', before.lines.length, after.lines.length),
      ...comparison.found.map(({ way, rows }) => [foundWords(way), rows, rows, null]),
      ...VERDICTS.map((verdict) => counted(`Rows: ${verdict}`, totals.before[verdict], totals.after[verdict])),
    ],
    notes: inShort(comparison),
  };
}

function cellBlock(
  title: string,
  headings: readonly string[],
  rows: readonly ChangedRow[],
  isShown: (cell: ChangedCell) => boolean,
): ReportBlock {
  const cells = rows.flatMap(({ before, after, cells }) =>
    cells
      .filter(isShown)
      .map((cell) => [before.row, after.row, nameOf(after), after.panel, headingOf(cell), cell.before, cell.after]),
  );
  return block(title, headings, cells);
}

function movedBlock({ moved }: Comparison): ReportBlock {
  const rows = moved.map(({ before, after }) => [before.row, after.row, nameOf(after), before.panel, after.panel]);
  return block('Rows moved to another panel', MOVED_HEADINGS, rows);
}

function wrongBlock({ newlyWrong }: Comparison): ReportBlock {
  const rows = newlyWrong.map(({ before, after, verdictBefore, verdictAfter, why, cellsChanged }) => [
    ...[before?.row ?? null, after.row, nameOf(after), after.panel],
    ...[verdictBefore ?? (before ? 'not judged' : 'not on the list'), verdictAfter, why, cellsChanged ? 'yes' : 'no'],
  ]);
  return block('Newly wrong', WRONG_HEADINGS, rows);
}

function verdictBlock({ verdicts }: Comparison): ReportBlock {
  const rows = verdicts.map(({ before, after, verdictBefore, verdictAfter, whyBefore, whyAfter, cellsChanged }) => [
    ...[before.row, after.row, nameOf(after), after.panel],
    ...[verdictBefore ?? 'not judged', verdictAfter ?? 'not judged'],
    ...[whyBefore, whyAfter, cellsChanged ? 'yes' : 'no'],
  ]);
  return block('Verdicts changed', VERDICT_HEADINGS, rows);
}

function sheetBlock({ sheets }: Comparison): ReportBlock {
  const rows = sheets.map(({ before, after, sheetBefore, sheetAfter }) => [
    ...[before.row, after.row, nameOf(after), after.panel, sheetBefore, sheetAfter],
  ]);
  return block('Another sheet from the panel', SHEET_HEADINGS, rows);
}

function quantityBlock({ quantities }: Comparison): ReportBlock {
  const rows = quantities.map((part) => [
    ...[part.partNumber, part.before, part.after, part.difference],
    ...[part.uncountedBefore || null, part.uncountedAfter || null],
  ]);
  return block('Quantities by part, pieces in one product', QUANTITY_HEADINGS, rows);
}

function rowCells(row: RowName): readonly ReportCell[] {
  return [row.row, row.partNumber, row.panel, row.what ?? 'fastener', row.text];
}

function nameOf({ partNumber, text }: RowName): string {
  return partNumber || text;
}

function headingOf({ heading }: ChangedCell): string {
  return heading || '(no heading)';
}
