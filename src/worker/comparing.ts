import { createBasis } from '../core/audit.ts';
import { compareLists } from '../core/compare/compare-lists.ts';
import { compareReport } from '../core/compare/compare-report.ts';
import { auditList } from '../core/engine/audit-list.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Concession } from '../core/model/concession.ts';
import { Unreadable } from '../core/model/raw.ts';
import { readBack } from '../core/readback/read-back.ts';
import { basisOf } from '../core/rollup/basis.ts';
import type { Report } from '../core/rollup/report.ts';
import { readFile } from '../io/read-file.ts';
import { writeReportCsv } from '../io/write/report-csv.ts';
import { type Compared, toCompared } from './compared.ts';
import { originsOf, withCells } from './edit-rows.ts';
import type { EarlierList, Phase, Requests } from './protocol.ts';
import { readList } from './session.ts';

/** Two lists side by side. */
export interface Comparing {
  readonly earlier: Judged;
  readonly later: AuditedList;
  readonly report: Report;
  readonly shown: Compared;
}

/** The earlier list, judged by what the later one was, and what was accepted on it. */
interface Judged {
  readonly list: AuditedList;
  readonly concessions: readonly Concession[];
  readonly notices: readonly string[];
}

type Ask = Requests['compare']['ask'];
type Progress = (phase: Phase) => (share: number) => void;

/** Compares the later list with an earlier one, or anew with the one of `before`. Throws `Unreadable` with a sentence for the user. */
export async function compare(before: Comparing | undefined, ask: Ask, onProgress: Progress): Promise<Comparing> {
  const { later } = ask;
  const earlier = ask.earlier ? await judgeEarlier(ask.earlier, ask, onProgress) : before?.earlier;
  if (!earlier) throw nothingCompared();
  onProgress('comparing')(0);
  const comparison = compareLists(earlier.list, later, earlier.concessions);
  const report = compareReport(comparison, earlier.list, later);
  return { earlier, later, report, shown: toCompared(comparison, earlier.list, later, earlier.notices) };
}

/** Reads a list as it was worked on and judges it. What would hold instead is not sought: nobody orders by an earlier list. */
async function judgeEarlier(
  { file, options, cells, concessions }: EarlierList,
  { later, catalogues, remembered }: Ask,
  onProgress: Progress,
): Promise<Judged> {
  const { encoding, delimiter, sheet, ...others } = options;
  const reading = { ...(encoding !== undefined && { encoding }), ...(delimiter !== undefined && { delimiter }) };
  const bytes = new Uint8Array(await file.data.arrayBuffer());
  const raw = readFile(bytes, file.name, { ...reading, onProgress: onProgress('reading') });
  const hasSheet = sheet !== undefined && raw.tables.some(({ name }) => name === sheet);
  const { list } = readList(raw, hasSheet ? { ...others, sheet } : others, remembered);
  const basis = { ...createBasis(catalogues, later.shop), findRemedies: () => [] };
  const edited = withCells(list, originsOf(raw, list), cells);
  const audited = auditList(edited, basis, { onProgress: onProgress('judging') });
  return { list: audited, ...(concessions ? { concessions, notices: [] } : readBack(raw, audited)) };
}

/** The comparison as a file, with what both lists were judged by. CSV begins with the mark by which a spreadsheet knows UTF-8. */
export async function writeComparing(
  comparing: Comparing | undefined,
  { format, date }: Requests['comparedFile']['ask'],
): Promise<Uint8Array> {
  if (!comparing) throw nothingCompared();
  const { later, report } = comparing;
  if (format === 'csv') return new TextEncoder().encode(`\ufeff${writeReportCsv(withBasis(report, later, date))}`);
  const { writeCompareWorkbook } = await import('../io/write/compare-workbook.ts');
  return writeCompareWorkbook(later, report, date);
}

function withBasis(report: Report, later: AuditedList, date: string): Report {
  const rows = basisOf(later, date);
  const basis = { title: 'What both lists were judged by', headings: ['Basis', 'Value'], rows, notes: [] };
  return { ...report, blocks: [...report.blocks, basis] };
}

function nothingCompared(): Unreadable {
  return new Unreadable('Nothing has been compared yet. Choose the earlier list first.');
}
