import { readFileSync, writeFileSync } from 'node:fs';
import { basename, extname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { auditFile, createBasis } from '../core/audit.ts';
import type { PartIndex } from '../core/catalogue/find-part.ts';
import { importCatalogue } from '../core/catalogue/import.ts';
import { parseShopSettings } from '../core/intake/shop-settings.ts';
import type { AuditedList } from '../core/model/audited.ts';
import { Unreadable } from '../core/model/raw.ts';
import { DEFAULT_SHOP } from '../core/model/shop.ts';
import { readFile } from '../io/read-file.ts';
import { type Arguments, parseArguments, USAGE } from './arguments.ts';
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
    const { list, parts } = audit(given, streams);
    await put(given, list, parts, streams);
    return isReached(given, list) ? REACHED : READ;
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    streams.error(`${error.message}\n`);
    return NOT_READ;
  }
}

function audit(given: Arguments, { error }: Streams): { readonly list: AuditedList; readonly parts: PartIndex } {
  const files = given.catalogues.length > 0 ? given.catalogues : [DEMO_CATALOGUE];
  const catalogues = files.map((file) => importCatalogue(readFile(bytesOf(file), basename(file))));
  const shop = given.shop ? parseShopSettings(textOf(given.shop), basename(given.shop)) : DEFAULT_SHOP;
  const raw = readFile(bytesOf(given.list ?? ''), basename(given.list ?? ''));
  const basis = createBasis(catalogues, given.build === 1 ? shop : { ...shop, buildQuantity: given.build });
  for (const { name, problems } of catalogues) {
    for (const { row, column, text } of problems) error(`${name}, row ${row}, ${column}: ${text}\n`);
  }
  return { list: auditFile(raw, basis, given.sheet ? { sheet: given.sheet } : {}), parts: basis.parts };
}

async function put(given: Arguments, list: AuditedList, parts: PartIndex, streams: Streams): Promise<void> {
  const { format, report, out } = given;
  if (format === 'xlsx') {
    return save(out ?? '', await workbookFor(given, list, parts, streams));
  }
  const text = report === 'findings' ? await textFor(format, list) : await reportText(report, format, list, parts);
  if (out) save(out, text);
  else streams.out(text);
}

/** The workbook that the list came in, judged in place; where that cannot be, a new one and the reason. */
async function workbookFor(
  { list: file, out }: Arguments,
  list: AuditedList,
  parts: PartIndex,
  { error }: Streams,
): Promise<Uint8Array> {
  const date = new Date().toISOString().slice(0, 10);
  const { writeWorkbook } = await import('../io/write/workbook.ts');
  if (list.sheets.length === 0) return writeWorkbook(list, date, parts);
  const { annotateWorkbook } = await import('../io/annotate/annotate-workbook.ts');
  const ending = extname(file ?? '').toLowerCase();
  const annotated =
    /^\.(?:xlsm|xltx|xltm)$/.test(ending) && ending !== extname(out ?? '').toLowerCase()
      ? { refused: `Only a name ending in ${ending} keeps it as it is.` }
      : await annotateWorkbook(bytesOf(file ?? ''), list, date, parts);
  if ('bytes' in annotated) return annotated.bytes;
  error(`A new workbook was written, because ${list.file} could not be written into: ${annotated.refused}\n`);
  return writeWorkbook(list, date, parts);
}

async function textFor(format: 'table' | 'json' | 'csv', list: AuditedList): Promise<string> {
  if (format === 'table') return showTable(list);
  if (format === 'json') return `${JSON.stringify(toJson(list), null, 2)}\n`;
  const { writeCsv } = await import('../io/write/csv.ts');
  return writeCsv(list);
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

function bytesOf(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch {
    throw new Unreadable(`“${file}” cannot be opened: check the name and that it may be read.`);
  }
}

function textOf(file: string): string {
  return new TextDecoder().decode(bytesOf(file));
}

function save(file: string, content: string | Uint8Array): void {
  try {
    writeFileSync(file, content);
  } catch {
    throw new Unreadable(`“${file}” cannot be written: check the folder and that it may be written to.`);
  }
}
