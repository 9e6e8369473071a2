import type { Workbook } from 'exceljs';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { planListSheet } from '../../src/io/write/list-sheet.ts';
import { ownColumnsOf } from '../../src/io/write/own-columns.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';
import { makeList } from './lists.ts';

/**
 * Writes the judged list of the bench as a new workbook, in the way that is asked for, and prints what it took: a process of its own for
 * one writing. The writing library gets the cells of the list's sheet alone, without any look, and is clocked from when it has them.
 */
const [way, rows = '100000'] = process.argv.slice(2);
const made = makeList(Number(rows), 'realistic');
const basis = createBasis([importCatalogue(readFile(made.catalogue, 'catalogue.csv'))], DEFAULT_SHOP);
const list = auditFile(readFile(made.list, 'list.csv'), basis);
const book = way === 'exceljs' ? await fill(new (await import('exceljs')).default.Workbook()) : undefined;
globalThis.gc?.();
const start = performance.now();
const bytes = book ? await book.xlsx.writeBuffer() : await writeWorkbook(list, '2026-01-02', basis.parts);
const ms = performance.now() - start;
const megabytes = process.resourceUsage().maxRSS / 1024;
console.log(JSON.stringify({ ms, megabytes, size: bytes.byteLength }));

async function fill(workbook: Workbook): Promise<Workbook> {
  const sheet = workbook.addWorksheet('List');
  for (const { cells } of planListSheet('List', list, ownColumnsOf(list, [])).rows()) {
    sheet.addRow(cells.map((cell) => cell?.value ?? null));
  }
  return workbook;
}
