import { readFileSync } from 'node:fs';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { annotateWorkbook } from '../../src/io/annotate/annotate-workbook.ts';
import { readFile } from '../../src/io/read-file.ts';
import { makeList } from './lists.ts';

/**
 * Writes into one workbook, in the way that is asked for, and prints what it took: a process of its own for one writing. Ours writes the
 * judgement into it; the writing library loads it and writes it again, without any judgement.
 */
const [way, file = ''] = process.argv.slice(2);
const original = new Uint8Array(readFileSync(file));
const write = way === 'exceljs' ? await rewriting() : annotating();
globalThis.gc?.();
const start = performance.now();
const bytes = await write();
const ms = performance.now() - start;
const megabytes = process.resourceUsage().maxRSS / 1024;
console.log(JSON.stringify({ ms, megabytes, size: bytes.byteLength }));

async function rewriting() {
  const { default: exceljs } = await import('exceljs');
  return async () => {
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load(original as unknown as ArrayBuffer);
    return workbook.xlsx.writeBuffer();
  };
}

function annotating() {
  const catalogue = importCatalogue(readFile(makeList(1, 'realistic').catalogue, 'catalogue.csv'));
  const basis = createBasis([catalogue], DEFAULT_SHOP);
  const read = readFile(original, 'list.xlsx');
  const list = auditFile(read, basis);
  return async () => {
    const annotated = await annotateWorkbook(original, list, '2026-01-02', basis.parts, undefined, null, { read });
    if ('refused' in annotated) throw new Error(annotated.refused);
    return annotated.bytes;
  };
}
