import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { parseProject } from '../../src/app/parse-project.ts';
import schema from '../../src/cli/audit.schema.json' with { type: 'json' };
import { run } from '../../src/cli/run.ts';
import { Unreadable } from '../../src/core/model/raw.ts';
import type { Base, Row } from './base.ts';
import { writeText } from './break-bytes.ts';
import { type Input, makeInput } from './inputs.ts';
import { createRandom } from './random.ts';

/** A row as judged. */
interface Line {
  readonly row: number;
  readonly verdict: string;
  readonly findings: readonly { readonly rule: string; readonly outcome: string }[];
}

interface Result {
  readonly code: number | null;
  readonly out: string;
  readonly error: string;
  /** What was thrown, where a sentence should have been. */
  readonly thrown: string | null;
}

const COMMAND_LINE = join(import.meta.dirname, '../../src/cli/audit.mjs');
/** Rules that fail a row by nothing but its part, sheet and hole. */
const OWN_RULES = /^(?:clinch\/(?:sheet-thickness|hardness|hole|family|shank)|sheet\/)/;
const STACK = /\n\s+at .+:\d+/;

const validate = new Ajv2020({ allErrors: true }).compile(schema);

/** The folder in which inputs are laid down. */
export const FOLDER = mkdtempSync(join(tmpdir(), 'clinchsheet-fuzz-'));
process.on('exit', () => rmSync(FOLDER, { recursive: true, force: true }));

/** What came of an input; every sentence is a fault found. */
export interface Examined {
  readonly code: number | null;
  readonly faults: readonly string[];
}

/** Judges the input of a number in the ways of the command line. */
export async function examine(seed: number, number: number): Promise<Examined> {
  const input = makeInput(seed, number);
  const truth = await judgeBase(input.base);
  const result = await audit(input, ['--format', 'json']);
  const faults = [...faultsOf(result), ...projectFaults(input.project)];
  if (faults.length === 0 && result.code !== 2)
    faults.push(...judgementFaults(input, JSON.parse(result.out).lines, truth));
  if (number % 4 === 0) faults.push(...(await otherForms(input, number)));
  if (number % 50 === 0) faults.push(...commandLineFaults(input, result));
  return { code: result.code, faults: faults.map((fault) => `${input.what}: ${fault}`) };
}

/** Lays the files of an input down, to be looked at. */
export function layDown(seed: number, number: number, folder: string): void {
  const { list, catalogue, shop, project } = makeInput(seed, number);
  writeFileSync(join(folder, list.name), list.bytes);
  writeFileSync(join(folder, 'catalogue.csv'), catalogue);
  writeFileSync(join(folder, 'shop.json'), shop);
  if (project !== null) writeFileSync(join(folder, 'project.json'), project);
}

type Files = Pick<Input, 'list' | 'catalogue' | 'shop'>;

/** Writes the files and gives the arguments that name them. */
function layOut({ list, catalogue, shop }: Files): readonly string[] {
  const path = (name: string) => join(FOLDER, name);
  writeFileSync(path(list.name), list.bytes);
  writeFileSync(path('catalogue.csv'), catalogue);
  writeFileSync(path('shop.json'), shop);
  return [path(list.name), '--catalogue', path('catalogue.csv'), '--shop', path('shop.json')];
}

async function audit(files: Files, more: readonly string[]): Promise<Result> {
  const out: string[] = [];
  const error: string[] = [];
  const argv = [...layOut(files), ...more];
  try {
    const code = await run(argv, { out: (text) => out.push(text), error: (text) => error.push(text) });
    return { code, out: out.join(''), error: error.join(''), thrown: null };
  } catch (thrown) {
    return { code: null, out: '', error: '', thrown: thrown instanceof Error ? (thrown.stack ?? '') : String(thrown) };
  }
}

function faultsOf({ code, out, error, thrown }: Result): string[] {
  if (thrown !== null) return [`crash: ${thrown}`];
  if (code !== 0 && code !== 1 && code !== 2) return [`exit code ${code}`];
  if (STACK.test(error)) return [`a stack trace: ${error}`];
  if (code === 2) return /\S.*\.\n/s.test(error) ? [] : [`refused without a sentence: ${error}`];
  if (validate(JSON.parse(out))) return [];
  return [`not as the schema says: ${JSON.stringify(validate.errors?.slice(0, 2))}`];
}

const truths = new Map<Base, ReadonlyMap<Row, Line>>();

/** The list as it was. */
async function judgeBase(base: Base): Promise<ReadonlyMap<Row, Line>> {
  const known = truths.get(base);
  if (known) return known;
  const list = writeText(base.rows, createRandom(1));
  const { out, thrown, error } = await audit(
    { list, catalogue: new TextEncoder().encode(base.catalogue), shop: '{}' },
    ['--format', 'json'],
  );
  if (thrown !== null || out === '') throw new Error(`The base cannot be judged: ${thrown ?? error}`);
  const lines = JSON.parse(out).lines as Line[];
  const truth = new Map(lines.map((line) => [base.rows[line.row - 1]!, line]));
  truths.set(base, truth);
  return truth;
}

function judgementFaults(
  { kept, blanked, isSame, base }: Input,
  lines: readonly Line[],
  truth: ReadonlyMap<Row, Line>,
): string[] {
  const faults: string[] = [];
  for (const { row, verdict } of lines) {
    const was = kept.get(row);
    const before = was && truth.get(was);
    if (before && verdict === 'holds' && failsByItself(before)) faults.push(`row ${row} failed and now holds`);
    if (blanked.has(row) && verdict === 'holds') faults.push(`row ${row} holds without a cell that decides`);
  }
  if (!isSame) return faults;
  const wanted = base.rows.flatMap((row) => truth.get(row)?.verdict ?? []).join(' ');
  const found = lines.map(({ verdict }) => verdict).join(' ');
  return found === wanted ? faults : [...faults, `judged ${found}, not ${wanted}`];
}

function failsByItself({ findings }: Line): boolean {
  return findings.some(({ rule, outcome }) => outcome === 'fails' && OWN_RULES.test(rule));
}

/** The same through the real command line: its exit code and what it says must be those of the call. */
function commandLineFaults(input: Input, { code, out, error, thrown }: Result): readonly string[] {
  if (thrown !== null) return [];
  const argv = [COMMAND_LINE, ...layOut(input), '--format', 'json'];
  const { status, stdout, stderr } = spawnSync(process.execPath, argv, { encoding: 'utf8', maxBuffer: 2 ** 28 });
  if (status !== code) return [`the command line ends with ${status}, not ${code}: ${stderr}`];
  return stdout === out && stderr === error ? [] : [`the command line says ${stdout.slice(0, 200)} ${stderr}`];
}

/** Sometimes a workbook, CSV, a table or a report is asked for: it must be written or refused too. */
async function otherForms(input: Input, number: number): Promise<readonly string[]> {
  const forms = [
    ['--format', 'xlsx', '--out', join(FOLDER, 'out.xlsx')],
    ['--format', 'csv'],
    ['--format', 'table'],
    ['--report', 'purchase'],
    ['--report', 'press', '--format', 'json'],
    ['--report', 'questions', '--format', 'csv'],
  ];
  const form = forms[(number / 4) % forms.length] ?? [];
  const { code, error, thrown } = await audit(input, form);
  if (thrown !== null) return [`${form.join(' ')}: crash: ${thrown}`];
  if (STACK.test(error) || ![0, 1, 2].includes(code ?? -1)) return [`${form.join(' ')}: exit ${code}, ${error}`];
  return [];
}

function projectFaults(project: string | null): string[] {
  if (project === null) return [];
  try {
    parseProject(project, 'project.json');
    return [];
  } catch (error) {
    if (error instanceof Unreadable && /\S.*\.$/s.test(error.message)) return [];
    return [`project: ${error instanceof Error ? error.stack : String(error)} for ${project}`];
  }
}
