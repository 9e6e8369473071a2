import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import schema from '../../src/cli/audit.schema.json' with { type: 'json' };

const ROOT = resolve(import.meta.dirname, '../..');
const DEMO_XLSX = join(ROOT, 'sample-data/recorder-cabinet.xlsx');
const DEMO_CSV = join(ROOT, 'sample-data/recorder-cabinet.csv');
const folder = mkdtempSync(join(tmpdir(), 'clinchsheet-'));

const audit = (...args: readonly string[]) => run(process.execPath, 'src/cli/audit.mjs', ...args);
/** As it is called by its users; the package manager takes longer to start than the command itself. */
const auditByName = (...args: readonly string[]) => run('npm', 'run', '--silent', 'audit', '--', ...args);

function run(command: string, ...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd: ROOT, encoding: 'utf8' });
  return { status, stdout, stderr };
}

function file(name: string, text: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const HEADINGS = 'Part number,Material,Thickness (mm),Qty\n';
const GOOD = `${HEADINGS}NUT-M4-10-CS,DC01,1.5,4\n`;
const UNKNOWN = `${HEADINGS}NUT-M4-10-CS,DC01,,4\n`;
const FAILING = `${HEADINGS}NUT-M4-10-CS,DC01,0.5,4\n`;

describe('JSON output', () => {
  const ajv = new Ajv2020({ allErrors: true });
  const validate = ajv.compile(schema);

  it.each([DEMO_XLSX, DEMO_CSV])('of %s is as the shipped schema says', (list) => {
    const { stdout, status } = audit(list, '--format', 'json');
    const result = JSON.parse(stdout);
    expect(validate(result), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
    expect(status).toBe(1);
    const counted = Object.values(result.totals as Record<string, number>).reduce((sum, count) => sum + count, 0);
    expect(counted).toBe(result.lines.length);
    expect(Object.values(result.totals).every((count) => (count as number) > 0)).toBe(true);
    expect(result.list.catalogues).toEqual([{ name: expect.any(String), demo: true }]);
  });

  it('has a schema that refuses another shape', () => {
    const result = JSON.parse(audit(file('good.csv', GOOD), '--format', 'json').stdout);
    expect(validate(result)).toBe(true);
    expect(validate({ ...result, lines: [{ ...result.lines[0], verdict: 'fine' }] })).toBe(false);
    expect(validate({ ...result, extra: 1 })).toBe(false);
  });
});

describe('called by its name', () => {
  it.each([
    ['0 and a result', [file('good.csv', GOOD), '--format', 'json']],
    ['1 and a report', [file('failing.csv', FAILING)]],
    ['2 and a sentence', [DEMO_CSV, '--colour']],
  ] as const)('answers as it does directly: with %s', (words, args) => {
    const answer = auditByName(...args);
    expect(answer).toEqual(audit(...args));
    expect(answer.status).toBe(Number(words[0]));
  });
});

describe('exit code', () => {
  it('is 0 when nothing reaches the verdict asked about', () => {
    expect(audit(file('good.csv', GOOD)).status).toBe(0);
    expect(audit(file('unknown.csv', UNKNOWN)).status).toBe(0);
    expect(audit(file('failing.csv', FAILING), '--fail-on', 'never').status).toBe(0);
  });

  it('is 1 when something does', () => {
    expect(audit(file('failing.csv', FAILING)).status).toBe(1);
    expect(audit(file('unknown.csv', UNKNOWN), '--fail-on', 'unknown').status).toBe(1);
  });

  it.each([
    ['a file that is not there', ['nowhere.csv'], 'nowhere.csv'],
    ['no list at all', [], 'Which list?'],
    ['an unknown format', [DEMO_CSV, '--format', 'pdf'], '--format is one of'],
    ['an unknown option', [DEMO_CSV, '--colour'], '--colour'],
    ['plain CSV that is none', [DEMO_CSV, '--plain-csv'], '--format csv'],
    ['a workbook without a place to write it', [DEMO_CSV, '--format', 'xlsx'], '--out'],
  ] as const)('is 2 for %s, with one sentence', (_, args, sentence) => {
    const { status, stderr, stdout } = audit(...args);
    expect(status).toBe(2);
    expect(stderr).toContain(sentence);
    expect(stdout).toBe('');
    expect(stderr).not.toMatch(/at .*\.ts:\d+/);
  });

  it('is 2 for a file that is no list, naming file and what to do', () => {
    const { status, stderr } = audit(file('prose.csv', 'Dear all\nplease find nothing here\n'));
    expect(status).toBe(2);
    expect(stderr).toContain('prose.csv');
  });

  it('is 2 for shop settings that make no sense, naming the setting', () => {
    const shop = file('shop.json', '{"judgeThicknessAt": "sometimes"}');
    const { status, stderr } = audit(file('good.csv', GOOD), '--shop', shop);
    expect(status).toBe(2);
    expect(stderr).toContain('judgeThicknessAt');
  });
});

describe('what the command line says', () => {
  it('names the demo catalogue and the safety words', () => {
    const { stdout } = audit(file('good.csv', GOOD));
    expect(stdout).toContain('not for production');
    expect(stdout).toContain('does not approve joints');
  });

  it('applies shop settings', () => {
    const list = file('thin.csv', `${HEADINGS}NUT-M4-10-CS,DC01,1.0,4\n`);
    const shop = file('thinnest.json', '{"judgeThicknessAt": "thinnest"}');
    expect(JSON.parse(audit(list, '--format', 'json').stdout).totals.holds).toBe(1);
    expect(JSON.parse(audit(list, '--format', 'json', '--shop', shop).stdout).totals.marginal).toBe(1);
  });

  it('lists every source with its mark', () => {
    const { stdout, status } = audit('--sources');
    expect(status).toBe(0);
    for (const words of ['ASTM E140', 'EN 10131', 'memory:', 'printed:', 'derived', 'common practice, no source'])
      expect(stdout).toContain(words);
  });

  it('never calls a row good on a missing fact, and says what would settle it', () => {
    const list = file(
      'gaps.csv',
      `${HEADINGS}NUT-M4-10-ZZ,DC01,1.5,4\nNUT-M4-10-CS,zorbium,1.5,4\nNUT-M4-10-CS,DC01,,4\nNUT-M4-10-CS,,1.5,4\n`,
    );
    const { lines } = JSON.parse(audit(list, '--format', 'json').stdout);
    const verdicts = lines.map(({ verdict }: { verdict: string }) => verdict);
    expect(verdicts).toEqual(['unknown', 'unknown', 'unknown', 'unknown']);
    for (const { findings } of lines) {
      const unknown = findings.filter(({ outcome }: { outcome: string }) => outcome === 'unknown');
      expect(unknown.every(({ text }: { text: string }) => text.includes('would settle this'))).toBe(true);
    }
  });
});

describe('workbook and CSV output', () => {
  it('keeps the sender’s cells and adds ours', async () => {
    const out = join(folder, 'judged.xlsx');
    expect(audit(DEMO_XLSX, '--format', 'xlsx', '--out', out).stderr).toBe('');
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load(readFileSync(out) as unknown as ArrayBuffer);
    const names = workbook.worksheets.map(({ name }) => name);
    expect(names.slice(0, 2)).toEqual(['Hardware', 'Notes']);
    expect(names.slice(-5)).toEqual(['Findings', 'Purchase', 'Press sheet', 'Questions', 'Basis']);
  });

  it('writes a new workbook where the list’s own cannot be written into, and says why', async () => {
    const list = file('macros.xlsm', readFileSync(DEMO_XLSX));
    const out = join(folder, 'judged-anew.xlsx');
    expect(audit(list, '--format', 'xlsx', '--out', out).stderr).toMatch(/new workbook.*macros\.xlsm.*\.xlsm/);
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load(readFileSync(out) as unknown as ArrayBuffer);
    expect(workbook.worksheets.map(({ name }) => name)).not.toContain('Notes');
  });

  it('writes CSV whose first lines are the sender’s rows', () => {
    const { stdout } = audit(file('good.csv', GOOD), '--format', 'csv');
    const [heading, first] = stdout.split('\r\n');
    expect(heading).toMatch(/^Part number,Material,Thickness \(mm\),Qty,Row in file,Verdict/);
    expect(first).toMatch(/^NUT-M4-10-CS,DC01,1.5,4,2,holds/);
    expect(stdout).toContain('does not approve joints');
  });

  it('keeps formulas from starting in CSV, unless it is for a program that never calculates', () => {
    const list = file('formula.csv', `${HEADINGS.replace('Qty', 'Qty,Note')}NUT-M4-10-CS,DC01,1.5,4,=1+1\n`);
    expect(audit(list, '--format', 'csv').stdout).toContain(",'=1+1,2,holds");
    expect(audit(list, '--format', 'csv', '--plain-csv').stdout).toContain(',=1+1,2,holds');
    const panel = file('panel.csv', `${HEADINGS.replace('Qty', 'Qty,Panel')}NUT-M4-10-CS,DC01,1.5,4,=1+1\n`);
    const press = ['--report', 'press', '--format', 'csv'];
    expect(audit(panel, ...press).stdout).toContain("'=1+1");
    expect(audit(panel, ...press, '--plain-csv').stdout).not.toContain("'=1+1");
  });

  it('has every row of the list in CSV', () => {
    const list = file('rows.csv', `${HEADINGS}PANEL P1,DC01,1.5,1\nNUT-M4-10-CS,DC01,1.5,4\nTotal,,,5\n`);
    const rows = audit(list, '--format', 'csv').stdout.split('\r\n');
    expect(rows[2]).toMatch(/^NUT-M4-10-CS,DC01,1.5,4,3,holds/);
    expect(rows[3]).toMatch(/^Total,,,5,4,total: not a fastener/);
  });
});
