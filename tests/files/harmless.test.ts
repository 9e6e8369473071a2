import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as spreadsheet from '@e965/xlsx';
import { strFromU8, unzipSync } from 'fflate';
import { readXlsx } from 'hucre';
import Papa from 'papaparse';
import { afterAll, describe, expect, it } from 'vitest';
import { outputName } from '../../src/app/output-name.ts';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { concede } from '../../src/core/concede/standing.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import type { WorkRecord } from '../../src/core/model/change-record.ts';
import type { RawFile } from '../../src/core/model/raw.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { rollUpPress } from '../../src/core/rollup/press.ts';
import { pressReport } from '../../src/core/rollup/press-report.ts';
import { rollUpPurchase } from '../../src/core/rollup/purchase.ts';
import { purchaseReport } from '../../src/core/rollup/purchase-report.ts';
import { askSender } from '../../src/core/rollup/questions.ts';
import { questionsReport } from '../../src/core/rollup/questions-report.ts';
import { annotateWorkbook } from '../../src/io/annotate/annotate-workbook.ts';
import { readFile } from '../../src/io/read-file.ts';
import { writeCsv } from '../../src/io/write/csv.ts';
import { writeReportCsv } from '../../src/io/write/report-csv.ts';
import { safeSheetName } from '../../src/io/write/safe-text.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';
import { editCells, openSession } from '../../src/worker/session.ts';
import { AWKWARD, FORMULAS, NUMBERS } from './hostile-texts.ts';
import { WRITERS } from './writers.ts';

type Grid = readonly (readonly string[])[];

const DAY = '2026-01-02';
const HEADINGS = 'Part number,Description,Qty,Panel,Material,Thickness (mm),Hole (mm),Finish,Note,Supplier'.split(',');
const GOOD = ['NUT-A', 'Clinch nut M4', '4', 'P1', 'DC01', '1.5', '5.6', '', '', ''];
const PART_HEADINGS =
  'partNumber,kind,thread,material,hardnessMin,sheetMinMm,holeMm,holePlusMm,holeMinusMm,edgeMm,stocked,packSize,moq,unitPrice,currency,leadDays,supersededBy,supplier,note';
const TEXTS = [...FORMULAS, ...NUMBERS, ...AWKWARD];
const folder = mkdtempSync(join(tmpdir(), 'clinchsheet-harmless-'));
const hasOffice = spawnSync('soffice', ['--version']).status === 0;

afterAll(() => rmSync(folder, { recursive: true }));

/** Every text as a part on file, its supplier and successor too. */
const CATALOGUE = importCatalogue(
  rawFile('parts.csv', [
    PART_HEADINGS.split(','),
    ...['NUT-A', ...FORMULAS].map((text) => {
      const data = 'clinch nut,M4,carbon-steel-hardened,HRC 32,1,5.6,0.08,0,9,50,100,100,0.1,EUR,5'.split(',');
      return [text, ...data, text, text, text];
    }),
  ]),
);
const BASIS = createBasis([CATALOGUE], DEFAULT_SHOP);

/** Columns that hold the same text in one row, in turn: the rest of the row is without fault. */
const TURNS: readonly (readonly number[])[] = [
  [1, 2, 6],
  [3, 4, 7],
  [0, 5, 8, 9],
];
/** Every text in every column; every text as a listed part on a panel of that name; numbers in front of what they could calculate. */
const ROWS: Grid = [
  ...TEXTS.flatMap((text) => TURNS.map((turn) => GOOD.map((cell, column) => (turn.includes(column) ? text : cell)))),
  ...FORMULAS.map((text) => [text, text, '4', text, 'DC01', '1.5', '5.6', '', text, text]),
  ...NUMBERS.map((text) => [text, "4*cmd|' /C calc'!A0;x", '4', 'P1', 'DC01', '1.5', '5.6', '', '', '']),
];

function rawFile(file: string, grid: Grid): RawFile {
  const rows = grid.map((cells, index) => ({ number: index + 1, cells }));
  return { file, format: 'csv', tables: [{ name: '', rows }], notices: [] };
}

const listOf = (grid: Grid): AuditedList => auditFile(rawFile('list.csv', grid), BASIS, { headerRow: 1 });
const LIST = listOf([HEADINGS, ...ROWS]);
const REPORTS = [
  purchaseReport(LIST, rollUpPurchase(LIST, BASIS.parts)),
  pressReport(LIST, rollUpPress(LIST, BASIS.parts)),
  questionsReport(LIST, askSender(LIST)),
];

/** The fields of a CSV text by the letter of RFC 4180: what stands in quotes is taken as it is. */
function fieldsOf(csv: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain = '', end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    row.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === ',') continue;
    rows.push(row);
    row = [];
  }
  return rows;
}

/** Character codes that show nothing or a blank. */
const isUnseen = (code: number) =>
  code <= 0x20 ||
  (code >= 0x7f && code <= 0xa0) ||
  [0xad, 0x1680, 0x180e, 0x3000, 0x3164, 0xfeff].includes(code) ||
  (code >= 0x2000 && code <= 0x200f) ||
  (code >= 0x2028 && code <= 0x202f) ||
  (code >= 0x205f && code <= 0x206f);

/** Does a field begin as a formula does, whatever is unseen before it? A number with its sign does not, nor a lone dash. */
function beginsLikeFormula(field: string): boolean {
  if (['\t', '\r', '\n'].includes(field.charAt(0))) return true;
  let at = 0;
  while (at < field.length && isUnseen(field.charCodeAt(at))) at++;
  const shown = field.slice(at);
  if (!'=+-@＝＋－＠﹦﹢﹣﹫'.includes(shown.charAt(0)) || shown === '') return false;
  const unsigned = shown.replace(/^[+-] ?/, '').trim();
  return !(unsigned === '' && shown.startsWith('-')) && !/^[\d.,]+(e[+-]?\d+)?%?$/i.test(unsigned);
}

/** What a text file keeps: all but control characters. */
const kept = (text: string) => text.replace(/[\x00-\x08\x0b\x0c\x0e-\x1f]/g, '');
const withoutApostrophes = (text: string) => text.replaceAll("'", '');

/** Every part of a workbook as text. */
const partsOf = (bytes: Uint8Array) => Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]);
const formulasIn = (bytes: Uint8Array) =>
  partsOf(bytes).flatMap(([name, xml = '']) => [...xml.matchAll(/<(?:x:)?f[\s>/]/g)].map(() => name));

/** A cell as every reader of workbooks gives it back: one line break, nothing that XML cannot hold. */
const inWorkbook = (text: string) =>
  kept(text)
    .replace(/[\ufffe\uffff]/g, '')
    .replace(/\r\n?/g, '\n')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');

describe('texts that begin like a formula', () => {
  it('are many, and each stands in every column', () => {
    expect(FORMULAS.filter(beginsLikeFormula).length).toBeGreaterThan(40);
    for (const text of FORMULAS)
      for (const column of HEADINGS.keys()) expect(ROWS.some((row) => row[column] === text)).toBe(true);
  });

  it.each(NUMBERS)('%j is a number, or none, and stays as it is in CSV', (text) => {
    expect(beginsLikeFormula(text)).toBe(false);
    expect(fieldsOf(writeCsv(listOf([HEADINGS, GOOD.with(8, text)])))[1]?.[8]).toBe(text);
  });
});

describe('a list as CSV', () => {
  const csv = writeCsv(LIST);
  const fields = fieldsOf(csv);

  it('has no field that begins like a formula, and says what the list says', () => {
    expect(fields.flat().filter(beginsLikeFormula)).toEqual([]);
    expect(fields.length).toBe(ROWS.length + 2);
    for (const [index, row] of ROWS.entries()) {
      const written = fields[index + 1]?.slice(0, HEADINGS.length) ?? [];
      expect(written.map(withoutApostrophes)).toEqual(row.map((cell) => withoutApostrophes(kept(cell))));
    }
  });

  it('reads the same by a reader of its own', () => {
    const { data, errors } = Papa.parse<string[]>(csv.trimEnd(), { delimiter: ',', newline: '\r\n' });
    expect(errors).toEqual([]);
    expect(data).toEqual(fields);
  });

  it.each([';', '\t'])('cut at %j instead, has none either', (delimiter) => {
    const { data } = Papa.parse<string[]>(csv, { delimiter });
    expect(
      data.flat().filter((field) => beginsLikeFormula(field) && !/^[+-] ?[\d.,]+(e[+-]?\d+)?%?"/i.test(field)),
    ).toEqual([]);
    expect(csv.split(/[;\t\r\n]/).filter((piece) => /^\s*[=@]/.test(piece))).toEqual([]);
  });

  it('has safe headings', () => {
    const list = listOf([[...HEADINGS, ...FORMULAS], [...GOOD]]);
    const [headings = []] = fieldsOf(writeCsv(list));
    expect(headings.filter(beginsLikeFormula)).toEqual([]);
    expect(headings.length).toBeGreaterThan(HEADINGS.length + FORMULAS.length);
  });

  it('keeps a long text whole', () => {
    const long = 'long '.repeat(8000);
    expect(fieldsOf(writeCsv(listOf([HEADINGS, GOOD.with(8, long)])))[1]?.[8]).toBe(long);
  });

  it('is left as it is only when asked', () => {
    const plain = fieldsOf(writeCsv(LIST, [], { escapes: false }));
    expect(plain.slice(1, -1).map((row) => row.slice(0, HEADINGS.length))).toEqual(ROWS);
    expect(plain.flat().filter(beginsLikeFormula).length).toBeGreaterThan(300);
  });
});

describe('a report as CSV', () => {
  it.each(['purchase', 'press', 'questions'].map((name, at) => [name, at] as const))('%s: is safe', (_, at) => {
    const report = REPORTS[at]!;
    const csv = writeReportCsv(report);
    const fields = fieldsOf(csv);
    expect(fields.flat().filter(beginsLikeFormula)).toEqual([]);
    const { data } = Papa.parse<string[]>(csv.trimEnd(), { delimiter: ',', newline: '\r\n' });
    expect(data).toEqual(fields);
    const plain = fieldsOf(writeReportCsv(report, { escapes: false }));
    expect(plain.flat().filter(beginsLikeFormula).length).toBeGreaterThan(0);
    expect(plain.flat().map(kept).map(withoutApostrophes)).toEqual(fields.flat().map(withoutApostrophes));
  });
});

describe('a concession in CSV', () => {
  const list = listOf([HEADINGS, GOOD.with(3, 'P2').with(5, '0.5'), GOOD]);
  const line = list.lines[0]!;
  const concession = concede(line, line.decidedBy!, { reason: '=1+1', by: '+x', date: DAY })!;

  it('stands beside the verdict of its row', () => {
    const [headings = [], first = [], second = []] = fieldsOf(writeCsv(list, [concession]));
    const at = headings.indexOf('Conceded');
    expect(headings[at - 1]).toBe('Verdict');
    expect([first[at - 1], first[at]]).toEqual(['fails', expect.stringMatching(/^conceded.*: =1\+1$/)]);
    expect([second[at - 1], second[at]]).toEqual(['holds', '']);
  });

  it('is no column where none stands', () => {
    const lapsed = { ...concession, facts: '[]' };
    for (const concessions of [[], [lapsed]]) expect(writeCsv(list, concessions)).not.toContain('Conceded');
  });

  it('is a column of ours when the file is read as a list again', () => {
    const read = readFile(new TextEncoder().encode(writeCsv(list, [concession])), 'list.csv');
    expect(
      auditFile(read, BASIS)
        .columns.map(({ heading }) => heading)
        .filter(Boolean),
    ).toEqual(HEADINGS);
  });
});

const WORK: WorkRecord = {
  concessions: FORMULAS.map((text) => ({
    row: 2,
    rule: 'clinch/edge',
    outcome: 'fails',
    says: text,
    facts: '[]',
    reason: text,
    by: text,
    date: DAY,
  })),
  changes: FORMULAS.map((text) => ({
    when: '2026-01-02T10:00:00Z',
    by: text,
    what: text,
    undone: false,
    details: [{ row: 2, where: text, before: text, after: text }],
  })),
};

describe('a new workbook', () => {
  const bytes = writeWorkbook(LIST, DAY, BASIS.parts, WORK);

  it('holds every text as text, the same by two readers, and no formula', { timeout: 60_000 }, async () => {
    const book = await bytes;
    expect(formulasIn(book)).toEqual([]);
    const one = spreadsheet.read(book, { cellFormula: true });
    const other = await readXlsx(book);
    const sheet = one.Sheets[one.SheetNames[0]!]!;
    for (const [index, row] of ROWS.entries()) {
      for (const [column, text] of row.entries()) {
        const cell = sheet[spreadsheet.utils.encode_cell({ r: index + 1, c: column })];
        const value = other.sheets[0]?.rows[index + 1]?.[column];
        const wanted = inWorkbook(text);
        if (typeof value === 'number') expect(String(value), text).toBe(String(Number(text)));
        else expect(value ?? '', JSON.stringify(text)).toBe(wanted);
        if (typeof value === 'string') expect([cell?.t, cell?.f, cell?.v]).toEqual(['s', undefined, wanted]);
      }
    }
    for (const name of one.SheetNames) {
      const cells = Object.entries(one.Sheets[name]!).filter(([at]) => !at.startsWith('!'));
      expect(cells.filter(([, { f }]) => f !== undefined)).toEqual([]);
    }
  });

  it('says that a text was cut, at what a cell holds', async () => {
    const long = `${'x'.repeat(32_765)}🔩${'y'.repeat(8000)}`;
    const book = spreadsheet.read(await writeWorkbook(listOf([HEADINGS, GOOD.with(8, long)]), DAY, BASIS.parts));
    const { v: text } = book.Sheets[book.SheetNames[0]!]?.I2 ?? {};
    expect(text).toBe(`${'x'.repeat(32_765)}…`);
    expect(book.Sheets[book.SheetNames[0]!]?.A2?.v).toBe('NUT-A');
  });

  it.each([
    'a/b\\c:*?[d]',
    "'quoted'",
    " ' x ' ",
    'History',
    '',
    '=1+1',
    '_x0041_',
    `${'n'.repeat(30)}🔩`,
    'tab\tline\nx',
    '\u0000',
  ])('takes the sheet name %j', async (name) => {
    const book = await writeWorkbook({ ...listOf([HEADINGS, GOOD]), sheet: name }, DAY, BASIS.parts);
    const names = spreadsheet.read(book, { bookSheets: true }).SheetNames;
    expect((await readXlsx(book)).sheets.map((sheet) => sheet.name)).toEqual(names);
    expect(names[0]).toMatch(/^(?!')[^\\/:*?[\]\r\n\t]{1,31}(?<!')$/);
    expect(names[0]?.trim()).toBe(names[0]);
    expect(safeSheetName(name, [names[0]!.toUpperCase()]).toLowerCase()).not.toBe(names[0]!.toLowerCase());
  });
});

describe('the workbook that the list came in', () => {
  const rows = [HEADINGS, ...FORMULAS.flatMap((text) => [GOOD, GOOD.with(1, text)])];
  const edits = TEXTS.map((text, index) => ({ row: index + 2, column: 8, text }));

  it('holds every text and every edit as text, and no formula', { timeout: 60_000 }, async () => {
    const original = await WRITERS['@e965/xlsx 0.20.3']!([{ name: 'List', rows }]);
    const raw = readFile(original, 'list.xlsx');
    const session = openSession(raw, [CATALOGUE], DEFAULT_SHOP, { headerRow: 1 }, () => {});
    const list = editCells(session, edits).session.audited;
    const result = await annotateWorkbook(original, list, DAY, BASIS.parts, WORK);
    if ('refused' in result) throw new Error(result.refused);
    expect(formulasIn(result.bytes)).toEqual([]);
    const other = await readXlsx(result.bytes);
    const book = spreadsheet.read(result.bytes, { cellFormula: true });
    const sheet = book.Sheets[book.SheetNames[0]!]!;
    for (const { row, column, text } of edits) {
      const wanted = inWorkbook(text);
      expect(other.sheets[0]?.rows[row - 1]?.[column], JSON.stringify(text)).toBe(wanted);
      expect(sheet[spreadsheet.utils.encode_cell({ r: row - 1, c: column })]).toMatchObject({ t: 's', v: wanted });
    }
    for (const [index, text] of FORMULAS.entries()) expect(other.sheets[0]?.rows[index * 2 + 2]?.[1]).toBe(text);
  });
});

describe('the name of a file that is saved', () => {
  it.each([
    ['list.xlsx', 'list-judged.csv'],
    ['../../etc/passwd', 'etc passwd-judged.csv'],
    ['C:\\lists\\a.csv', 'C lists a-judged.csv'],
    ['what? "a*b" <x>|y.csv', 'what a b x y-judged.csv'],
    ['gpj.exe\u202ecsv.xlsx', 'gpj.exe csv-judged.csv'],
    ['.csv', 'list-judged.csv'],
    ['..', 'list-judged.csv'],
    ['a\u0000b\n.csv', 'a b-judged.csv'],
    [`${'🔩'.repeat(300)}.csv`, `${'🔩'.repeat(120)}-judged.csv`],
    ['lone \ud83d.csv', 'lone-judged.csv'],
    ['Größe ⌀ 螺母.xlsx', 'Größe ⌀ 螺母-judged.csv'],
  ])('%j becomes %j', (list, wanted) => expect(outputName(list, 'judged.csv')).toBe(wanted));
});

const title = hasOffice
  ? 'opened by an office program'
  : 'SKIPPED, NO OFFICE PROGRAM FOUND: opened by an office program';

describe(title, () => {
  /** The file opened and saved again as a workbook. */
  function opened(name: string, content: string | Uint8Array, filter: string): Uint8Array {
    const profile = `-env:UserInstallation=file://${join(folder, 'profile')}`;
    const out = join(folder, 'out');
    writeFileSync(join(folder, name), content);
    const given = filter === '' ? [] : [`--infilter=CSV:${filter}`];
    spawnSync('soffice', [
      profile,
      '--headless',
      ...given,
      '--convert-to',
      'xlsx',
      '--outdir',
      out,
      join(folder, name),
    ]);
    return readFileSync(join(out, name.replace(/\w+$/, 'xlsx')));
  }

  it.skipIf(!hasOffice).each([
    ['comma', '44,34,76,1'],
    ['semicolon', '59,34,76,1'],
    ['tab', '9,34,76,1'],
    ['several at once', '44/59/9,34,76,1'],
  ])('CSV, cut at the %s: nothing is calculated', { timeout: 120_000 }, (name, filter) => {
    const found = formulasIn(opened(`${name}.csv`, writeCsv(LIST), filter));
    expect(found).toEqual([]);
  });

  it.skipIf(!hasOffice)('CSV left as it is: something is calculated', { timeout: 120_000 }, () => {
    expect(
      formulasIn(opened('plain.csv', writeCsv(LIST, [], { escapes: false }), '44,34,76,1')).length,
    ).toBeGreaterThan(50);
  });

  it.skipIf(!hasOffice)('a report and a workbook: nothing is calculated', { timeout: 120_000 }, async () => {
    for (const [at, report] of REPORTS.entries())
      expect(formulasIn(opened(`report-${at}.csv`, writeReportCsv(report), '44,34,76,1'))).toEqual([]);
    expect(formulasIn(opened('new.xlsx', await writeWorkbook(LIST, DAY, BASIS.parts, WORK), ''))).toEqual([]);
  });
});
