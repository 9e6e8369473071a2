import { parseArgs } from 'node:util';
import { Unreadable } from '../core/model/raw.ts';

export const FORMATS = ['table', 'json', 'csv', 'xlsx'] as const;
export type Format = (typeof FORMATS)[number];
export const REPORTS = ['findings', 'purchase', 'press', 'questions'] as const;
export type ReportName = (typeof REPORTS)[number];
export const FAIL_ON = ['fails', 'unknown', 'marginal', 'never'] as const;
export type FailOn = (typeof FAIL_ON)[number];

/** What the command line was asked to do. */
export interface Arguments {
  readonly list: string | null;
  readonly catalogues: readonly string[];
  readonly shop: string | null;
  readonly sheet: string | null;
  readonly report: ReportName;
  /** The earlier revision to compare the list with. */
  readonly compare: string | null;
  readonly format: Format;
  readonly out: string | null;
  readonly failOn: FailOn;
  readonly build: number;
  readonly plainCsv: boolean;
  readonly sources: boolean;
  readonly help: boolean;
}

export const USAGE = `npm run --silent audit -- LIST [options]
  LIST                a hardware list, CSV or XLSX
  --catalogue FILE    fastener catalogue, CSV or XLSX; may be given several times, first ranks highest (default: the demo catalogue)
  --shop FILE         shop settings as JSON
  --sheet NAME        sheet of the workbook to read (default: the one that looks like a list)
  --report REPORT     findings, purchase (what to order), press (by panel) or questions (a letter to the sender) (default: findings)
  --compare OLD       what differs from this earlier revision of the list, judged in the same way, instead of the findings
  --format FORMAT     table, json, csv or xlsx, which holds all reports (default: table)
  --out FILE          write there instead of to standard output (needed for xlsx)
  --plain-csv         leaves cells that begin like a formula as they are; only for programs that never calculate
  --fail-on VERDICT   fails, unknown, marginal or never: exit with 1 when a row is at or above it (default: fails)
  --build N           how many times the list is built (default: 1)
  --sources           list every reference table with its documents and how far each was confirmed
Exit: 0 nothing at or above --fail-on, 1 something is, 2 the input could not be read.`;

const OPTIONS = {
  catalogue: { type: 'string', multiple: true },
  shop: { type: 'string' },
  sheet: { type: 'string' },
  report: { type: 'string' },
  compare: { type: 'string' },
  format: { type: 'string', default: 'table' },
  out: { type: 'string' },
  'plain-csv': { type: 'boolean', default: false },
  'fail-on': { type: 'string', default: 'fails' },
  build: { type: 'string', default: '1' },
  sources: { type: 'boolean', default: false },
  help: { type: 'boolean', default: false },
} as const;

/** Reads the arguments. Throws `Unreadable` with a sentence when they make no sense. */
export function parseArguments(argv: readonly string[]): Arguments {
  const { values, positionals } = parsed(argv);
  if (positionals.length > 1) throw new Unreadable(`One list at a time: “${positionals[1]}” is one too many.`);
  const format = oneOf(FORMATS, values.format, '--format');
  const report = oneOf(REPORTS, values.report ?? 'findings', '--report');
  const list = positionals[0] ?? null;
  if (!list && !values.sources && !values.help) throw new Unreadable(`Which list? Name a CSV or XLSX file.\n${USAGE}`);
  if (format === 'xlsx' && !values.out)
    throw new Unreadable('A workbook cannot be printed: say where to write it with --out FILE.');
  if (format === 'xlsx' && report !== 'findings')
    throw new Unreadable('A workbook holds every report: leave --report out, or choose --format table, csv or json.');
  if (values.compare !== undefined && values.report !== undefined)
    throw new Unreadable('A comparison is a report of its own: leave out --report or --compare.');
  if (values['plain-csv'] && format !== 'csv')
    throw new Unreadable('Only CSV can be plain: --plain-csv goes with --format csv.');
  return {
    list,
    catalogues: values.catalogue ?? [],
    shop: values.shop ?? null,
    sheet: values.sheet ?? null,
    report,
    compare: values.compare ?? null,
    format,
    out: values.out ?? null,
    failOn: oneOf(FAIL_ON, values['fail-on'], '--fail-on'),
    build: wholeNumber(values.build),
    plainCsv: values['plain-csv'],
    sources: values.sources,
    help: values.help,
  };
}

function parsed(argv: readonly string[]) {
  try {
    return parseArgs({ args: [...argv], options: OPTIONS, allowPositionals: true });
  } catch (error) {
    throw new Unreadable(`${error instanceof Error ? error.message : String(error)}\n${USAGE}`);
  }
}

function oneOf<T extends string>(allowed: readonly T[], value: string, option: string): T {
  const found = allowed.find((candidate) => candidate === value);
  if (!found) throw new Unreadable(`${option} is one of ${allowed.join(', ')}, not “${value}”.`);
  return found;
}

function wholeNumber(text: string): number {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 1)
    throw new Unreadable(`--build is a whole number from 1 on, not “${text}”.`);
  return value;
}
