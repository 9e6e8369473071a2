import type { Report, ReportBlock } from '../../core/rollup/report.ts';
import { type CsvOptions, FOR_SPREADSHEETS, writeCsvRows } from './csv-rows.ts';

/** A report as CSV (UTF-8, comma): its tables one below the other, those with equal headings as one; sentences and the foot last. */
export function writeReportCsv({ blocks, foot }: Report, options: CsvOptions = FOR_SPREADSHEETS): string {
  const tables = blocks.flatMap((block, index) => tableRows(block, blocks[index - 1]));
  const notes = blocks.flatMap(({ title, notes }) => notes.map((note) => [title ? `${title}: ${note}` : note]));
  return writeCsvRows([...tables, [], ...notes, ...foot.map((text) => [text])], options);
}

function tableRows({ title, headings, rows }: ReportBlock, before: ReportBlock | undefined) {
  if (before === undefined) return [headings, ...rows];
  return before.headings === headings ? rows : [[], [title], headings, ...rows];
}
