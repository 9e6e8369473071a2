import { describeConceded } from '../../core/concede/describe.ts';
import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Concession } from '../../core/model/concession.ts';
import { groupBy } from '../../core/rollup/group-by.ts';
import {
  describeDecision,
  describeHole,
  describeMargin,
  describeRemedies,
  describeSheet,
} from '../../core/say/describe.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../core/say/safety.ts';
import { type CsvOptions, FOR_SPREADSHEETS, writeCsvRows } from './csv-rows.ts';
import { listRows } from './own-columns.ts';

/** One of our columns: its heading, and what stands in the row of a fastener. */
type OwnColumn = readonly [heading: string, of: (line: AuditedLine) => string];

/**
 * The list as it was sent, row by row, with our columns to the right of the sender's, as CSV (UTF-8, comma); safety words in the last
 * lines. A column of concessions is there when one stands.
 */
export function writeCsv(
  list: AuditedList,
  concessions: readonly Concession[] = [],
  options: CsvOptions = FOR_SPREADSHEETS,
): string {
  const rows = listRows(list);
  const senders = rows.reduce((most, { cells }) => Math.max(most, cells.length), sendersColumns(list));
  const own = ownColumns(list, concessions);
  const heading = Array.from({ length: senders }, (_, at) => list.columns.find(({ index }) => index === at)?.heading);
  const lines = rows.map(({ row, cells, line, what }) => [
    ...Array.from({ length: senders }, (_, at) => cells[at] ?? ''),
    row,
    ...(line ? own.map(([, of]) => of(line)) : [`${what}: not a fastener`, ...own.slice(1).map(() => '')]),
  ]);
  const words = list.catalogues.some(({ demo }) => demo) ? [[DEMO_WORDS], [SAFETY_SHORT]] : [[SAFETY_SHORT]];
  const headings = [...heading.map((text) => text ?? ''), 'Row in file', ...own.map(([name]) => name)];
  return writeCsvRows([headings, ...lines, ...words], options);
}

function sendersColumns({ columns }: AuditedList): number {
  return columns.reduce((most, { index }) => Math.max(most, index + 1), 0);
}

function ownColumns({ lines, shop }: AuditedList, concessions: readonly Concession[]): readonly OwnColumn[] {
  const byRow = new Map(groupBy(concessions, ({ row }) => String(row)).map((group) => [group[0].row, group]));
  const conceded = (line: AuditedLine) => describeConceded(line, byRow.get(line.row) ?? []);
  const hasConceded = byRow.size > 0 && lines.some((line) => conceded(line) !== '');
  return [
    ['Verdict', ({ verdict }) => verdict],
    ...(hasConceded ? [['Conceded', conceded] as const] : []),
    ['What decides it', describeDecision],
    ['Sheet understood', (line) => describeSheet(line, shop.units)],
    ['Hole required', ({ requires }) => describeHole(requires, shop.units)],
    ['Hardness margin (HRB points)', describeMargin],
    ['Would hold instead', (line) => describeRemedies(line)],
  ];
}
