import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import * as spreadsheet from '@e965/xlsx';
import exceljs from 'exceljs';
import { strFromU8, unzipSync, Zip, ZipDeflate, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { withoutOwnSheets } from '../../src/core/intake/own-sheets.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import type { WorkRecord } from '../../src/core/model/change-record.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../src/core/say/safety.ts';
import { annotateWorkbook } from '../../src/io/annotate/annotate-workbook.ts';
import { readFile } from '../../src/io/read-file.ts';
import { ownColumns } from '../../src/io/write/own-columns.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';
import { editCells, openSession } from '../../src/worker/session.ts';
import { plain } from '../plain.ts';
import { type HostileForm, hostileWorkbook, LIST_PART } from './hostile-workbook.ts';
import { oneSheet, row, utf8, workbook } from './make.ts';

const SAMPLES = resolve(import.meta.dirname, '../../sample-data');
const CATALOGUE = importCatalogue(readFile(readFileSync(resolve(SAMPLES, 'demo-catalogue.csv')), 'demo-catalogue.csv'));
const BASIS = createBasis([CATALOGUE], DEFAULT_SHOP);
const DAY = '2026-01-02';
const OWN = ownColumns('mm').map(({ heading }) => heading);
/** Parts that must change: the list's sheet, and those that name sheets and styles. */
const TOUCHED = new Set([
  LIST_PART,
  'xl/workbook.xml',
  'xl/_rels/workbook.xml.rels',
  '[Content_Types].xml',
  'xl/styles.xml',
]);

const judge = (bytes: Uint8Array, sheet?: string) =>
  auditFile(readFile(bytes, 'list.xlsx'), BASIS, sheet ? { sheet } : {});

async function annotated(bytes: Uint8Array, list: AuditedList = judge(bytes)): Promise<Uint8Array> {
  const result = await annotateWorkbook(bytes, list, DAY, BASIS.parts);
  if ('refused' in result) throw new Error(result.refused);
  return result.bytes;
}

async function refusal(bytes: Uint8Array, list: AuditedList): Promise<string> {
  const result = await annotateWorkbook(bytes, list, DAY, BASIS.parts);
  return 'refused' in result ? result.refused : 'not refused';
}

/** The list with cells edited as on screen. */
function edited(bytes: Uint8Array, ...cells: readonly { row: number; column: number; text: string }[]): AuditedList {
  const session = openSession(readFile(bytes, 'list.xlsx'), [CATALOGUE], DEFAULT_SHOP, {}, () => {});
  return editCells(session, cells).session.audited;
}

/** Every cell of a sheet's text by its reference, or by its place where it has none: attributes and content as written. */
function cellsIn(xml: string): Map<string, string> {
  const cells = new Map<string, string>();
  let number = 0;
  for (const [, rowTag = '', inside = ''] of xml.matchAll(/<(?:x:)?row\b([^>]*?)(?:\/>|>(.*?)<\/(?:x:)?row>)/gs)) {
    number = Number(/ r="(\d+)"/.exec(rowTag)?.[1] ?? number + 1);
    let place = 0;
    for (const [cell] of inside.matchAll(/<(?:x:)?c\b(?:[^>]*\/>|.*?<\/(?:x:)?c>)/gs)) {
      const reference = / r="([A-Z]+\d+)"/.exec(cell)?.[1];
      cells.set(reference ?? `${number}/${place}`, cell);
      place++;
    }
  }
  return cells;
}

/** Each part as it is packed: its bytes in the zip, unread. */
function packed(bytes: Uint8Array): Map<string, string> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const parts = new Map<string, string>();
  for (let at = 0; at + 30 < bytes.length && view.getUint32(at, true) === 0x04034b50; ) {
    const from = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
    const end = from + view.getUint32(at + 18, true);
    const name = strFromU8(bytes.subarray(at + 30, at + 30 + view.getUint16(at + 26, true)));
    parts.set(name, Buffer.from(bytes.subarray(at, end)).toString('base64'));
    at = end;
  }
  return parts;
}

const FORMS: readonly (readonly [string, HostileForm])[] = [
  ['as most write it', {}],
  ['with prefixes', { prefix: 'x' }],
  ['strict', { isStrict: true }],
  ['with targets from the root', { isAbsolute: true }],
  ['without row numbers and references', { isCounted: true }],
];

describe.each(FORMS)('a hostile workbook %s', (_, form) => {
  const original = hostileWorkbook(form);

  it('keeps every part that is not ours, as packed', async () => {
    const [before, after] = [packed(original), packed(await annotated(original))];
    expect(before.size).toBeGreaterThan(25);
    for (const [name, bytes] of before) if (!TOUCHED.has(name)) expect(after.get(name) === bytes, name).toBe(true);
    const added = [...after.keys()].filter((name) => !before.has(name));
    expect(added.every((name) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name))).toBe(true);
    expect([...after.keys()].slice(0, before.size)).toEqual([...before.keys()]);
  });

  it('keeps every cell of the list as written', async () => {
    const sheet = (bytes: Uint8Array) => strFromU8(unzipSync(bytes)[LIST_PART]!);
    const [before, after] = [cellsIn(sheet(original)), cellsIn(sheet(await annotated(original)))];
    expect(before.size).toBeGreaterThan(45);
    for (const [place, cell] of before) expect(after.get(place), place).toBe(cell);
    expect(after.size).toBeGreaterThan(before.size + OWN.length);
    const numbers = [...sheet(await annotated(original)).matchAll(/<(?:x:)?row r="(\d+)"/g)].map(([, at]) =>
      Number(at),
    );
    expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
  });

  it('keeps all of the list’s sheet but rows, dimension and columns', async () => {
    const around = (bytes: Uint8Array) =>
      strFromU8(unzipSync(bytes)[LIST_PART]!)
        .replace(/<(x:)?sheetData>.*<\/(x:)?sheetData>/s, '')
        .replace(/<(x:)?cols>.*<\/(x:)?cols>/s, '')
        .replace(/<(x:)?dimension[^>]*>/, '');
    expect(around(await annotated(original))).toBe(around(original));
  });

  it('reads back as the same list with the same verdicts, our columns left out', async () => {
    const [before, after] = [judge(original), judge(await annotated(original))];
    expect(before.lines.map(({ verdict }) => verdict)).toEqual(['holds', 'fails', 'fails']);
    expect(after.sheet).toBe('Hardware');
    expect(after.columns).toEqual(before.columns);
    expect(plain(after.lines)).toEqual(plain(before.lines));
    expect(after.others).toEqual(before.others);
  });

  it('has our columns beside the list and our sheets behind the others', async () => {
    const bytes = await annotated(original);
    const { tables } = readFile(bytes, 'list.xlsm');
    expect(tables.map(({ name }) => name)).toEqual([
      'Cover',
      'Hardware',
      'Findings',
      'Findings 2',
      'Purchase',
      'Press sheet',
      'Questions',
      'Basis',
    ]);
    const list = tables.find(({ name }) => name === 'Hardware')!;
    const heads = list.rows.find(({ cells }) => cells.includes('P/N'))!.cells;
    const start = heads.indexOf('Row in file');
    expect(heads.slice(start)).toEqual(OWN);
    // Behind the drawing, which ends in column N.
    expect(start).toBe(14);
    const verdicts = list.rows.flatMap(({ number, cells }) =>
      cells[start] === String(number) ? [cells[start + 1]] : [],
    );
    expect(verdicts).toEqual(['holds', 'fails', 'fails', 'screw: not a fastener', 'total: not a fastener']);
  });
});

describe('other readers', () => {
  it('one finds our sheets, the colours of the verdicts and the old cells', async () => {
    const book = new exceljs.Workbook();
    const parts = unzipSync(await annotated(demo()));
    await book.xlsx.load(zipSync(parts) as unknown as ArrayBuffer);
    expect(book.worksheets.map(({ name }) => name)).toEqual([
      'Hardware',
      'Notes',
      'Findings',
      'Purchase',
      'Press sheet',
      'Questions',
      'Basis',
    ]);
    const sheet = book.getWorksheet('Hardware')!;
    const heads = (sheet.getRow(4).values as string[]).indexOf('Verdict');
    const fills = new Map<string, unknown>();
    sheet.getColumn(heads).eachCell((cell) => fills.set(cell.text, cell.fill));
    expect(fills.get('fails')).toMatchObject({ pattern: 'solid', fgColor: { argb: 'FFFBE4E1' } });
    expect(fills.get('holds')).toMatchObject({ pattern: 'solid', fgColor: { argb: 'FFE3F2EA' } });
    expect(sheet.getColumn(heads).hidden).toBe(false);
    expect(sheet.getCell('C68').value).toMatchObject({ formula: 'SUM(C5:C67)' });
    expect(book.getWorksheet('Basis')!.getCell('A1').font).toMatchObject({ bold: true });
  });

  it('another reads every cell of the hostile list as before', async () => {
    const read = (bytes: Uint8Array) =>
      spreadsheet.read(bytes, { cellStyles: true, cellFormula: true }).Sheets.Hardware!;
    const [before, after] = [read(hostileWorkbook()), read(await annotated(hostileWorkbook()))];
    for (const [reference, cell] of Object.entries(before)) {
      if (!reference.startsWith('!')) expect(after[reference], reference).toEqual(cell);
    }
    expect(after['!merges']).toEqual(before['!merges']);
    expect(after.P4?.v).toBe('Verdict');
    expect(after.P5?.v).toBe('holds');
  });
});

describe('edited cells', () => {
  const original = hostileWorkbook();
  const cell = async (list: AuditedList, reference: string) =>
    cellsIn(strFromU8(unzipSync(await annotated(original, list))[LIST_PART]!)).get(reference);

  it('are written as numbers or texts in their own style', async () => {
    const list = edited(
      original,
      { row: 5, column: 6, text: '1.2 mm' },
      { row: 6, column: 6, text: '1.2' },
      { row: 6, column: 7, text: '7.10' },
      { row: 5, column: 8, text: '=1+1 <b>' },
      { row: 5, column: 4, text: 'BP-07' },
      { row: 5, column: 7, text: '' },
      { row: 8, column: 5, text: '007' },
    );
    expect(await cell(list, 'G5')).toBe('<c r="G5" s="3"><v>1.2</v></c>');
    // Under a format that adds millimetres a bare number might come to mean another length.
    expect(await cell(list, 'G6')).toContain('>1.2</t>');
    expect(await cell(list, 'H6')).toBe('<c r="H6" s="2"><v>7.10</v></c>');
    expect(await cell(list, 'I5')).toBe(
      '<c r="I5" s="2" t="inlineStr"><is><t xml:space="preserve">=1+1 &lt;b&gt;</t></is></c>',
    );
    expect(await cell(list, 'E5')).toContain('>BP-07<');
    expect(await cell(list, 'H5')).toBe('<c r="H5" s="3"/>');
    expect(await cell(list, 'F8')).toBe('<c r="F8" s="2" t="inlineStr"><is><t xml:space="preserve">007</t></is></c>');
    const read = judge(await annotated(original, list));
    expect(read.lines[0]?.line.cells).toEqual(list.lines[0]?.line.cells);
  });

  it('lose their formula, and with it the stored order of calculation', async () => {
    const list = edited(original, { row: 7, column: 3, text: '9' });
    expect(await cell(list, 'D7')).toBe('<c r="D7" s="2"><v>9</v></c>');
    expect(await cell(list, 'D6')).toContain('<f t="shared"');
    const parts = unzipSync(await annotated(original, list));
    expect(Object.keys(parts)).not.toContain('xl/calcChain.xml');
    expect(strFromU8(parts['[Content_Types].xml']!) + strFromU8(parts['xl/_rels/workbook.xml.rels']!)).not.toMatch(
      /calcChain/,
    );
    expect(strFromU8(parts['xl/workbook.xml']!)).toContain('<calcPr calcId="191029" fullCalcOnLoad="1"/>');
  });

  it('leave the order of calculation alone where no formula went', async () => {
    const parts = unzipSync(await annotated(original, edited(original, { row: 5, column: 6, text: '1.2' })));
    expect(Object.keys(parts)).toContain('xl/calcChain.xml');
  });

  it('are refused where other cells live on their formula', async () => {
    expect(await refusal(original, edited(original, { row: 6, column: 3, text: '5' }))).toContain('Cell D6');
    const merged = oneSheet(
      row(1, 'Part number', 'Material', 'Thickness (mm)', 'Qty') +
        row(2, 'NUT-M4-10-CS', 'DC01', 1.5, 4) +
        row(3, 'NUT-M5-15-CS', '', 1.5, 4),
      { after: '<mergeCells><mergeCell ref="B2:B3"/></mergeCells>' },
    );
    expect(await refusal(merged, edited(merged, { row: 3, column: 1, text: 'DC04' }))).toContain('merged block');
    expect(await refusal(merged, edited(merged, { row: 2, column: 1, text: 'DC04' }))).toContain('not refused');
  });
});

describe('what is not written into', () => {
  const original = hostileWorkbook();
  it.each([
    ['a protected structure', hostileWorkbook({ workbook: '<workbookProtection lockStructure="1"/>' }), 'structure'],
    ['a signed workbook', hostileWorkbook({ parts: { '_xmlsignatures/sig1.xml': '<Signature/>' } }), 'signed'],
    [
      'a protected sheet',
      oneSheet(row(1, 'Part number', 'Material', 'Thickness (mm)', 'Qty') + row(2, 'NUT-M4-10-CS', 'DC01', 1.5, 4), {
        after: '<sheetProtection sheet="1"/>',
      }),
      'protected',
    ],
    [
      'a sheet full to its last column',
      oneSheet(
        row(1, 'Part number', 'Material', 'Thickness (mm)', 'Qty') +
          '<row r="2"><c r="A2" t="inlineStr"><is><t>NUT-M4-10-CS</t></is></c><c r="XFD2"><v>1</v></c></row>',
      ),
      'no free columns',
    ],
  ])('is %s: one sentence says so', async (_, bytes, words) => {
    expect(await refusal(bytes, judge(bytes))).toMatch(new RegExp(`^[^.]*${words}[^.]*\\.$`));
  });

  it('is a list that came as text, lies on another sheet or over the caps', async () => {
    const text = utf8('Part number,Material,Thickness (mm),Qty\nNUT-M4-10-CS,DC01,1.5,4\n');
    expect(await refusal(text, judge(text))).toBe('The list did not come in a workbook.');
    const list = judge(original);
    expect(await refusal(original, { ...list, sheet: 'Elsewhere' })).toContain('Elsewhere');
    const damaged = original.slice(0, original.length - 60);
    expect(await refusal(damaged, list)).toContain('damaged');
  });
});

describe('a plain workbook', () => {
  it('without styles that could be extended gets none', async () => {
    const bytes = oneSheet(
      row(1, 'Part number', 'Material', 'Thickness (mm)', 'Qty') + row(2, 'NUT-M4-10-CS', 'DC01', 1.5, 4),
    );
    const parts = unzipSync(await annotated(bytes));
    expect(strFromU8(parts['xl/styles.xml']!)).toBe(strFromU8(unzipSync(bytes)['xl/styles.xml']!));
    expect(strFromU8(parts['xl/worksheets/sheet1.xml']!)).not.toContain(' s="');
    expect(strFromU8(parts['xl/worksheets/sheet2.xml']!)).not.toContain(' s="');
  });

  it('holds what the new workbook holds, cell for cell', async () => {
    const list = judge(demo());
    const fresh = readFile(await writeWorkbook(list, DAY, BASIS.parts), 'new.xlsx').tables;
    const inPlace = readFile(await annotated(demo()), 'old.xlsx').tables;
    for (const name of ['Findings', 'Purchase', 'Press sheet', 'Questions', 'Basis']) {
      const table = (all: typeof fresh) => all.find((one) => one.name === name);
      expect(table(fresh)?.rows.length).toBeGreaterThan(0);
      expect(table(inPlace)).toEqual(table(fresh));
    }
    const own = (all: typeof fresh, headerRow: number) => {
      const rows = all.find((one) => one.name === 'Hardware')!.rows.filter(({ number }) => number >= headerRow);
      const start = rows[0]!.cells.indexOf('Row in file');
      return rows.map(({ cells }) => cells.slice(start)).filter(([first = '']) => /^\d+$|^Row in file$/.test(first));
    };
    expect(own(inPlace, 4)).toEqual(own(fresh, 1));
  });

  it('annotated again has one set of columns, with the new verdicts', async () => {
    const once = await annotated(demo());
    const list = edited(once, { row: 6, column: 5, text: '0.5' });
    const twice = await annotated(once, list);
    const sheet = readFile(twice, 'list.xlsx').tables.find(({ name }) => name === 'Hardware')!;
    const heads = sheet.rows.find(({ number }) => number === 4)!.cells;
    expect(heads.filter((heading) => heading === 'Verdict')).toHaveLength(1);
    const at = heads.indexOf('Verdict');
    expect(sheet.rows.find(({ number }) => number === 6)?.cells.slice(at, at + 2)).toEqual([
      'fails',
      expect.stringContaining('0.50'),
    ]);
    expect(judge(twice).totals).toEqual(list.totals);
    const notes = sheet.rows.filter(({ cells }) => cells.some((cell) => cell === SAFETY_SHORT || cell === DEMO_WORDS));
    expect(notes.map(({ number, cells }) => [number, cells.findIndex((cell) => cell !== '')])).toEqual([
      [70, at - 1],
      [71, at - 1],
    ]);
    expect(readFile(twice, 'list.xlsx').tables.map(({ name }) => name)).toContain('Findings 2');
  });

  it('exported as new reads back as the same list too', async () => {
    const list = judge(demo());
    const again = judge(await writeWorkbook(list, DAY, BASIS.parts));
    expect(again.lines.map(({ verdict }) => verdict)).toEqual(list.lines.map(({ verdict }) => verdict));
    expect(again.columns.map(({ heading }) => heading)).not.toContain('Verdict');
  });

  it('has sheets of ours that are never taken for lists', async () => {
    const list = judge(demo());
    const detail = { row: 6, where: 'Qty', before: '1', after: '2' };
    const work: WorkRecord = {
      concessions: [
        { row: 9, rule: 'clinch/hardness', facts: '', outcome: 'fails', says: '', reason: 'r', by: 'A', date: DAY },
      ],
      changes: [{ when: '2026-01-02T03:04:05Z', by: 'A', what: 'edit', undone: false, details: [detail] }],
    };
    const written = readFile(await writeWorkbook(list, DAY, BASIS.parts, work), 'new.xlsx');
    expect(written.tables).toHaveLength(8);
    expect(withoutOwnSheets(written).tables.map(({ name }) => name)).toEqual(['Hardware']);
  });

  it('is the list even beside a sheet of ours that stands before it', () => {
    const headings = ['Part number', 'Material', 'Thickness (mm)', 'Qty', ...OWN];
    const bytes = workbook({
      sheets: [
        {
          name: 'Press sheet',
          data: row(1, 'Panel', 'Order', 'Verdict', 'Part number') + row(2, 'A', 1, 'holds', 'B'),
        },
        { name: 'L', data: row(1, ...headings) + row(2, 'NUT-M4-10-CS', 'DC01', 1.5, 4, 2, 'fails') },
      ],
    });
    const list = judge(bytes);
    expect(list.sheet).toBe('L');
    expect(list.columns).toHaveLength(4);
    expect(list.lines[0]?.line.cells).toHaveLength(4);
  });

  it('packed as a stream, with sizes behind the parts, is copied all the same', async () => {
    const chunks: Uint8Array[] = [];
    const stream = new Zip((error, chunk) => {
      if (error) throw error;
      chunks.push(chunk);
    });
    const parts = unzipSync(hostileWorkbook());
    for (const [name, bytes] of Object.entries(parts)) {
      const part = new ZipDeflate(name);
      stream.add(part);
      part.push(bytes, true);
    }
    stream.end();
    const after = unzipSync(await annotated(new Uint8Array(Buffer.concat(chunks))));
    for (const [name, bytes] of Object.entries(parts)) {
      if (!TOUCHED.has(name)) expect(Buffer.compare(after[name]!, bytes), name).toBe(0);
    }
  });

  it('comes out in the same bytes twice', async () => {
    const bytes = hostileWorkbook();
    const sheetOf = async () => strFromU8(unzipSync(await annotated(bytes))[LIST_PART]!);
    expect(await sheetOf()).toBe(await sheetOf());
  });
});

function demo(): Uint8Array {
  return new Uint8Array(readFileSync(resolve(SAMPLES, 'recorder-cabinet.xlsx')));
}
