import Papa from 'papaparse';
import type { Report, ReportBlock } from '../../core/rollup/report.ts';
import { safeCsvText } from './safe-text.ts';

/** A report as CSV (UTF-8, comma): its tables one below the other, those with equal headings as one; sentences and the foot last. */
export function writeReportCsv({ blocks, foot }: Report): string {
  const tables = blocks.flatMap((block, index) => tableRows(block, blocks[index - 1]));
  const notes = blocks.flatMap(({ title, notes }) => notes.map((note) => [title ? `${title}: ${note}` : note]));
  const rows = [...tables, [], ...notes, ...foot.map((text) => [text])];
  const safe = rows.map((row) => row.map((cell) => (typeof cell === 'number' ? cell : safeCsvText(cell ?? ''))));
  return `${Papa.unparse(safe, { newline: '\r\n' })}\r\n`;
}

function tableRows({ title, headings, rows }: ReportBlock, before: ReportBlock | undefined) {
  if (before === undefined) return [headings, ...rows];
  return before.headings === headings ? rows : [[], [title], headings, ...rows];
}
