import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { annotateWorkbook } from '../../src/io/annotate/annotate-workbook.ts';
import { readFile } from '../../src/io/read-file.ts';
import { hostileWorkbook } from './hostile-workbook.ts';

const SAMPLES = resolve(import.meta.dirname, '../../sample-data');
const CATALOGUE = importCatalogue(readFile(readFileSync(resolve(SAMPLES, 'demo-catalogue.csv')), 'demo-catalogue.csv'));
const BASIS = createBasis([CATALOGUE], DEFAULT_SHOP);
const folder = mkdtempSync(join(tmpdir(), 'clinchsheet-office-'));
const hasOffice = spawnSync('soffice', ['--version']).status === 0;

afterAll(() => rmSync(folder, { recursive: true }));

async function annotated(bytes: Uint8Array): Promise<Uint8Array> {
  const list = auditFile(readFile(bytes, 'list.xlsx'), BASIS);
  const result = await annotateWorkbook(bytes, list, '2026-01-02', BASIS.parts);
  if ('refused' in result) throw new Error(result.refused);
  return result.bytes;
}

/** The workbook opened by an office program and saved again. */
function saveAgain(name: string, bytes: Uint8Array): Uint8Array {
  const profile = `-env:UserInstallation=file://${join(folder, 'profile')}`;
  writeFileSync(join(folder, `${name}.xlsx`), bytes);
  const out = join(folder, 'out');
  spawnSync('soffice', [profile, '--headless', '--convert-to', 'xlsx', '--outdir', out, join(folder, `${name}.xlsx`)]);
  return readFileSync(join(out, `${name}.xlsx`));
}

/** Filled cells of every sheet, numbers as numbers: programs write `1.50` and `1.5` for the same. */
function cellsOf(bytes: Uint8Array): readonly string[] {
  return readFile(bytes, 'list.xlsx').tables.flatMap(({ name, rows }) =>
    rows.flatMap(({ number, cells }) =>
      cells.flatMap((text, column) => (text === '' ? [] : [`${name} ${number} ${column}: ${plain(text)}`])),
    ),
  );
}

function plain(text: string): string {
  return text !== '' && Number.isFinite(Number(text)) ? String(Number(text)) : text;
}

describe.skipIf(!hasOffice)(
  'an annotated workbook opened and saved by an office program (skipped where none is installed)',
  () => {
    it.each([
      ['demo', () => new Uint8Array(readFileSync(resolve(SAMPLES, 'recorder-cabinet.xlsx')))],
      ['hostile', () => hostileWorkbook()],
      ['prefixed', () => hostileWorkbook({ prefix: 'x' })],
      ['strict', () => hostileWorkbook({ isStrict: true })],
    ] as const)('%s: has all its cells', { timeout: 120_000 }, async (name, original) => {
      const bytes = await annotated(original());
      const cells = cellsOf(bytes);
      expect(cells.length).toBeGreaterThan(100);
      // It may work out a pivot table anew, and so add cells of its own.
      expect(cellsOf(saveAgain(name, bytes))).toEqual(expect.arrayContaining([...cells]));
    });
  },
);
