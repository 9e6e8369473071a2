import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { readConcessions } from '../../src/core/concede/read-back.ts';
import { concede, standing } from '../../src/core/concede/standing.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import type { Concession } from '../../src/core/model/concession.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { annotateWorkbook } from '../../src/io/annotate/annotate-workbook.ts';
import { readFile } from '../../src/io/read-file.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';

const bytes = (name: string) => new Uint8Array(readFileSync(resolve(import.meta.dirname, '../../sample-data', name)));
const basis = createBasis([importCatalogue(readFile(bytes('demo-catalogue.csv'), 'demo-catalogue.csv'))], DEFAULT_SHOP);
const upload = bytes('recorder-cabinet.xlsx');
const list = auditFile(readFile(upload, 'recorder-cabinet.xlsx'), basis);
const SIGNED = { reason: 'pressed and pulled, “0.8” holds', by: 'R. Vale', date: '2026-11-02' };

/** Every failing row is accepted, by the check that decides it. */
const given = list.lines.flatMap((line): Concession[] => {
  const concession = line.verdict === 'fails' && line.decidedBy ? concede(line, line.decidedBy, SIGNED) : null;
  return concession ? [concession] : [];
});
const work = { concessions: given, changes: [] };

async function exported(how: 'new' | 'in-place'): Promise<Uint8Array> {
  if (how === 'new') return writeWorkbook(list, '2026-11-02', basis.parts, work);
  const annotated = await annotateWorkbook(upload, list, '2026-11-02', basis.parts, work);
  if (!('bytes' in annotated)) throw new Error(annotated.refused);
  return annotated.bytes;
}

function read(workbook: Uint8Array) {
  const raw = readFile(workbook, 'back.xlsx');
  const again = auditFile(raw, basis);
  return { again, ...readConcessions(raw, again) };
}

async function changed(workbook: Uint8Array, change: (book: exceljs.Workbook) => void): Promise<Uint8Array> {
  const book = new exceljs.Workbook();
  await book.xlsx.load(workbook.slice().buffer as ArrayBuffer);
  change(book);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

function stands({ lines }: AuditedList, concession: Concession): boolean {
  const line = lines.find(({ row }) => row === concession.row) ?? null;
  return standing(concession, line).kind === 'stands';
}

describe.each(['new', 'in-place'] as const)('an exported workbook (%s) read again', (how) => {
  it('is the same list with the same verdicts, and every concession stands on its row', async () => {
    const { again, concessions, lost } = read(await exported(how));
    const verdicts = ({ lines }: AuditedList) =>
      lines.map(({ line, verdict }) => [line.partNumber, line.panel, verdict]);
    expect(verdicts(again)).toEqual(verdicts(list));
    expect(given.length).toBe(9);
    expect(lost).toBe(0);
    expect(concessions.map(({ rule, reason, by, date }) => ({ rule, reason, by, date }))).toEqual(
      given.map(({ rule, reason, by, date }) => ({ rule, reason, by, date })),
    );
    expect(concessions.filter((concession) => !stands(again, concession))).toEqual([]);
  });

  it('gives the same once more when it is exported and read again', async () => {
    const first = read(await exported(how));
    const second = await writeWorkbook(first.again, '2026-11-03', basis.parts, {
      ...work,
      concessions: first.concessions,
    });
    const { concessions, again } = read(second);
    expect(concessions.length).toBe(given.length);
    expect(concessions.every((concession) => stands(again, concession))).toBe(true);
  });
});

describe('a concession in a workbook that was changed since', () => {
  it('lapses when its cell holds another thickness', async () => {
    const row = given.find(({ rule }) => rule === 'clinch/sheet-thickness')?.row ?? 0;
    const thickness = list.columns.find(({ role }) => role === 'thickness')?.index ?? 0;
    const workbook = await changed(await exported('in-place'), (book) => {
      book
        .getWorksheet(list.sheet)!
        .getRow(row)
        .getCell(thickness + 1).value = 0.5;
    });
    const { again, concessions } = read(workbook);
    const one = concessions.find((concession) => concession.row === row);
    expect(one && stands(again, one)).toBe(false);
  });

  it('follows its row when rows were put in above', async () => {
    const workbook = await changed(await exported('in-place'), (book) => {
      book.getWorksheet(list.sheet)!.insertRow(list.headerRow + 1, ['9', 'NUT-M4-10-CS', 1]);
    });
    const { concessions, again } = read(workbook);
    expect(concessions.map(({ row }) => row)).toEqual(given.map(({ row }) => row + 1));
    expect(concessions.every((concession) => stands(again, concession))).toBe(true);
  });

  it('is left out and counted where its part is gone or the hidden column was changed', async () => {
    const first = given[0]?.row ?? 0;
    const part = list.columns.find(({ role }) => role === 'partNumber')?.index ?? 0;
    const workbook = await changed(await exported('in-place'), (book) => {
      book
        .getWorksheet(list.sheet)!
        .getRow(first)
        .getCell(part + 1).value = 'NUT-M5-14-S4';
      book.getWorksheet('Concessions')!.getRow(3).getCell(10).value = '{"rule":1}';
    });
    const { concessions, lost } = read(workbook);
    expect(lost).toBe(2);
    expect(concessions.length).toBe(given.length - 2);
  });
});

describe('a file that is no export', () => {
  it('holds no concessions', () => {
    expect(readConcessions(readFile(upload, 'recorder-cabinet.xlsx'), list)).toEqual({ concessions: [], lost: 0 });
  });
});
