import { readFileSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { auditFile, createBasis } from '../core/audit.ts';
import { importCatalogue } from '../core/catalogue/import.ts';
import { parseShopSettings } from '../core/intake/shop-settings.ts';
import type { AuditedList } from '../core/model/audited.ts';
import { Unreadable } from '../core/model/raw.ts';
import { DEFAULT_SHOP } from '../core/model/shop.ts';
import { readFile } from '../io/read-file.ts';
import { type Arguments, parseArguments, USAGE } from './arguments.ts';
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
    const list = audit(given, streams);
    await put(given, list, streams);
    return isReached(given, list) ? REACHED : READ;
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    streams.error(`${error.message}\n`);
    return NOT_READ;
  }
}

function audit(given: Arguments, { error }: Streams): AuditedList {
  const files = given.catalogues.length > 0 ? given.catalogues : [DEMO_CATALOGUE];
  const catalogues = files.map((file) => importCatalogue(readFile(bytesOf(file), basename(file))));
  const shop = given.shop ? parseShopSettings(textOf(given.shop), basename(given.shop)) : DEFAULT_SHOP;
  const raw = readFile(bytesOf(given.list ?? ''), basename(given.list ?? ''));
  const basis = createBasis(catalogues, given.build === 1 ? shop : { ...shop, buildQuantity: given.build });
  for (const { name, problems } of catalogues) {
    for (const { row, column, text } of problems) error(`${name}, row ${row}, ${column}: ${text}\n`);
  }
  return auditFile(raw, basis, given.sheet ? { sheet: given.sheet } : {});
}

async function put({ format, out }: Arguments, list: AuditedList, streams: Streams): Promise<void> {
  if (format === 'xlsx') {
    const { writeWorkbook } = await import('../io/write/workbook.ts');
    return save(out ?? '', await writeWorkbook(list, new Date().toISOString().slice(0, 10)));
  }
  const text = await textFor(format, list);
  if (out) save(out, text);
  else streams.out(text);
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
