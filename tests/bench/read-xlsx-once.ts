import { readFileSync } from 'node:fs';
import type { Workbook } from 'exceljs';
import { readFile } from '../../src/io/read-file.ts';

/** Reads one workbook to cells, in the way that is asked for, and prints what it took: a process of its own for one reading. */
const [way, file = ''] = process.argv.slice(2);
const bytes = readFileSync(file);
const exceljs = way === 'exceljs' ? (await import('exceljs')).default : undefined;
const start = performance.now();
const kept = exceljs ? await readBy(new exceljs.Workbook()) : readFile(bytes, 'list.xlsx').tables[0];
const ms = performance.now() - start;
console.log(JSON.stringify({ ms, megabytes: process.resourceUsage().maxRSS / 1024, isRead: kept !== undefined }));

async function readBy(workbook: Workbook) {
  await workbook.xlsx.load(bytes as unknown as ArrayBuffer);
  return workbook.worksheets[0];
}
