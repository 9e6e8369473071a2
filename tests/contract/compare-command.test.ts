import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Ajv2020 from 'ajv/dist/2020.js';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import schema from '../../src/cli/audit.schema.json' with { type: 'json' };
import { run } from '../../src/cli/run.ts';
import { withoutOwnSheets } from '../../src/core/intake/own-sheets.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../src/core/say/safety.ts';
import { readFile } from '../../src/io/read-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'clinchsheet-'));
const HEADINGS = 'Part number,Panel,Material,Thickness (mm),Edge (mm),Qty';
const OLD = file('a.csv', [
  HEADINGS,
  'NUT-M4-10-CS,P1,DC01,1.5,20,4',
  'STUD-M4-10-12-CS,P1,DC01,1.5,20,6',
  'NUT-M6-15-CS,P2,DC01,2,30,2',
]);
const NEW = file('b.csv', [
  'Revision B',
  HEADINGS,
  'NUT-M4-10-CS,P1,DC01,0.5,20,4',
  'NUT-M6-15-CS,P2,DC01,.0787 in,30,2',
  'NUT-M3-08-CS,P2,DC01,2,30,8',
]);

function file(name: string, lines: readonly string[]): string {
  const path = join(folder, name);
  writeFileSync(path, `${lines.join('\n')}\n`);
  return path;
}

async function compare(...args: readonly string[]) {
  const said = { out: '', error: '' };
  const code = await run([NEW, '--compare', OLD, ...args], {
    out: (text) => {
      said.out += text;
    },
    error: (text) => {
      said.error += text;
    },
  });
  return { code, ...said };
}

describe('--compare', () => {
  it('gives JSON as the shipped schema says', async () => {
    const validate = new Ajv2020({ allErrors: true }).compile(schema);
    const { out, code } = await compare('--format', 'json');
    const result = JSON.parse(out);
    expect(validate(result), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
    expect(validate({ ...result, extra: 1 })).toBe(false);
    expect(validate({ ...result, added: [{ row: 0 }] })).toBe(false);
    expect(code).toBe(1);
    expect(result).toMatchObject({
      report: 'compare',
      list: { file: 'b.csv', catalogues: [{ demo: true }] },
      before: { file: 'a.csv' },
      changed: [{ before: { row: 2 }, after: { row: 3 }, cells: [{ role: 'thickness', before: '1.5', after: '0.5' }] }],
      rewritten: [{ before: { row: 4 }, cells: [{ after: '.0787 in', writtenOnly: true }] }],
      added: [{ row: 5, partNumber: 'NUT-M3-08-CS' }],
      removed: [{ row: 3, partNumber: 'STUD-M4-10-12-CS' }],
      verdicts: [{ verdictBefore: 'holds', verdictAfter: 'fails', cellsChanged: true }],
      totals: { before: { holds: 3 }, after: { holds: 2, fails: 1 } },
    });
  });

  it('gives a table and CSV with the safety words once at the foot', async () => {
    for (const format of ['table', 'csv']) {
      const { out } = await compare('--format', format);
      expect(out).toMatch(/^Compared/);
      for (const words of ['Rows changed', 'STUD-M4-10-12-CS', '1 row changed, 1 row added, 1 row removed.'])
        expect(out, format).toContain(words);
      expect(out.split(SAFETY_SHORT), format).toHaveLength(2);
      expect(out.split(DEMO_WORDS), format).toHaveLength(2);
    }
  });

  it('gives the workbook as usual with a sheet more, which is never read as a list', async () => {
    const out = join(folder, 'compared.xlsx');
    expect((await compare('--format', 'xlsx', '--out', out)).code).toBe(1);
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load(readFileSync(out) as unknown as ArrayBuffer);
    expect(workbook.worksheets.slice(-2).map(({ name }) => name)).toEqual(['Compare', 'Basis']);
    const read = readFile(readFileSync(out), 'compared.xlsx');
    expect(read.tables.map(({ name }) => name)).toContain('Compare');
    expect(withoutOwnSheets(read).tables.map(({ name }) => name)).toEqual(['List']);
    const again = await run([NEW, '--compare', out, '--format', 'csv'], {
      out: (text) => expect(text).toContain('Nothing has changed.'),
      error: () => {},
    });
    expect(again).toBe(1);
  });

  it('puts that sheet into the workbook that the list came in too', async () => {
    const demo = (name: string) => fileURLToPath(new URL(`../../sample-data/${name}`, import.meta.url));
    const out = join(folder, 'in-place.xlsx');
    const args = [
      demo('recorder-cabinet.xlsx'),
      '--compare',
      demo('recorder-cabinet.csv'),
      '--format',
      'xlsx',
      '--out',
      out,
    ];
    expect(await run(args, { out: () => {}, error: (text) => expect(text).toBe('') })).toBe(1);
    const names = readFile(readFileSync(out), 'in-place.xlsx').tables.map(({ name }) => name);
    expect([names[0], ...names.slice(-2)]).toEqual(['Hardware', 'Compare', 'Basis']);
  });

  it('keeps the exit codes of the list after', async () => {
    expect((await compare('--fail-on', 'never')).code).toBe(0);
    const said: string[] = [];
    const streams = { out: () => {}, error: (text: string) => said.push(text) };
    expect(await run([OLD, '--compare', NEW], streams)).toBe(0);
    expect(said).toEqual([]);
  });

  it('refuses a report beside it, and a list that cannot be read, in one sentence', async () => {
    const { code, error, out } = await compare('--report', 'findings');
    expect([code, out]).toEqual([2, '']);
    expect(error).toMatch(/^A comparison is a report of its own: .*\.\n$/);
    const missing = { error: '' };
    expect(
      await run([NEW, '--compare', 'nowhere.csv'], {
        out: () => {},
        error: (text) => {
          missing.error += text;
        },
      }),
    ).toBe(2);
    expect(missing.error).toContain('nowhere.csv');
  });
});
