import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { strFromU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { concede } from '../../src/core/concede/standing.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import { NO_WORK } from '../../src/core/model/change-record.ts';
import type { Concession } from '../../src/core/model/concession.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { annotateWorkbook } from '../../src/io/annotate/annotate-workbook.ts';
import { stretchesOf } from '../../src/io/annotate/stretches.ts';
import { readFile } from '../../src/io/read-file.ts';
import { Stopped } from '../../src/io/write/writing.ts';
import { oneSheet, row } from './make.ts';

const SAMPLES = resolve(import.meta.dirname, '../../sample-data');
const CATALOGUE = importCatalogue(readFile(readFileSync(resolve(SAMPLES, 'demo-catalogue.csv')), 'demo-catalogue.csv'));
const BASIS = createBasis([CATALOGUE], DEFAULT_SHOP);
const DAY = '2026-01-02';
const HEAD = row(1, 'Part number', 'Material', 'Thickness (mm)', 'Qty');
const PART = 'NUT-M4-10-CS';

const judge = (bytes: Uint8Array) => auditFile(readFile(bytes, 'list.xlsx'), BASIS);

async function annotated(bytes: Uint8Array, concessions: readonly Concession[] = [], list = judge(bytes)) {
  const result = await annotateWorkbook(bytes, list, DAY, BASIS.parts, { ...NO_WORK, concessions });
  if ('refused' in result) throw new Error(result.refused);
  return result.bytes;
}

const part = (bytes: Uint8Array, name: string) => strFromU8(unzipSync(bytes)[name]!);
const headingsOf = (bytes: Uint8Array) => readFile(bytes, 'list.xlsx').tables[0]?.rows[0]?.cells ?? [];

describe('a sheet whose print is made to fit', () => {
  const fits = '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>';
  const sheet = (after = '', workbookExtras = '') =>
    oneSheet(HEAD + row(2, PART, 'DC01', 1.5, 4), { before: fits, after, workbookExtras, name: "Jo's list" });
  const areas = (bytes: Uint8Array) =>
    [...part(bytes, 'xl/workbook.xml').matchAll(/<definedName name="_xlnm.Print_Area"[^>]*>([^<]*)</g)].map(
      ([, area]) => area,
    );

  it('prints the columns that it had, whole, so that ours do not make it tiny', async () => {
    expect(areas(await annotated(sheet()))).toEqual(["'Jo''s list'!$A:$D"]);
  });

  it('is left alone where it may take as many pages across as it likes, or does not fit at all', async () => {
    expect(areas(await annotated(sheet('<pageSetup fitToWidth="0" fitToHeight="1"/>')))).toEqual([]);
    expect(areas(await annotated(oneSheet(HEAD + row(2, PART, 'DC01', 1.5, 4))))).toEqual([]);
  });

  it('keeps the area that the user has set', async () => {
    const own = `<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">'Jo''s list'!$A$1:$C$2</definedName></definedNames>`;
    expect(areas(await annotated(sheet('', own)))).toEqual(["'Jo''s list'!$A$1:$C$2"]);
  });

  it('has one area still when it is annotated again', async () => {
    expect(areas(await annotated(await annotated(sheet())))).toEqual(["'Jo''s list'!$A:$D"]);
  });

  it('has our sheets behind it, each with its first row on every page', async () => {
    const names = part(await annotated(sheet()), 'xl/workbook.xml');
    expect(names).toContain('<definedName name="_xlnm.Print_Titles" localSheetId="1">\'Findings\'!$1:$1</definedName>');
  });
});

describe('a column of concessions', () => {
  const bytes = (more = '') => oneSheet(HEAD + row(2, PART, 'DC01', 0.2, 4) + row(3, PART, 'DC01', 1.5, 4) + more);
  const conceded = (list: AuditedList) => {
    const [line] = list.lines;
    return concede(line!, line!.decidedBy!, { reason: 'tried', by: 'R. Vale', date: DAY })!;
  };

  it('stands beside the verdict, who and when with it', async () => {
    const list = judge(bytes());
    const after = await annotated(bytes(), [conceded(list)], list);
    const at = headingsOf(after).indexOf('Conceded');
    expect(headingsOf(after)[at - 1]).toBe('Verdict');
    expect(readFile(after, 'list.xlsx').tables[0]?.rows[1]?.cells[at]).toMatch(/tried \(R\. Vale, 2026-01-02\)$/);
  });

  it('comes in and stays when the workbook is annotated again: one set of columns each time', async () => {
    const once = await annotated(bytes());
    const twice = await annotated(once, [conceded(judge(once))], judge(once));
    const thrice = await annotated(twice);
    expect(headingsOf(once)).not.toContain('Conceded');
    for (const after of [twice, thrice]) {
      expect(headingsOf(after).filter((heading) => heading === 'Verdict')).toHaveLength(1);
      expect(headingsOf(after).indexOf('Conceded')).toBe(headingsOf(once).indexOf('Verdict') + 1);
      expect(judge(after).lines.map(({ line }) => line.cells)).toEqual(
        judge(bytes()).lines.map(({ line }) => line.cells),
      );
    }
    expect(readFile(thrice, 'list.xlsx').tables[0]?.rows[1]?.cells[headingsOf(thrice).indexOf('Conceded')]).toBe('');
  });

  it('moves all of ours to free columns where the next is taken, and clears the old', async () => {
    const once = await annotated(bytes());
    const width = headingsOf(once).length;
    const sheet = part(once, 'xl/worksheets/sheet1.xml').replace(
      '</row>',
      `<c r="${letter(width)}1" t="inlineStr"><is><t>Mine</t></is></c></row>`,
    );
    const taken = { ...unzipSync(once), 'xl/worksheets/sheet1.xml': new TextEncoder().encode(sheet) };
    const book = zipSync(taken);
    const after = headingsOf(await annotated(book, [conceded(judge(book))], judge(book)));
    expect(after.slice(4, width)).toEqual(Array.from({ length: width - 4 }, () => ''));
    expect(after[width]).toBe('Mine');
    expect(after.indexOf('Row in file')).toBe(width + 1);
  });
});

const letter = (column: number) => String.fromCharCode(65 + column);

describe('a long sheet', () => {
  const ODD = `<c r="A3" t="inlineStr"><is><t><![CDATA[x</row>y]]></t></is></c><!-- </row> -->`;
  const rows = Array.from({ length: 4000 }, (_, at) => row(at + 4, PART, 'DC01', at % 2 ? 1.5 : 0.2, 4)).join('');
  const bytes = oneSheet(`${HEAD}${row(2, PART, 'DC01', 1.5, 4)}<row r="3">${ODD}</row>${rows}`);

  it('comes in stretches that put together are the same, and end behind rows', () => {
    const xml = part(bytes, 'xl/worksheets/sheet1.xml');
    const pieces = xml.match(/.{1,5000}/gs)!;
    const stretches = [...stretchesOf(pieces)];
    expect(stretches.length).toBeGreaterThan(2);
    expect(stretches.join('') === xml).toBe(true);
    expect(stretches.slice(0, -1).every((stretch) => stretch.endsWith('</row>'))).toBe(true);
    const inside = `${'x'.repeat(300_000)}<row><![CDATA[</row>${'y'.repeat(300_000)}`;
    expect([...stretchesOf([inside, ']]></row>z'])].map(({ length }) => length)).toEqual([inside.length + 10]);
  });

  it('is written into row by row, every cell as it was', { timeout: 30_000 }, async () => {
    const list = judge(bytes);
    const heard: number[] = [];
    const result = await annotateWorkbook(bytes, list, DAY, BASIS.parts, NO_WORK, null, {
      onProgress: (share) => heard.push(share),
    });
    if ('refused' in result) throw new Error(result.refused);
    expect(heard.length).toBeGreaterThan(5);
    const [before, after] = [bytes, result.bytes].map((one) => part(one, 'xl/worksheets/sheet1.xml'));
    const cellsIn = (xml = '') => xml.match(/<c r="[A-D]\d+".*?<\/c>/g) ?? [];
    expect(cellsIn(after).join() === cellsIn(before).join()).toBe(true);
    const read = readFile(result.bytes, 'list.xlsx').tables[0]!;
    const at = read.rows[0]!.cells.indexOf('Verdict');
    const verdicts = new Map(list.lines.map((line) => [line.row, line.verdict as string]));
    expect(
      read.rows.flatMap(({ number, cells }) =>
        verdicts.has(number) && verdicts.get(number) !== cells[at] ? [number] : [],
      ),
    ).toEqual([]);
    expect(verdicts.size).toBe(4001);
  });

  it('is not written when the caller stops it, and that is no refusal', async () => {
    const stopped = annotateWorkbook(bytes, judge(bytes), DAY, BASIS.parts, NO_WORK, null, { isCancelled: () => true });
    await expect(stopped).rejects.toThrow(Stopped);
  });
});
