import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { DEMO_WORDS, SAFETY_SHORT, SAFETY_WORDS } from '../../src/core/say/safety.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';
import { judged, NUT } from './rollup-list.ts';

const folder = mkdtempSync(join(tmpdir(), 'clinchsheet-'));
const file = join(folder, 'list.csv');
writeFileSync(
  file,
  'Part number,Panel,Material,Thickness (mm),Qty\nNUT-M4-10-CS,P1,DC01,1.5,4\nNUT-M4-10-CS,P1,DC01,1.5,\nNUT-M4-10-CS,P2,,1.5,4\n',
);

async function audit(...args: readonly string[]) {
  const said = { out: '', error: '' };
  const code = await run([file, ...args], {
    out: (text) => {
      said.out += text;
    },
    error: (text) => {
      said.error += text;
    },
  });
  return { code, ...said };
}

const REPORTS = ['purchase', 'press', 'questions'] as const;

describe('reports on the command line', () => {
  it.each(REPORTS)(
    '%s says once, at the foot, that it approves nothing and that the data are invented',
    async (report) => {
      const safety = report === 'press' ? (SAFETY_WORDS[0] ?? '') : SAFETY_SHORT;
      for (const format of ['table', 'csv', 'json']) {
        const { out, code } = await audit('--report', report, '--format', format);
        expect(code).toBe(0);
        expect(out.split(safety), format).toHaveLength(2);
        expect(out.split(DEMO_WORDS), format).toHaveLength(2);
      }
    },
  );

  it('exit codes are those of the findings', async () => {
    expect((await audit('--report', 'purchase', '--fail-on', 'unknown')).code).toBe(1);
    expect((await audit('--report', 'nonsense')).code).toBe(2);
    expect((await audit('--report', 'press', '--format', 'xlsx', '--out', join(folder, 'x.xlsx'))).code).toBe(2);
  });

  it('JSON is the roll-up itself', async () => {
    const json = async (report: string) =>
      JSON.parse((await audit('--report', report, '--format', 'json', '--build', '10')).out);
    expect(await json('purchase')).toMatchObject({
      report: 'purchase',
      list: { file: 'list.csv' },
      builds: 10,
      lines: [{ partNumber: 'NUT-M4-10-CS', rows: [2], perBuild: 4, used: 40 }],
      heldBack: [{ rows: [{ row: 4 }] }],
      uncounted: [{ rows: [{ row: 3 }] }],
    });
    expect(await json('press')).toMatchObject({
      builds: 10,
      panels: [{ steps: [{ rows: [2, 3], lot: null }] }, { notYet: [{ row: 4 }] }],
    });
    expect(await json('questions')).toMatchObject({ questions: [{ rows: [3] }, { rows: [4] }] });
  });

  it('CSV begins with its headings, and every part stands in it', async () => {
    expect((await audit('--report', 'purchase', '--format', 'csv')).out).toMatch(
      /^Part number,Kind,.*\r\nNUT-M4-10-CS,/,
    );
    expect((await audit('--report', 'press', '--format', 'csv')).out).toMatch(
      /^Panel,Order,.*\r\nP1,1,holds,NUT-M4-10-CS,/,
    );
    expect((await audit('--report', 'questions', '--format', 'csv')).out).toMatch(
      /^No\.,Panel,.*Answer\r\n1,Panel P1,3,/,
    );
  });
});

describe('reports in the workbook', () => {
  it('stand behind the findings, with an empty column for answers and the safety words at the foot', async () => {
    const { list, parts } = judged(['=NUT,P1,DC01,1.5,5.6,4', 'NUT-A,P1,DC01,1.5,5.6,4'], [`NUT-A,${NUT},,,,,,,`]);
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load((await writeWorkbook(list, '2025-01-01', parts)) as unknown as ArrayBuffer);
    const names = workbook.worksheets.map(({ name }) => name);
    expect(names.slice(1, 5)).toEqual(['Findings', 'Purchase', 'Press sheet', 'Questions']);
    const text = (name: string, row: number, column: number) => workbook.getWorksheet(name)?.getCell(row, column).text;
    expect([text('Questions', 1, 8), text('Questions', 2, 8)]).toEqual(['Answer', '']);
    expect(text('Questions', 2, 4)).toBe('=NUT');
    for (const name of names.slice(2, 5)) {
      const sheet = workbook.getWorksheet(name);
      expect(text(name, sheet?.rowCount ?? 0, 1)).toBe(name === 'Press sheet' ? SAFETY_WORDS.at(-1) : SAFETY_SHORT);
    }
  });

  it('a list named like one of our sheets gets another name', async () => {
    const { list, parts } = judged(['NUT-A,P1,DC01,1.5,5.6,4'], [`NUT-A,${NUT},,,,,,,`]);
    const workbook = new exceljs.Workbook();
    const bytes = await writeWorkbook({ ...list, sheet: 'purchase' }, '2025-01-01', parts);
    await workbook.xlsx.load(bytes as unknown as ArrayBuffer);
    expect(workbook.worksheets[0]?.name).toBe('purchase 2');
  });
});
