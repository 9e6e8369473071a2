import { writeFileSync } from 'node:fs';
import { basename, extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { auditFile, createBasis } from '../core/audit.ts';
import type { PartIndex } from '../core/catalogue/find-part.ts';
import { importCatalogue } from '../core/catalogue/import.ts';
import { compareLists } from '../core/compare/compare-lists.ts';
import { compareReport } from '../core/compare/compare-report.ts';
import { parseShopSettings } from '../core/intake/shop-settings.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { WorkRecord } from '../core/model/change-record.ts';
import type { Concession } from '../core/model/concession.ts';
import { type RawFile, Unreadable } from '../core/model/raw.ts';
import { DEFAULT_SHOP } from '../core/model/shop.ts';
import { holdsConcessions, readBack } from '../core/readback/read-back.ts';
import type { Report } from '../core/rollup/report.ts';
import { readFile } from '../io/read-file.ts';
import type { CsvOptions } from '../io/write/csv-rows.ts';
import { type Arguments, parseArguments, USAGE } from './arguments.ts';
import { compareText } from './compare-text.ts';
import { readBytes } from './read-bytes.ts';
import { reportText } from './report-text.ts';
import { showSources } from './show-sources.ts';
import { showTable } from './show-table.ts';
import { toJson } from './to-json.ts';

const DEMO_CATALOGUE = fileURLToPath(new URL('../../sample-data/demo-catalogue.csv', import.meta.url));
const READ = 0;
const REACHED = 1;
const NOT_READ = 2;

/** Where results and remarks go. */
export interface Streams {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
}

/** Runs the command line; the answer is its exit code. Everything for the user that is no result goes to `error`. */
export async function run(argv: readonly string[], streams: Streams): Promise<number> {
  try {
    const given = parseArguments(argv);
    if (given.help || given.sources) {
      streams.out(given.help ? `${USAGE}\n` : showSources());
      return READ;
    }
    const judged = audit(given, streams);
    await put(given, judged, streams);
    return isReached(given, judged.list) ? REACHED : READ;
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    streams.error(`${error.message}\n`);
    return NOT_READ;
  }
}

interface Judged {
  readonly list: AuditedList;
  readonly parts: PartIndex;
  /** The earlier revision to compare with, judged in the same way. */
  readonly before: AuditedList | null;
  /** What earlier exports have left in the list's workbook and in that of the earlier revision. */
  readonly work: WorkRecord;
  readonly acceptedBefore: readonly Concession[];
}

function audit(given: Arguments, { error }: Streams): Judged {
  const files = given.catalogues.length > 0 ? given.catalogues : [DEMO_CATALOGUE];
  const catalogues = files.map((file) => importCatalogue(rawFile(file)));
  const shop = given.shop ? parseShopSettings(textOf(given.shop), basename(given.shop)) : DEFAULT_SHOP;
  const raw = rawFile(given.list ?? '');
  const rawBefore = given.compare === null ? null : rawFile(given.compare);
  const basis = createBasis(catalogues, given.build === 1 ? shop : { ...shop, buildQuantity: given.build });
  for (const { name, problems } of catalogues) {
    for (const { row, column, text } of problems) error(`${name}, row ${row}, ${column}: ${text}\n`);
  }
  const list = auditFile(raw, basis, given.sheet ? { sheet: given.sheet } : {});
  const withoutRemedies = { ...basis, findRemedies: () => [] };
  const before = rawBefore && auditFile(rawBefore, withoutRemedies, sheetIn(rawBefore, given.sheet));
  const { concessions, changes, notices } = readBack(raw, list);
  for (const notice of notices) error(`${list.file}: ${notice}\n`);
  const acceptedBefore = rawBefore && before ? readBack(rawBefore, before).concessions : [];
  const work = { concessions, changes, hadConcessions: holdsConcessions(raw, list.sheet) };
  return { list, parts: basis.parts, before, work, acceptedBefore };
}

/** The sheet named counts for the earlier revision too, where that has one of the name. */
function sheetIn({ tables }: RawFile, sheet: string | null) {
  return sheet !== null && tables.some(({ name }) => name === sheet) ? { sheet } : {};
}

async function put(given: Arguments, judged: Judged, streams: Streams): Promise<void> {
  const { format, report, out } = given;
  const { list, parts, before, acceptedBefore } = judged;
  const csv = { escapes: !given.plainCsv };
  const comparison = before && compareLists(before, list, acceptedBefore);
  if (format === 'xlsx') {
    const compared = comparison && compareReport(comparison, before, list);
    return save(out ?? '', await workbookFor(given, judged, compared, streams));
  }
  const text = comparison
    ? await compareText(comparison, before, list, format, csv)
    : report === 'findings'
      ? await textFor(format, judged, csv)
      : await reportText(report, format, list, parts, csv);
  if (out) save(out, text);
  else streams.out(text);
}

/** The workbook that the list came in, judged in place; where that cannot be, a new one and the reason. */
async function workbookFor(
  { list: file, out }: Arguments,
  { list, parts, work }: Judged,
  compared: Report | null,
  { error }: Streams,
): Promise<Uint8Array> {
  const date = new Date().toISOString().slice(0, 10);
  const { writeWorkbook } = await import('../io/write/workbook.ts');
  if (list.sheets.length === 0) return writeWorkbook(list, date, parts, work, compared);
  const { annotateWorkbook } = await import('../io/annotate/annotate-workbook.ts');
  const ending = extname(file ?? '').toLowerCase();
  const annotated =
    /^\.(?:xlsm|xltx|xltm)$/.test(ending) && ending !== extname(out ?? '').toLowerCase()
      ? { refused: `Only a name ending in ${ending} keeps it as it is.` }
      : await annotateWorkbook(readBytes(file ?? ''), list, date, parts, work, compared);
  if ('bytes' in annotated) return annotated.bytes;
  error(`A new workbook was written, because ${list.file} could not be written into: ${annotated.refused}\n`);
  return writeWorkbook(list, date, parts, work, compared);
}

async function textFor(format: 'table' | 'json' | 'csv', { list, work }: Judged, csv: CsvOptions): Promise<string> {
  if (format === 'table') return showTable(list);
  if (format === 'json') return `${JSON.stringify(toJson(list), null, 2)}\n`;
  const { writeCsv } = await import('../io/write/csv.ts');
  return writeCsv(list, work.concessions, csv);
}

function isReached({ failOn }: Arguments, { totals }: AuditedList): boolean {
  if (failOn === 'never') return false;
  const at = {
    fails: totals.fails,
    unknown: totals.fails + totals.unknown,
    marginal: totals.fails + totals.unknown + totals.marginal,
  };
  return at[failOn] > 0;
}

function rawFile(file: string): RawFile {
  return readFile(readBytes(file), basename(file));
}

function textOf(file: string): string {
  return new TextDecoder().decode(readBytes(file));
}

function save(file: string, content: string | Uint8Array): void {
  try {
    writeFileSync(file, content);
  } catch {
    throw new Unreadable(`“${file}” cannot be written: check the folder and that it may be written to.`);
  }
}
