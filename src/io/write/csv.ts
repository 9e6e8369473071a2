import Papa from 'papaparse';
import type { AuditedList } from '../../core/model/audited.ts';
import {
  describeDecision,
  describeHole,
  describeMargin,
  describeRemedies,
  describeSheet,
} from '../../core/say/describe.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../core/say/safety.ts';
import { safeCsvText } from './safe-text.ts';

const OWN = [
  'Row in file',
  'Verdict',
  'What decides it',
  'Sheet understood',
  'Hole required',
  'Hardness margin (HRB points)',
  'Would hold instead',
];

/** The sender's columns and ours as CSV (UTF-8, comma), safety words in the last lines. */
export function writeCsv(list: AuditedList): string {
  const senders = Math.max(0, ...list.columns.map(({ index }) => index + 1));
  const heading = Array.from(
    { length: senders },
    (_, index) => list.columns.find((column) => column.index === index)?.heading ?? '',
  );
  const { units } = list.shop;
  const lines = list.lines.map((line) => [
    ...padded(line.line.cells, senders),
    String(line.row),
    line.verdict,
    describeDecision(line),
    describeSheet(line, units),
    describeHole(line.requires, units),
    describeMargin(line),
    describeRemedies(line),
  ]);
  const words = list.catalogues.some(({ demo }) => demo) ? [[DEMO_WORDS], [SAFETY_SHORT]] : [[SAFETY_SHORT]];
  const rows = [[...heading, ...OWN], ...lines, ...words].map((row) => row.map(safeCsvText));
  return `${Papa.unparse(rows, { newline: '\r\n' })}\r\n`;
}

function padded(cells: readonly string[], length: number): readonly string[] {
  return Array.from({ length }, (_, index) => cells[index] ?? '');
}
